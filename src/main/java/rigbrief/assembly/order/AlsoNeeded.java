package rigbrief.assembly.order;

/**
 * Something a first boot needs that the catalogue doesn't have.
 *
 * @param item what it is
 * @param quantity how many, for all machines
 * @param need how sure it is that it has to be bought
 * @param why what it is for, and when it can be left out
 */
public record AlsoNeeded(String item, int quantity, Need need, String why) {
    /** How sure it is. */
    public enum Need {
        /** Nothing on this list brings it. */
        BUY("buy"),
        /** Usually in a box or at hand, but no data sheet says so. */
        CHECK("check");

        private final String word;

        Need(String word) {
            this.word = word;
        }

        /** As printed. */
        public String word() {
            return word;
        }
    }
}
