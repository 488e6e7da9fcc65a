package rigbrief.part;

/** Memory module forms, by their JEDEC names. */
public enum ModuleForm implements Word {
    UDIMM("udimm"),
    SODIMM("sodimm");

    private final String word;

    ModuleForm(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
