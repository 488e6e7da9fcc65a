package rigbrief.quantity;

/**
 * An A-weighted sound pressure level re 20 µPa.
 *
 * <p>It has no {@code plus}: levels of two sources do not add as numbers, and a level is not an
 * {@link Attenuation}.
 *
 * @param decibelsA the level in dB(A)
 */
public record SoundLevel(double decibelsA) implements Comparable<SoundLevel> {
    public SoundLevel {
        if (!(decibelsA >= -20 && decibelsA <= 140)) {
            throw new IllegalArgumentException(
                    "found %s dB(A), expected -20 to 140; check its source".formatted(decibelsA));
        }
    }

    /** A level of that many dB(A). */
    public static SoundLevel dba(double decibelsA) {
        return new SoundLevel(decibelsA);
    }

    /** This level behind something that takes the given number of decibels away. */
    public SoundLevel behind(Attenuation attenuation) {
        return new SoundLevel(decibelsA - attenuation.decibels());
    }

    /** The level in hundredths of a dB(A), rounded half up: the only form compared with a limit. */
    public long centidecibels() {
        return Math.round(decibelsA * 100);
    }

    @Override
    public int compareTo(SoundLevel other) {
        return Double.compare(decibelsA, other.decibelsA);
    }
}
