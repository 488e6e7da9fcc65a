package rigbrief.assess;

/**
 * Heat and noise in one state of use, with the quietest fan speeds that keep every part cool
 * enough.
 *
 * @param processorC processor temperature in °C
 * @param graphicsC card temperature in °C; the case air's where there is no card
 * @param caseRiseK case air over room air in kelvin
 * @param caseFanShare speed of the case fans over their full speed, 0 to 1
 * @param coolerShare speed of the cooler's fans over their full speed, 0 to 1
 * @param levelDba level at the seat in dB(A)
 * @param excessK by how many kelvin the hottest part is over its limit less the margin, all fans at
 *     full speed; 0 when none is
 */
public record Climate(
        double processorC,
        double graphicsC,
        double caseRiseK,
        double caseFanShare,
        double coolerShare,
        double levelDba,
        double excessK) {
    /** The excess in tenths of a kelvin, the only form compared with a limit. */
    public long excessDecikelvin() {
        return decikelvin(excessK);
    }

    static long decikelvin(double kelvin) {
        return Math.round(kelvin * 10);
    }
}
