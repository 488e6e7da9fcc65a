package rigbrief.measurement.calibrate;

/**
 * Something that a fit finds: the logarithm of its factor on the catalogue's figure; of an exponent
 * the difference from the catalogue's.
 *
 * @param sort whose it is
 * @param channel of what; pieces have one for the card and one for the processor
 * @param id workload, part or machine
 */
record Unknown(Sort sort, Channel channel, String id) {
    /** The memory exponent of a title. */
    static Unknown memoryExponent(String title) {
        return new Unknown(Sort.MEMORY, Channel.PROCESSOR, title);
    }

    /** Whose an unknown is, and which way it moves a machine's load. */
    enum Sort {
        /** What a workload asks. */
        DEMAND(1),
        /** What a part of that model brings. */
        RATE(-1),
        /** How one machine's piece of it differs from the others of its model. */
        PIECE(-1),
        /** How a title's processor work hangs on the memory rate. */
        MEMORY(1);

        private final int sign;

        Sort(int sign) {
            this.sign = sign;
        }

        int sign() {
            return sign;
        }
    }
}
