package rigbrief.part;

/** Where a wireless card goes. */
public enum CardPlace implements Word {
    X1("x1"),
    M2_E("m2-e");

    private final String word;

    CardPlace(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
