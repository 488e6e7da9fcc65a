package rigbrief.measurement.tune;

import rigbrief.brief.WorkloadNeed.Settings;

/**
 * What the brief's own settings leave to be turned: nothing it names is turned lower, and rays that
 * it turned off stay off.
 *
 * @param preset lowest preset, by index
 * @param rays lowest step of rays
 * @param mostRays highest step of rays
 * @param upscaling coarsest step of upscaling
 */
record Floor(int preset, int rays, int mostRays, int upscaling) {
    /** Everything may be turned. */
    static final Floor NONE = new Floor(0, 0, Integer.MAX_VALUE, 0);

    /** What a brief leaves. */
    static Floor of(Menu menu, Settings asked) {
        int rays = asked.rays().map(menu.rayNames()::indexOf).orElse(0);
        boolean off = asked.rays().isPresent() && rays <= 0;
        return new Floor(
                atLeastFirst(asked.preset().map(menu.presetNames()::indexOf).orElse(0)),
                atLeastFirst(rays),
                off ? 0 : Integer.MAX_VALUE,
                atLeastFirst(asked.upscaling().map(menu.upscalingNames()::indexOf).orElse(0)));
    }

    /** A name that the title does not have binds nothing; the reader of briefs refuses it. */
    private static int atLeastFirst(int index) {
        return Math.max(0, index);
    }

    /** The same with everything given up but that rays stay off. */
    Floor givenUp() {
        return new Floor(0, 0, mostRays, 0);
    }
}
