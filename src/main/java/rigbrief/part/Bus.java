package rigbrief.part;

/** How a drive or a drive slot moves data. */
public enum Bus implements Word {
    SATA("sata"),
    GEN3X2("gen3x2"),
    GEN3X4("gen3x4"),
    GEN4X4("gen4x4"),
    GEN5X4("gen5x4"),
    KEY_E("key-e");

    private final String word;

    Bus(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    /** PCI Express generation; 0 where the bus is another. */
    public int generation() {
        return switch (this) {
            case SATA, KEY_E -> 0;
            case GEN3X2, GEN3X4 -> 3;
            case GEN4X4 -> 4;
            case GEN5X4 -> 5;
        };
    }

    /** PCI Express lanes; 0 where the bus is another. */
    public int lanes() {
        return switch (this) {
            case SATA, KEY_E -> 0;
            case GEN3X2 -> 2;
            case GEN3X4, GEN4X4, GEN5X4 -> 4;
        };
    }
}
