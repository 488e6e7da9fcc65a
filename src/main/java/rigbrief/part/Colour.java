package rigbrief.part;

/** The main colour of a part. */
public enum Colour implements Word {
    BLACK("black"),
    WHITE("white"),
    GREY("grey"),
    SILVER("silver"),
    BEIGE("beige"),
    WOOD("wood"),
    RED("red"),
    BLUE("blue"),
    GREEN("green"),
    PINK("pink");

    private final String word;

    Colour(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
