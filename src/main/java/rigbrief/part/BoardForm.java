package rigbrief.part;

/** Board sizes, by the names of their specifications. */
public enum BoardForm implements Word {
    MINI_ITX("mini-itx"),
    MICRO_ATX("micro-atx"),
    ATX("atx"),
    E_ATX("e-atx");

    private final String word;

    BoardForm(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
