package rigbrief.part;

/** Memory generations, by their JEDEC names. */
public enum MemoryType implements Word {
    DDR4("ddr4"),
    DDR5("ddr5");

    private final String word;

    MemoryType(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
