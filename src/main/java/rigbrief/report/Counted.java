package rigbrief.report;

/** A number with its noun. */
final class Counted {
    private Counted() {}

    /** The number and the noun, with an s where there is not exactly one. */
    static String of(int count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }
}
