package rigbrief.measurement.calibrate;

/**
 * A figure of a title's shape.
 *
 * @param workload the title's id
 * @param figure which
 * @param standing what became of it
 * @param measurements how many measurements can tell of it
 * @param listed the catalogue's figure
 * @param value as the measurements have it
 * @param low lower end of its 95 % interval
 * @param high upper end
 */
public record ShapeFit(
        String workload,
        ShapeFigure figure,
        Standing standing,
        int measurements,
        double listed,
        double value,
        double low,
        double high) {
    /** The figure to go on with: the listed one unless it was fitted. */
    public double applied() {
        return standing == Standing.FITTED ? value : listed;
    }
}
