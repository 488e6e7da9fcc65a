package rigbrief.quantity;

/**
 * A difference between two sound levels, which is not itself a level.
 *
 * @param decibels how much is taken away, in dB; not negative
 */
public record Attenuation(double decibels) {
    public Attenuation {
        if (!(decibels >= 0 && decibels <= 100)) {
            throw new IllegalArgumentException(
                    "found %s dB, expected 0 to 100; check its source".formatted(decibels));
        }
    }

    /** An attenuation of that many dB. */
    public static Attenuation db(double decibels) {
        return new Attenuation(decibels);
    }
}
