package rigbrief.report;

import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.NeedFixture.aNeed;
import static rigbrief.fixture.WorkloadFixture.MARSH;
import static rigbrief.fixture.WorkloadFixture.aWorkload;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.Climate;
import rigbrief.assess.Cost;
import rigbrief.assess.Power;
import rigbrief.assess.Prediction;
import rigbrief.assess.Promise;
import rigbrief.audit.Audit;
import rigbrief.audit.Audit.Figures;
import rigbrief.audit.AuditFinding;
import rigbrief.audit.AuditFinding.Level;
import rigbrief.audit.GoalScore;
import rigbrief.audit.MarginLine;
import rigbrief.build.Build;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Margin;
import rigbrief.wording.Phrase;

/** An audit with figures that no model computed, so that what pins a layout pins no model. */
final class FixedAudit {
    private FixedAudit() {}

    /** The ordinary build, with a caution, a note and a tight margin. */
    static Audit ofOrdinaryBuild() {
        return of(aBuild().make(), List.of(caution(), note()));
    }

    /** The same with a broken rule before everything else. */
    static Audit ofBrokenBuild() {
        return of(aBuild().make(), List.of(breach(), caution(), note()));
    }

    /** Any build with those figures. */
    static Audit of(Build build, List<AuditFinding> findings) {
        return new Audit(
                build,
                findings,
                List.of(
                        margin("cooler-height", 165, 158, Unit.MILLIMETRE),
                        margin("card-length", 330, 300, Unit.MILLIMETRE),
                        margin("supply-load", 750, 600, Unit.WATT)),
                List.of(
                        new GoalScore(
                                "workloads", "It runs fast", 4, 6_466, "Lantern Marsh at 82 fps"),
                        new GoalScore("quiet", "It is quiet", 3, 6_510, "34.1 dB(A) at the seat")),
                4 * 6_466 + 3 * 6_510,
                70_000,
                List.of(prediction()),
                cost(build),
                Optional.of(
                        new Figures(
                                new Power(431, 640, 410, 62, 478, 71, 0.5747, 260),
                                climate(36, 24.1),
                                climate(71, 33.8),
                                climate(83, 38.2))));
    }

    private static Prediction prediction() {
        return new Prediction(
                aNeed(MARSH).mustAverage(60).wishAverage(100).make(),
                aWorkload().frames(),
                71.2,
                50,
                0,
                0.4,
                0.9,
                3,
                "causeway",
                List.of(
                        new Promise(
                                MARSH, Promise.Measure.AVERAGE, true, 71.2, 63, 80.4, 60, 0.97, 65),
                        new Promise(
                                MARSH,
                                Promise.Measure.AVERAGE,
                                false,
                                71.2,
                                63,
                                80.4,
                                100,
                                0.002,
                                65)));
    }

    private static Climate climate(double processorC, double levelDba) {
        return new Climate(processorC, processorC + 3, 8.1, 0.4, 0.5, levelDba, 0);
    }

    private static Cost cost(Build build) {
        List<Cost.Line> lines = new ArrayList<>();
        build.filled()
                .forEach(
                        (slot, part) -> {
                            if (slot != Slot.CASE) {
                                lines.add(
                                        new Cost.Line(
                                                slot, CatalogueFixture.KESTREL, 12_900, 1, 3));
                            }
                        });
        long parts = lines.size() * 12_900L;
        return new Cost(parts, 690, 12_000, 0, parts + 12_690, lines, 1, 3, 0, List.of());
    }

    private static MarginLine margin(String rule, long have, long need, Unit unit) {
        return new MarginLine(rule, rule, new Margin(have, need, unit));
    }

    private static AuditFinding breach() {
        return new AuditFinding(
                "socket",
                "Processor fits the board's socket",
                Level.BREACH,
                1,
                Unit.CONDITION,
                Phrase.data("processor has socket K880, board has M1644"),
                "maker's sheet: socket",
                List.of(),
                Optional.empty());
    }

    private static AuditFinding caution() {
        return new AuditFinding(
                "family",
                "Board's firmware knows the processor",
                Level.CAUTION,
                0,
                Unit.CONDITION,
                Phrase.data(
                        "the board needs firmware F12 before its first start; it can be updated without a"
                                + " processor"),
                "maker's sheet: firmware",
                List.of(),
                Optional.empty());
    }

    private static AuditFinding note() {
        return new AuditFinding(
                "memory-rate",
                "Memory runs at its own rate",
                Level.NOTE,
                0,
                Unit.CONDITION,
                Phrase.data("memory sold as 5600 MT/s runs at 4800 MT/s"),
                "maker's sheet: memory rate",
                List.of(),
                Optional.empty());
    }
}
