package rigbrief.part;

/** What carries the heat away from the processor. */
public enum CoolerType implements Word {
    AIR("air"),
    LIQUID("liquid");

    private final String word;

    CoolerType(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
