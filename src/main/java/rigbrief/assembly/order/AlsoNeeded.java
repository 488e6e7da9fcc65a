package rigbrief.assembly.order;

import java.util.Locale;
import rigbrief.wording.Texts;

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
        BUY,
        /** Usually in a box or at hand, but no data sheet says so. */
        CHECK;

        /** As printed, in a language. */
        public String word(Texts texts) {
            return texts.text("also.need." + name().toLowerCase(Locale.ROOT));
        }
    }
}
