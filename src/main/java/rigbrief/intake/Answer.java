package rigbrief.intake;

import rigbrief.brief.Brief;
import rigbrief.wording.Phrase;

/**
 * An answer as it was taken.
 *
 * @param text the answer in one spelling, whatever was typed; read again it gives the same
 * @param brief the brief with it
 * @param consequence what follows from it, in plain words
 */
public record Answer(String text, Brief brief, Phrase consequence) {}
