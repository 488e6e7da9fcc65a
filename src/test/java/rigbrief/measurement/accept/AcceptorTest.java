package rigbrief.measurement.accept;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rigbrief.assess.Assessor;
import rigbrief.brief.WorkloadNeed.Settings;
import rigbrief.build.Build;
import rigbrief.measurement.Measurement;
import rigbrief.measurement.accept.JudgedLine.Verdict;
import rigbrief.part.Resolution;
import rigbrief.part.Slot;

class AcceptorTest {

    @Test
    void every_module_has_a_test_of_its_own() {
        Map<String, SheetLine> lines = sheet().byId();

        assertThat(lines).containsKeys("memory.module-1", "memory.module-2", "memory.together");
        assertThat(lines).doesNotContainKey("memory.module-3");
    }

    @Test
    void every_id_stands_once() {
        assertThat(sheet().lines()).extracting(SheetLine::id).doesNotHaveDuplicates();
    }

    @Test
    void a_build_without_a_card_is_asked_nothing_about_one() {
        Sheet sheet = Bench.acceptor(Bench.machine().without(Slot.GRAPHICS)).sheet();

        assertThat(sheet.byId())
                .doesNotContainKeys(SheetIds.CARD_C, SheetIds.CARD_LANES, SheetIds.ON_CARD);
    }

    @Test
    void speeds_are_expected_as_the_assessment_predicts_them() {
        Build build = Bench.machine().make();
        var predictions =
                new Assessor(Bench.brief(), Bench.catalogue(build)).assess(build).predictions();
        Map<String, SheetLine> lines = sheet().byId();

        assertThat(lines.get(Bench.OPEN + ".average").middle())
                .hasValue(predictions.get(0).averageFps());
        assertThat(lines.get(Bench.OPEN + ".low").middle()).hasValue(predictions.get(0).lowFps());
        assertThat(lines.get(Bench.ALL_THREADS + ".finish-within").middle())
                .hasValue(predictions.get(3).seconds());
    }

    @Test
    void a_measurement_at_the_briefs_settings_fills_the_sheets_line() {
        Acceptance test =
                Bench.acceptor(Bench.machine())
                        .judge(List.of(), List.of(measured(Optional.of("high"), 50)));

        JudgedLine line = line(test, Bench.OPEN + ".average");
        assertThat(line.measured()).hasValue(50);
        assertThat(line.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(test.kept()).isFalse();
        assertThat(test.lines()).hasSameSizeAs(sheet().lines());
    }

    @Test
    void a_measurement_at_another_resolution_adds_a_line_without_a_promise() {
        Measurement small =
                new Measurement(
                        "bench.csv",
                        7,
                        "",
                        Optional.empty(),
                        "heath-rising",
                        new Settings(Optional.empty(), Optional.empty(), Optional.empty()),
                        Optional.of(new Resolution(1920, 1080)),
                        OptionalDouble.of(50),
                        OptionalDouble.empty(),
                        OptionalDouble.empty());

        Acceptance test = Bench.acceptor(Bench.machine()).judge(List.of(), List.of(small));

        JudgedLine line = line(test, "line-7.heath-rising.average");
        assertThat(line.line().promise()).isEmpty();
        assertThat(line.verdict()).isEqualTo(Verdict.SUSPECT);
        assertThat(line(test, Bench.OPEN + ".average").verdict()).isEqualTo(Verdict.OPEN);
        assertThat(test.lines()).hasSize(sheet().lines().size() + 1);
    }

    @Test
    void a_socket_that_fails_blames_no_part_for_the_speed() {
        Acceptance test =
                Bench.acceptor(Bench.machine())
                        .judge(List.of(new Reading("ports.front", 0)), List.of());

        assertThat(test.kept()).isFalse();
        assertThat(test.causes()).isEmpty();
    }

    private static Measurement measured(Optional<String> preset, double averageFps) {
        return new Measurement(
                "bench.csv",
                2,
                "",
                Optional.empty(),
                "heath-rising",
                new Settings(preset, Optional.of("off"), Optional.empty()),
                Optional.empty(),
                OptionalDouble.of(averageFps),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static Sheet sheet() {
        return Bench.acceptor(Bench.machine()).sheet();
    }

    private static JudgedLine line(Acceptance test, String id) {
        return test.lines().stream()
                .filter(line -> line.line().id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
