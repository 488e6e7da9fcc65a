package rigbrief.part;

/** What the side of a case is made of, as seen. */
public enum SidePanel implements Word {
    SOLID("solid"),
    TINTED("tinted"),
    CLEAR("clear");

    private final String word;

    SidePanel(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
