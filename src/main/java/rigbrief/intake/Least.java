package rigbrief.intake;

import rigbrief.quantity.Money;

/** The least money for which a brief's musts can be met. */
public sealed interface Least {
    /** In a few words, as they follow "least so far:". */
    String words();

    /** An amount proven to be the least. */
    record Known(Money total) implements Least {
        @Override
        public String words() {
            return total.toString();
        }
    }

    /**
     * A build is known, and it is not proven that none is cheaper.
     *
     * @param low no build costs less
     * @param high a build that costs this is known
     */
    record Between(Money low, Money high) implements Least {
        @Override
        public String words() {
            return "at most " + high;
        }
    }

    /** No build meets the musts. */
    record Impossible() implements Least {
        @Override
        public String words() {
            return "no machine";
        }
    }

    /** Not found out within the steps allowed. */
    record Unknown() implements Least {
        @Override
        public String words() {
            return "not known yet";
        }
    }
}
