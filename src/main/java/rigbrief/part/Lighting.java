package rigbrief.part;

/** Whether a part lights up, and whether it can be told not to. */
public enum Lighting implements Word {
    NONE("none"),
    SWITCHABLE("switchable"),
    FIXED("fixed");

    private final String word;

    Lighting(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
