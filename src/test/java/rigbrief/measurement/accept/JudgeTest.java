package rigbrief.measurement.accept;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.measurement.accept.JudgedLine.Verdict;
import rigbrief.measurement.accept.SheetLine.Expected;
import rigbrief.measurement.accept.SheetLine.Promised;
import rigbrief.measurement.accept.SheetLine.Station;
import rigbrief.measurement.accept.SheetLine.Suspect;

class JudgeTest {
    private static final SheetLine RATE =
            line("rate", LineUnit.FPS, 80, 72, 88, Suspect.EITHER, new Promised(70, false, true));
    private static final SheetLine TIME =
            line(
                    "time",
                    LineUnit.SECONDS,
                    60,
                    54,
                    66,
                    Suspect.EITHER,
                    new Promised(70, true, true));
    private static final SheetLine WISH =
            line("wish", LineUnit.FPS, 80, 72, 88, Suspect.EITHER, new Promised(100, false, false));

    @ParameterizedTest
    @CsvSource({
        "69.99, FAIL",
        "70, SUSPECT",
        "71.99, SUSPECT",
        "72, PASS",
        "88, PASS",
        "88.01, SUSPECT"
    })
    void a_rate_breaks_its_promise_or_is_out_of_range_or_passes(double fps, Verdict verdict) {
        assertThat(verdict(RATE, fps)).isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"70.01, FAIL", "70, SUSPECT", "66, PASS", "54, PASS", "53.9, SUSPECT"})
    void a_time_is_promised_as_the_most(double seconds, Verdict verdict) {
        assertThat(verdict(TIME, seconds)).isEqualTo(verdict);
    }

    @Test
    void a_wish_can_not_be_broken() {
        assertThat(verdict(WISH, 80)).isEqualTo(Verdict.PASS);
    }

    @Test
    void a_line_that_was_not_measured_stays_open() {
        assertThat(Judge.judge(List.of(RATE), Map.of()).get(0).verdict()).isEqualTo(Verdict.OPEN);
    }

    @Test
    void a_failed_check_breaks_a_promise() {
        SheetLine check = SheetLine.check("check", Station.LOOK, "a lead", "pull it");

        assertThat(verdict(check, 0)).isEqualTo(Verdict.FAIL);
        assertThat(verdict(check, 1)).isEqualTo(Verdict.PASS);
    }

    /** Hand calculation: in a room 6 K warmer, 70 to 80 °C become 76 to 86 °C. */
    @Test
    void temperatures_are_judged_in_the_room_they_were_taken_in() {
        SheetLine room = line(SheetIds.ROOM_C, LineUnit.CELSIUS, 22, 12, 32, Suspect.EITHER, null);
        SheetLine heat =
                line(SheetIds.PROCESSOR_C, LineUnit.CELSIUS, 75, 70, 80, Suspect.ABOVE, null);

        List<JudgedLine> cool =
                Judge.judge(List.of(room, heat), Map.of(SheetIds.PROCESSOR_C, 84.0));
        List<JudgedLine> warm =
                Judge.judge(
                        List.of(room, heat),
                        Map.of(SheetIds.PROCESSOR_C, 84.0, SheetIds.ROOM_C, 28.0));

        assertThat(cool.get(1).verdict()).isEqualTo(Verdict.SUSPECT);
        assertThat(warm.get(1).verdict()).isEqualTo(Verdict.PASS);
        assertThat(warm.get(1).line().range().orElseThrow().high()).isEqualTo(86);
    }

    @Test
    void only_what_is_worse_than_expected_is_called_worse() {
        assertThat(Judge.judge(List.of(RATE), Map.of("rate", 95.0)).get(0).worse()).isFalse();
        assertThat(Judge.judge(List.of(RATE), Map.of("rate", 71.0)).get(0).worse()).isTrue();
        assertThat(Judge.judge(List.of(TIME), Map.of("time", 50.0)).get(0).worse()).isFalse();
        assertThat(Judge.judge(List.of(TIME), Map.of("time", 68.0)).get(0).worse()).isTrue();
    }

    private static Verdict verdict(SheetLine line, double figure) {
        return Judge.judge(List.of(line), Map.of(line.id(), figure)).get(0).verdict();
    }

    private static SheetLine line(
            String id,
            LineUnit unit,
            double middle,
            double low,
            double high,
            Suspect suspect,
            Promised promised) {
        return new SheetLine(
                id,
                Station.SPEED,
                id,
                "",
                unit,
                Optional.of(new Expected(middle, low, high, suspect)),
                Optional.ofNullable(promised));
    }
}
