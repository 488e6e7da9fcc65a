package rigbrief.wording;

/** A number with its noun, for what is told in English alone. */
public final class Counted {
    private Counted() {}

    /** The number and the noun, with an s where there is not exactly one. */
    public static String of(long count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }
}
