package rigbrief.measurement.accept;

/** What may be wrong with a machine that does not do what was promised. */
public enum Cause {
    MEMORY_AT_DEFAULT_RATE(
            "memory runs at its default rate",
            "choose the kit's own profile in the firmware, save, and read the rate again"),
    ONE_MODULE(
            "one module is missing, or all sit on one channel",
            "move the modules to the slots that the board's manual names; test each alone"),
    NARROW_SLOT(
            "the card has too few lanes",
            "seat the card in the long slot nearest the processor, clean its edge, read the link"
                    + " again under load"),
    PROCESSOR_HEAT_LIMIT(
            "the processor slows down at its heat limit",
            "let it cool, then check the cooler's seat, the paste, the film under it, and its fans"),
    CARD_HEAT_LIMIT(
            "the card slows down at its heat limit",
            "check the case's air path and the card's fans; look for a cable in a fan"),
    PROCESSOR_POWER_LIMIT(
            "the processor's power is limited",
            "look at the power limits in the firmware and at the system's power plan"),
    CARD_POWER_LIMIT(
            "the card's power is limited",
            "check that every power connector of the card is fully home, and the card's power"
                    + " setting"),
    WRONG_OUTPUT(
            "the screen hangs on the board's output", "plug the screen into the card's own output"),
    BACKGROUND_LOAD(
            "something else keeps the processor busy",
            "look which program works at the desktop: updates, scans and indexing end by"
                    + " themselves"),
    CHANCE(
            "nothing is wrong: the prediction was too high or too low",
            "check that settings and resolution are those of the sheet, then measure again");

    private final String title;
    private final String advice;

    Cause(String title, String advice) {
        this.title = title;
        this.advice = advice;
    }

    /** What it is, in a few words. */
    public String title() {
        return title;
    }

    /** What to do, in the imperative. */
    public String advice() {
        return advice;
    }
}
