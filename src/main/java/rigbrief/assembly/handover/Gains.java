package rigbrief.assembly.handover;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import rigbrief.assembly.Bench;
import rigbrief.assess.Prediction;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.TaskTime;
import rigbrief.part.Drive;
import rigbrief.wording.Measured;

/** What is better in one machine than in another, with figures before and after. */
final class Gains {
    /** What differs by less is not felt, in percent. Common practice. */
    private static final int FELT_PERCENT = 3;

    /** A level that differs by less is not heard, in tenths of a decibel. Common practice. */
    private static final int HEARD_DECIBEL_TENTHS = 10;

    private static final int WHOLE = 100;

    private Gains() {}

    /** What is better in the second machine. */
    static List<String> between(Bench before, Bench after) {
        List<String> gains = new ArrayList<>(speed(before, after, 1));
        more(before, "gain.memory", before.build().memoryGb(), after.build().memoryGb(), gains);
        more(before, "gain.storage", storageGb(before), storageGb(after), gains);
        // Less noise from slower work is no gain.
        if (losses(before, after).isEmpty()) {
            noise(before, after, gains);
        }
        return gains;
    }

    /** Which work is slower in the second machine. */
    static List<String> losses(Bench before, Bench after) {
        return speed(before, after, -1);
    }

    private static List<String> speed(Bench before, Bench after, int sign) {
        List<String> felt = new ArrayList<>();
        List<Prediction> now = before.it().predictions();
        List<Prediction> then = after.it().predictions();
        for (int i = 0; i < now.size(); i++) {
            workload(before, now.get(i), then.get(i), sign, felt);
        }
        return felt;
    }

    private static void workload(
            Bench bench, Prediction now, Prediction then, int sign, List<String> felt) {
        String title = now.workload().title();
        if (now.workload() instanceof FrameRate) {
            long before = Math.round(now.averageFps());
            long after = Math.round(then.averageFps());
            if (sign * (after - before) * WHOLE >= Math.max(1, before) * FELT_PERCENT) {
                felt.add(bench.say("gain.fps", title, after, before));
            }
        } else if (now.workload() instanceof TaskTime) {
            long before = Math.round(now.seconds());
            long after = Math.round(then.seconds());
            if (sign * (before - after) * WHOLE >= Math.max(1, before) * FELT_PERCENT) {
                felt.add(bench.say("gain.seconds", title, after, before));
            }
        }
    }

    private static void more(
            Bench bench, String key, int beforeGb, int afterGb, List<String> gains) {
        if (afterGb > beforeGb) {
            gains.add(bench.say("gain.gb", bench.say(key), afterGb, beforeGb));
        }
    }

    private static int storageGb(Bench bench) {
        return bench.build().drives().stream().mapToInt(Drive::capacityGb).sum();
    }

    private static void noise(Bench before, Bench after, List<String> gains) {
        long now = tenths(before.it().load().levelDba());
        long then = tenths(after.it().load().levelDba());
        if (now - then >= HEARD_DECIBEL_TENTHS) {
            gains.add(before.say("gain.noise", plain(then), plain(now)));
        }
    }

    private static long tenths(double dba) {
        return BigDecimal.valueOf(dba)
                .setScale(1, RoundingMode.HALF_UP)
                .unscaledValue()
                .longValue();
    }

    private static Measured plain(long tenths) {
        return new Measured(BigDecimal.valueOf(tenths, 1), "");
    }
}
