package rigbrief.part;

/** Which cables of a supply can be taken off. */
public enum Modularity implements Word {
    NONE("none"),
    SEMI("semi"),
    FULL("full");

    private final String word;

    Modularity(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
