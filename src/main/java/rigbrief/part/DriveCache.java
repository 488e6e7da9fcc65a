package rigbrief.part;

/** What a solid-state drive keeps its map in. */
public enum DriveCache implements Word {
    NONE("none"),
    HOST("host"),
    DRAM("dram");

    private final String word;

    DriveCache(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
