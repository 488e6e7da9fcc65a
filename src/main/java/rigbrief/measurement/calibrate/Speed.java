package rigbrief.measurement.calibrate;

/** A measured speed as the model sees it. */
interface Speed {
    /** Whether the workload does work of a channel at all. */
    boolean works(Channel channel);

    /** Whether the machine can do the work at all, by the catalogue. */
    boolean possible();

    /**
     * The natural logarithm of what would be measured: a rate in 1/s, or a time in s.
     *
     * @param loads by channel, logarithm of the demand over the rate, 0 as the catalogue has both
     */
    double log(double... loads);
}
