package rigbrief.part;

/** How a fan is fed and told its speed. */
public enum FanConnector implements Word {
    PWM4("pwm4"),
    DC3("dc3"),
    PERIPHERAL4("4pin");

    private final String word;

    FanConnector(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
