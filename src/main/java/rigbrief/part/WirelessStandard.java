package rigbrief.part;

/** Generations of IEEE 802.11 wireless networking, oldest first. */
public enum WirelessStandard implements Word {
    NONE("none"),
    WIFI5("wifi5"),
    WIFI6("wifi6"),
    WIFI6E("wifi6e"),
    WIFI7("wifi7");

    private final String word;

    WirelessStandard(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
