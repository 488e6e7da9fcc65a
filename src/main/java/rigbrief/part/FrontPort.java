package rigbrief.part;

/** Ports on the front of a case that a board header feeds. */
public enum FrontPort implements Word {
    USB2("usb2"),
    USB3("usb3"),
    USB_C("usb-c"),
    AUDIO("audio");

    private final String word;

    FrontPort(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
