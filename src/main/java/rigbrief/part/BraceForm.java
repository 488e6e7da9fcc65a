package rigbrief.part;

/** What a brace stands on. */
public enum BraceForm implements Word {
    FLOOR("floor"),
    SLOT("slot");

    private final String word;

    BraceForm(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
