package rigbrief.part;

/** Where in a case a fan or a radiator sits. */
public enum Place implements Word {
    FRONT("front"),
    TOP("top"),
    REAR("rear"),
    BOTTOM("bottom"),
    SIDE("side");

    private final String word;

    Place(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
