package rigbrief.intake;

import rigbrief.wording.Phrase;

/**
 * One of the answers offered to a question.
 *
 * @param word what may be typed for it, and how it is kept; lower case, the same in every language
 * @param label what it is called
 * @param meaning what it means in everyday words; may be empty
 */
public record Choice(String word, Phrase label, Phrase meaning) {
    /**
     * A choice whose label and meaning are texts of the bundles: {@code pick.SET.WORD} and {@code
     * pick.SET.WORD.means}.
     *
     * @param places what fills the places of both
     */
    static Choice of(String set, String word, Object... places) {
        String key = "pick." + set + "." + word;
        return new Choice(word, Phrase.of(key, places), Phrase.of(key + ".means", places));
    }

    /** A choice called by its word, which is data such as a game's own step. */
    static Choice called(String word, Phrase meaning) {
        return new Choice(word, Phrase.data(word), meaning);
    }
}
