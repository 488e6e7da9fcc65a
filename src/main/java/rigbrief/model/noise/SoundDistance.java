package rigbrief.model.noise;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * How a level falls with distance.
 *
 * <p>Formula: 20 log10(r2 / r1) less at r2, that is 6.02 dB per doubling; sound pressure level =
 * sound power level - 10 log10(4 pi r²) in free field, - 10 log10(2 pi r²) over a reflecting plane.
 *
 * <p>Source: inverse-square law, in a university note on the free field (-11 dB at 1 m) and the
 * Master Handbook of Acoustics; the plane's -8 dB is from memory. A furnished room falls off more
 * slowly.
 */
public final class SoundDistance {
    /** Distances for which a case is still a point and the room's echo still weak. */
    public static final Range DISTANCE_M = new Range("distance to the seat", 0.3, 2, "m");

    private SoundDistance() {}

    /** What the sound spreads over. */
    public enum Field {
        /** All around, a full sphere. */
        FREE(4),
        /** Over a floor or desk, half a sphere. */
        OVER_PLANE(2);

        private final int multipleOfPi;

        Field(int multipleOfPi) {
            this.multipleOfPi = multipleOfPi;
        }
    }

    /**
     * Gives the level at the seat from that at 1 m, where data sheets state it.
     *
     * @param atOneMetreDba level at 1 m, dB
     * @param distanceM distance of the seat, m
     * @return dB
     * @throws IllegalArgumentException for a distance not above 0
     */
    public static double atSeatDba(double atOneMetreDba, double distanceM) {
        return atDistanceDba(atOneMetreDba, 1, distanceM);
    }

    /**
     * Gives the level at one distance from that at another.
     *
     * @param levelDba level at {@code fromM}, dB
     * @param fromM distance of the known level, any unit
     * @param toM distance of the wanted level, same unit
     * @return dB
     * @throws IllegalArgumentException for a distance not above 0
     */
    public static double atDistanceDba(double levelDba, double fromM, double toM) {
        Expect.positive(fromM, "fromM");
        Expect.positive(toM, "toM");
        return Expect.level(levelDba, "levelDba") - 20 * Math.log10(toM / fromM);
    }

    /**
     * Gives the sound pressure level that a sound power makes.
     *
     * @param powerDb sound power level, dB re 1 pW
     * @param distanceM distance, m
     * @param field what the sound spreads over
     * @return dB re 20 µPa
     * @throws IllegalArgumentException for a distance not above 0
     */
    public static double fromPowerDb(double powerDb, double distanceM, Field field) {
        Expect.positive(distanceM, "distanceM");
        double areaM2 = field.multipleOfPi * Math.PI * distanceM * distanceM;
        return Expect.level(powerDb, "powerDb") - 10 * Math.log10(areaM2);
    }
}
