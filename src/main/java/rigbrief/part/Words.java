package rigbrief.part;

/** Reads a word of an enum inside a cell. */
final class Words {
    private Words() {}

    static <E extends Enum<E> & Word> E read(String entry, Class<E> words) throws Cells.Malformed {
        StringBuilder all = new StringBuilder();
        for (E constant : words.getEnumConstants()) {
            if (constant.word().equals(entry)) {
                return constant;
            }
            all.append(all.isEmpty() ? "" : ", ").append(constant.word());
        }
        throw new Cells.Malformed("one of " + all, "use one of these words");
    }
}
