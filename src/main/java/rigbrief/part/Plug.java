package rigbrief.part;

/** Power connectors, by the trade names of their pins. */
public enum Plug implements Word {
    ATX24("atx24"),
    EPS8("eps8"),
    EPS4("eps4"),
    PCIE8("8pin"),
    PCIE6("6pin"),
    PCIE16("12v2x6"),
    SATA("sata"),
    PERIPHERAL4("4pin");

    private final String word;

    Plug(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
