package rigbrief.part;

/** Editions of the ATX power supply design guide that a supply follows. */
public enum Guide implements Word {
    ATX2("atx2"),
    ATX3_0("atx3.0"),
    ATX3_1("atx3.1");

    private final String word;

    Guide(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
