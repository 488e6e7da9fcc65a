package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.audit.AuditFinding;
import rigbrief.audit.AuditFinding.Level;
import rigbrief.build.Build;

/**
 * How to put one build together, from the first look to the last test.
 *
 * @param build the build
 * @param tools what to have at hand
 * @param cautions what hurts people or parts
 * @param tight lengths with little to spare
 * @param lookAt what the rules ask to look at, cautions and breaches
 * @param firmware the update that must come before the first boot; empty when none must
 * @param memory which memory slots to fill
 * @param drives where the drives go
 * @param fans where the fans go and which way they blow
 * @param headers which header feeds which fan
 * @param mounting when the cooler goes on
 * @param steps the order of work
 * @param connections what is plugged where
 * @param screens which output goes to which input
 * @param firstBoot what to see to after the first start
 * @param tests tests before handover
 */
public record AssemblyPlan(
        Build build,
        List<Tool> tools,
        List<Caution> cautions,
        List<TightSpot> tight,
        List<AuditFinding> lookAt,
        Optional<FirmwareStep> firmware,
        MemoryPlaces memory,
        List<DriveHome> drives,
        FanPlan fans,
        FanHeaders headers,
        CoolerMounting mounting,
        List<Step> steps,
        List<Connection> connections,
        List<ScreenPlug> screens,
        List<Check> firstBoot,
        List<Check> tests) {

    /** The plan for a build on the bench, in its language. */
    public static AssemblyPlan of(Bench bench) {
        MemoryPlaces memory = MemoryPlaces.of(bench.build());
        List<DriveHome> drives = DriveHome.of(bench.it());
        FanPlan fans = FanPlan.of(bench.it());
        FanHeaders headers = FanHeaders.of(bench.it(), fans, bench.texts());
        List<ScreenPlug> screens = ScreenPlug.of(bench.it());
        return new AssemblyPlan(
                bench.build(),
                Tool.of(bench, drives),
                Caution.of(bench),
                TightSpot.of(bench.audit()),
                lookAt(bench),
                FirmwareStep.of(bench.it()),
                memory,
                drives,
                fans,
                headers,
                CoolerMounting.of(bench),
                OrderOfWork.of(bench, drives, memory, fans),
                Connections.of(bench, drives, headers, screens),
                screens,
                FirstBoot.of(bench, drives, fans, screens),
                BenchTests.of(bench, memory));
    }

    private static List<AuditFinding> lookAt(Bench bench) {
        List<AuditFinding> lookAt = new ArrayList<>();
        for (AuditFinding finding : bench.audit().findings()) {
            if (finding.level() != Level.NOTE) {
                lookAt.add(finding);
            }
        }
        return List.copyOf(lookAt);
    }
}
