package rigbrief.part;

/** Shapes of drives; M.2 lengths by their module codes. */
public enum DriveForm implements Word {
    M2_2230("m2-2230"),
    M2_2242("m2-2242"),
    M2_2260("m2-2260"),
    M2_2280("m2-2280"),
    M2_22110("m2-22110"),
    BAY_25("2.5"),
    BAY_35("3.5");

    private final String word;

    DriveForm(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    /** Whether the drive is an M.2 module. */
    public boolean m2() {
        return this != BAY_25 && this != BAY_35;
    }

    /** Length of an M.2 module in millimetres; 0 for a drive in a bay. */
    public int lengthMm() {
        return switch (this) {
            case M2_2230 -> 30;
            case M2_2242 -> 42;
            case M2_2260 -> 60;
            case M2_2280 -> 80;
            case M2_22110 -> 110;
            case BAY_25, BAY_35 -> 0;
        };
    }
}
