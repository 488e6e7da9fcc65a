package rigbrief.model.power;

import rigbrief.model.Expect;

/**
 * The current a supply's 12 V rails must give, and what the design guide sets aside for a
 * processor.
 *
 * <p>Formula: sum of processor, cards at 12 V, and the rest of the platform, in ampere.
 *
 * <p>Source: ATX12V and ATX12VO design guide addendum 621484 revision 004, "Power Supplies with 12V
 * Rails Listed Together" (the sum); ATX guide 336521 revision 2.0, table 2-1 (processor currents)
 * and section 3.1.1 (11.2 V from ampere to watt). Later addenda raise the peaks: these belong to
 * revision 2.0.
 */
public final class TwelveVoltBudget {
    private static final double CARD_V = 12;
    private static final double LOWEST_V = 11.2;

    private TwelveVoltBudget() {}

    /** Processor power classes of the guide, with the current that the 12V2 rail must give. */
    public enum ProcessorClass {
        /** 35 W class. */
        W35(11, 19),
        /** 65 W class. */
        W65(23, 34),
        /** 125 W class. */
        W125(26, 39),
        /** 165 W class. */
        W165(37.5, 40);

        private final double continuousA;
        private final double peakA;

        ProcessorClass(double continuousA, double peakA) {
            this.continuousA = continuousA;
            this.peakA = peakA;
        }

        /**
         * Gives the current for longer than a second.
         *
         * @return A
         */
        public double continuousA() {
            return continuousA;
        }

        /**
         * Gives the current for up to 10 ms.
         *
         * @return A
         */
        public double peakA() {
            return peakA;
        }

        /**
         * Gives the continuous power as the guide counts it.
         *
         * @return W, at 11.2 V
         */
        public double continuousW() {
            return continuousA * LOWEST_V;
        }
    }

    /**
     * Gives the current of the whole build at 12 V.
     *
     * @param processorA processor, A
     * @param cardsW all cards together, W
     * @param restA rest of the platform, A
     * @return A
     * @throws IllegalArgumentException for a negative value
     */
    public static double totalA(double processorA, double cardsW, double restA) {
        return Expect.notNegative(processorA, "processorA")
                + Expect.notNegative(cardsW, "cardsW") / CARD_V
                + Expect.notNegative(restA, "restA");
    }
}
