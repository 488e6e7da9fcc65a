package rigbrief.measurement.calibrate;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import rigbrief.assess.FrameModel;
import rigbrief.catalogue.FrameRate;

/**
 * Which titles' memory exponents measurements can say anything of: those that were measured at
 * memory rates apart from each other, where the processor matters.
 */
final class MemoryRates {
    /** Rates closer than this count as one, as natural logarithms. Common practice. */
    private static final double APART_LOG = 0.1;

    /** A measurement that hangs on the processor by less says little of its memory. */
    private static final double LEAST_SLOPE = 0.1;

    private final Map<String, Double> lowest = new LinkedHashMap<>();
    private final Map<String, Double> highest = new LinkedHashMap<>();
    private final Set<String> titles = new LinkedHashSet<>();

    private MemoryRates() {}

    static MemoryRates of(List<Observation> observations) {
        MemoryRates rates = new MemoryRates();
        for (Observation each : observations) {
            logShortfall(each).ifPresent(log -> rates.add(each, log));
        }
        return rates;
    }

    private void add(Observation each, double log) {
        String title = each.measured().workload();
        titles.add(title);
        if (Sensitivity.asListed(each.speed(), Channel.PROCESSOR) >= LEAST_SLOPE) {
            lowest.merge(title, log, Math::min);
            highest.merge(title, log, Math::max);
        }
    }

    /** Exponents that stay as listed, since no two memory rates tell of them. */
    Set<Unknown> held() {
        Set<Unknown> held = new LinkedHashSet<>();
        for (String title : titles) {
            double low = lowest.getOrDefault(title, 0.0);
            double high = highest.getOrDefault(title, 0.0);
            if (high - low < APART_LOG) {
                held.add(Unknown.memoryExponent(title));
            }
        }
        return held;
    }

    /**
     * Natural logarithm of the reference memory rate over the machine's; empty where memory does
     * not enter the model.
     */
    static OptionalDouble logShortfall(Observation each) {
        if (!(each.workload() instanceof FrameRate)) {
            return OptionalDouble.empty();
        }
        int mts = each.measured().rig().orElseThrow().memoryMts();
        return OptionalDouble.of(Math.log(FrameModel.REFERENCE_MTS / Math.max(1, mts)));
    }
}
