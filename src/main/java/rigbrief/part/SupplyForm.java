package rigbrief.part;

/** Power supply bodies. */
public enum SupplyForm implements Word {
    ATX("atx"),
    SFX("sfx"),
    SFX_L("sfx-l");

    private final String word;

    SupplyForm(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
