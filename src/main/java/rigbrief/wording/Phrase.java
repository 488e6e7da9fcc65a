package rigbrief.wording;

import java.util.Arrays;
import java.util.List;

/**
 * Something to tell: the key of a text in the bundles and what fills its places.
 *
 * <p>Whoever finds something out makes a phrase; the language is chosen by whoever shows it, with
 * {@link Texts}. Printed as it is, a phrase reads in English, as terminals and logs do.
 *
 * @param key key of the text in the bundles of {@code rigbrief/words}; empty for words that are
 *     data, such as a part's name, which read alike in every language
 * @param places what fills the text's places, see {@link Texts#say(Phrase)}
 */
public record Phrase(String key, List<Object> places) {
    private static final String DATA = "";

    /** Nothing to tell. */
    public static final Phrase NONE = data("");

    public Phrase {
        places = List.copyOf(places);
    }

    /** A text with its places filled. */
    public static Phrase of(String key, Object... places) {
        return new Phrase(key, Arrays.asList(places));
    }

    /** Words that are data and read alike in every language. */
    public static Phrase data(String words) {
        return new Phrase(DATA, List.of(words));
    }

    /** Phrases or other places one behind the other, parted by a mark such as {@code ", "}. */
    public static Phrase joined(String mark, List<?> parts) {
        return new Phrase(DATA, List.of(new Joined(mark, List.copyOf(parts))));
    }

    /**
     * A title that English has elsewhere than in the bundles, such as a rule's.
     *
     * @param key key of the title in the bundles of the other languages
     * @param own the title in English
     */
    public static Phrase titled(String key, String own) {
        return new Phrase(DATA, List.of(new Titled(key, own)));
    }

    /** {@code 2}, {@code 2 and 4}, {@code 1, 2 and 4}. */
    public static Phrase list(List<?> parts) {
        int last = parts.size() - 1;
        return last < 1
                ? joined("", parts)
                : of("phrase.list", joined(", ", parts.subList(0, last)), parts.get(last));
    }

    /** The same as a sentence: a capital first letter and a full stop. */
    public Phrase sentence() {
        return new Phrase(DATA, List.of(new Sentence(this)));
    }

    /** The same with a capital first letter. */
    public Phrase capital() {
        return new Phrase(DATA, List.of(new Capital(this)));
    }

    /** Whether there is nothing to tell. */
    public boolean isEmpty() {
        return equals(NONE);
    }

    /** The text in English. */
    @Override
    public String toString() {
        return Texts.ENGLISH.say(this);
    }

    /** A title with its own words for where the bundles have none. */
    record Titled(String key, String own) {}

    /** Parts in a row. */
    record Joined(String mark, List<?> parts) {}

    /** A phrase that opens a sentence. */
    record Capital(Phrase phrase) {}

    /** A phrase that is a sentence. */
    record Sentence(Phrase phrase) {}
}
