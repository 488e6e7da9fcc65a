package rigbrief.measurement.tune;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.Setting;
import rigbrief.catalogue.FrameRate.Step;

/**
 * Every mix of a title's single settings that no other mix beats: none costs the card and the
 * processor as little with as little visible loss.
 *
 * <p>Frame time never falls when either cost rises, so the best mix under any condition on frame
 * times is among them. Found by dynamic programming, setting by setting, in whole millionths:
 * exact, and the order of adding changes nothing.
 */
final class SettingsFront {
    private static final double MILLIONTHS = 1e6;
    private static final Comparator<Mix> BY_LOSS =
            Comparator.comparingLong(Mix::loss)
                    .thenComparingLong(Mix::graphics)
                    .thenComparingLong(Mix::processor);

    private SettingsFront() {}

    /**
     * The mixes, least loss first.
     *
     * @param raysOn whether rays are drawn; then what stands in for them is at its lowest step, and
     *     nothing is lost by that
     */
    static List<Mix> of(FrameRate title, boolean raysOn) {
        List<Mix> front = List.of(new Mix(0, 0, 0, List.of()));
        for (Setting setting : title.settings()) {
            front = unbeaten(extended(front, setting, raysOn));
        }
        return front;
    }

    /** A share in millionths. */
    static long millionths(double share) {
        return Math.round(share * MILLIONTHS);
    }

    private static List<Mix> extended(List<Mix> front, Setting setting, boolean raysOn) {
        boolean idle = raysOn && setting.standsInForRays();
        int choices = idle ? 1 : setting.steps().size();
        List<Mix> extended = new ArrayList<>(front.size() * choices);
        for (Mix mix : front) {
            for (int step = choices - 1; step >= 0; step--) {
                extended.add(with(mix, setting, step, idle));
            }
        }
        return extended;
    }

    static Mix with(Mix mix, Setting setting, int index, boolean idle) {
        Step step = setting.steps().get(index);
        int steps = setting.steps().size();
        List<Integer> chosen = new ArrayList<>(mix.steps());
        chosen.add(index);
        long loss = idle ? 0 : VisibleLoss.ofSteps(setting.visible(), steps - 1 - index, steps);
        return new Mix(
                mix.graphics() + millionths(step.graphics()),
                mix.processor() + millionths(step.processor()),
                mix.loss() + loss,
                chosen);
    }

    /** Least loss first, so that a mix is beaten only by one that is already there. */
    private static List<Mix> unbeaten(List<Mix> mixes) {
        mixes.sort(BY_LOSS);
        List<Mix> front = new ArrayList<>();
        TreeMap<Long, Long> leastProcessor = new TreeMap<>();
        for (Mix mix : mixes) {
            Map.Entry<Long, Long> cheaper = leastProcessor.floorEntry(mix.graphics());
            if (cheaper == null || cheaper.getValue() > mix.processor()) {
                front.add(mix);
                enter(leastProcessor, mix);
            }
        }
        return front;
    }

    /** Keeps the processor's least cost falling as the card's cost rises. */
    private static void enter(TreeMap<Long, Long> leastProcessor, Mix mix) {
        Map.Entry<Long, Long> next = leastProcessor.ceilingEntry(mix.graphics());
        while (next != null && next.getValue() >= mix.processor()) {
            leastProcessor.remove(next.getKey());
            next = leastProcessor.higherEntry(mix.graphics());
        }
        leastProcessor.put(mix.graphics(), mix.processor());
    }
}
