package rigbrief.measurement.tune;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import rigbrief.assess.FrameModel.SceneTime;

/**
 * In how much of a title a rate has to hold.
 *
 * @param sharePercent share of play time, in percent; empty for every scene but the slowest
 */
public record HeldScenes(OptionalInt sharePercent) {
    /** Every scene but the slowest; of a single scene, that one. */
    public static final HeldScenes ALL_BUT_WORST = new HeldScenes(OptionalInt.empty());

    /** Every scene. */
    public static final HeldScenes ALL = new HeldScenes(OptionalInt.of(100));

    private static final double PERCENT = 100;

    /** Shares of play time are stated to a millionth. */
    private static final double ROUNDING = 1e-5;

    /** Refuses a share outside 1 to 100. */
    public HeldScenes {
        int share = sharePercent.orElse(1);
        if (share < 1 || share > PERCENT) {
            throw new IllegalArgumentException(
                    "sharePercent: found %d, expected 1 to 100; give a share of play time"
                            .formatted(share));
        }
    }

    /** The highest rate that is reached in so much of the title, in frames/s, before any cap. */
    double rateFps(List<SceneTime> scenes) {
        List<SceneTime> fastest = new ArrayList<>(scenes);
        fastest.sort(Comparator.comparingDouble(SceneTime::frameS));
        return fastest.get(lastCounted(fastest)).rateFps();
    }

    private int lastCounted(List<SceneTime> fastest) {
        int last = fastest.size() - 1;
        if (sharePercent.isEmpty()) {
            return Math.max(0, last - 1);
        }
        double wanted = sharePercent.getAsInt() / PERCENT - ROUNDING;
        double share = 0;
        for (int i = 0; i < last; i++) {
            share += fastest.get(i).scene().share();
            if (share >= wanted) {
                return i;
            }
        }
        return last;
    }
}
