package rigbrief.part;

/** 80 PLUS levels, worst first; none means no label. */
public enum Efficiency implements Word {
    NONE("none"),
    WHITE("80plus"),
    BRONZE("bronze"),
    SILVER("silver"),
    GOLD("gold"),
    PLATINUM("platinum"),
    TITANIUM("titanium");

    private final String word;

    Efficiency(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
