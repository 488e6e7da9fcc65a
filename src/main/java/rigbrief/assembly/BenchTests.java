package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import rigbrief.build.Build;
import rigbrief.part.Slot;

/**
 * Lists the tests before handover, with what this build should show. Durations are common practice;
 * temperatures, level and draw are the models'.
 */
final class BenchTests {
    private BenchTests() {}

    static List<Check> of(Bench bench, MemoryPlaces memory) {
        Build build = bench.build();
        List<Check> tests = new ArrayList<>();
        tests.add(
                new Check(
                        "Memory test from a stick, two full passes at the set rate (a night for large kits)",
                        "not one error"));
        if (build.memoryModules() > 1) {
            tests.add(
                    new Check(
                            "Only if there is an error: one module at a time in slot %d, then the good one in each slot"
                                    .formatted(memory.first()),
                            "tells a bad module from a bad slot; all good alone: try a lower rate"));
        }
        tests.add(
                new Check(
                        "Processor under full load for 30 minutes",
                        limit(
                                "processor",
                                bench.it().full().processorC(),
                                build.processor().limitC()
                                        - bench.brief().headroom().thermalMarginK())));
        if (build.has(Slot.GRAPHICS)) {
            tests.add(
                    new Check(
                            "Graphics card under full load for 30 minutes, then both together",
                            limit(
                                    "card",
                                    bench.it().full().graphicsC(),
                                    Math.round(bench.it().catalogue().reference().cardLimitC())
                                            - bench.brief().headroom().thermalMarginK())));
        }
        tests.add(
                new Check(
                        "Draw at the wall, if there is a meter",
                        "about %d W under the client's heaviest work, %d W at rest"
                                .formatted(
                                        Math.round(bench.it().power().wallW()),
                                        Math.round(bench.it().power().wallIdleW()))));
        tests.add(
                new Check(
                        "Noise at the seat, by ear or meter",
                        "about %s dB(A) under load, %s dB(A) at rest; no rattle, no whine"
                                .formatted(
                                        Wording.number(1, bench.it().load().levelDba()),
                                        Wording.number(1, bench.it().idle().levelDba()))));
        tests.add(
                new Check(
                        "Each drive's own health report, then a large file written and read back",
                        "no warning; the copy is equal"));
        tests.add(
                new Check(
                        "Sleep and wake three times, then a cold start after ten minutes without mains",
                        "comes back each time with every setting"));
        tests.add(new Check("Each socket in front and behind", "a stick and a headset are found"));
        return List.copyOf(tests);
    }

    private static String limit(String what, double expectedC, long mostC) {
        return "%s about %d °C in a room as warm as planned, at most %d °C; no restart, no error"
                .formatted(what, Math.round(expectedC), mostC);
    }
}
