package rigbrief.report;

import rigbrief.catalogue.Catalogue;
import rigbrief.pricelist.ImportPlan;

/**
 * What a price list means for a catalogue, and what became of it.
 *
 * @param name what the price list is called
 * @param catalogue the catalogue as it was
 * @param plan what the list means
 * @param outcome what became of it
 * @param recorded how many superseded offers were put on record
 */
public record ImportAnswer(
        String name, Catalogue catalogue, ImportPlan plan, Outcome outcome, int recorded) {

    /** What became of a plan. */
    public enum Outcome {
        /** It was carried out. */
        CHANGED("changed"),
        /** It was only shown, as asked. */
        SHOWN("shown"),
        /** It was refused, since something is suspicious. */
        REFUSED("refused");

        private final String word;

        Outcome(String word) {
            this.word = word;
        }

        /** As JSON has it. */
        public String word() {
            return word;
        }
    }
}
