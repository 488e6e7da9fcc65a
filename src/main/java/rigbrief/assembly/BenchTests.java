package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import rigbrief.build.Build;
import rigbrief.part.Slot;
import rigbrief.wording.Measured;

/**
 * Lists the tests before handover, with what this build should show. Durations are common practice;
 * temperatures, level and draw are the models'.
 */
final class BenchTests {
    private BenchTests() {}

    static List<Check> of(Bench bench, MemoryPlaces memory) {
        Build build = bench.build();
        List<Check> tests = new ArrayList<>();
        tests.add(new Check(bench.say("test.memory"), bench.say("test.memory.expect")));
        if (build.memoryModules() > 1) {
            tests.add(
                    new Check(
                            bench.say("test.modules", memory.first()),
                            bench.say("test.modules.expect")));
        }
        tests.add(
                new Check(
                        bench.say("test.processor"),
                        limit(
                                bench,
                                bench.say("test.name.processor"),
                                bench.it().full().processorC(),
                                build.processor().limitC()
                                        - bench.brief().headroom().thermalMarginK())));
        if (build.has(Slot.GRAPHICS)) {
            tests.add(
                    new Check(
                            bench.say("test.card"),
                            limit(
                                    bench,
                                    bench.say("test.name.card"),
                                    bench.it().full().graphicsC(),
                                    Math.round(bench.it().catalogue().reference().cardLimitC())
                                            - bench.brief().headroom().thermalMarginK())));
        }
        tests.add(
                new Check(
                        bench.say("test.draw"),
                        bench.say(
                                "test.draw.expect",
                                Math.round(bench.it().power().wallW()),
                                Math.round(bench.it().power().wallIdleW()))));
        tests.add(
                new Check(
                        bench.say("test.noise"),
                        bench.say(
                                "test.noise.expect",
                                Measured.rounded(1, bench.it().load().levelDba(), ""),
                                Measured.rounded(1, bench.it().idle().levelDba(), ""))));
        tests.add(new Check(bench.say("test.drives"), bench.say("test.drives.expect")));
        tests.add(new Check(bench.say("test.sleep"), bench.say("test.sleep.expect")));
        tests.add(new Check(bench.say("test.sockets"), bench.say("test.sockets.expect")));
        return List.copyOf(tests);
    }

    private static String limit(Bench bench, String what, double expectedC, long mostC) {
        return bench.say("test.limit", what, Math.round(expectedC), mostC);
    }
}
