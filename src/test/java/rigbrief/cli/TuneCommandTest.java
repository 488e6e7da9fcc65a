package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TuneCommandTest {
    /** A machine with a fast card, from the sample catalogue. */
    static final String LIST =
            String.join(
                    "\n",
                    "merrowby-courante-6-n",
                    "skerrowby-cove-1644m",
                    "lathmere-plainbar-2x16-d5-5600-c46",
                    "garrowick-couplet-sorrel-280",
                    "slatecombe-chip-1-tb",
                    "wattlemarsh-weir-650",
                    "brackenfin-frond-92",
                    "coffermere-bin-40");

    static final String BRIEF = "scenarios/potter.yaml";

    @Test
    void every_title_of_the_brief_gets_settings_and_the_next_command_is_named() {
        var console = new Captured().input(LIST);

        ExitStatus status = console.run("tune", "-", "--brief", BRIEF);

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out())
                .startsWith("Settings for each title")
                .contains("Harbour of Glass", "in the menu", "Frame cap")
                .contains("Next: rigbrief accept - --brief " + BRIEF);
        assertThat(console.err()).isEmpty();
    }

    @Test
    void without_a_brief_there_is_nothing_to_tune_and_a_brief_is_asked_for() {
        var console = new Captured().input(LIST);

        assertThat(console.run("tune", "-")).isEqualTo(ExitStatus.DONE);

        assertThat(console.out())
                .contains("names no title that draws frames")
                .contains("Next: rigbrief tune - --brief BRIEF");
    }

    @Test
    void json_goes_out_alone_with_its_schema() {
        var console = new Captured().input(LIST);

        console.run("tune", "-", "--brief", BRIEF, "--format", "json");

        assertThat(console.out()).contains("\"schema\" : \"rigbrief/tuning/1\"").endsWith("}\n");
        assertThat(console.err()).contains("Next: ");
    }

    @Test
    void a_lower_target_turns_less_down() {
        var high = new Captured().input(LIST);
        var low = new Captured().input(LIST);

        high.run("tune", "-", "--brief", BRIEF, "--target", "110");
        low.run("tune", "-", "--brief", BRIEF, "--target", "20");

        assertThat(turnedDown(low)).isLessThan(turnedDown(high));
    }

    private static long turnedDown(Captured console) {
        return console.out()
                .lines()
                .filter(line -> line.matches(".*(hardly seen|not seen|seen on looking|at once).*"))
                .count();
    }

    @ParameterizedTest
    @CsvSource({
        "--target, 5, 'found 5, expected 10 to 1000 frames per second'",
        "--variable-from, 300, 'found 300, expected 0 to 200 Hz'",
        "--hold-in, most, 'expected all, all-but-worst or a share of play time'",
        "--hold-in, 0%, 'expected all, all-but-worst or a share of play time'"
    })
    void an_option_out_of_range_is_wrong_use(String option, String value, String expected) {
        var console = new Captured().input(LIST);

        ExitStatus status = console.run("tune", "-", "--brief", BRIEF, option, value);

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(console.err()).contains(expected);
        assertThat(console.out()).isEmpty();
    }

    @Test
    void a_machine_that_lacks_a_part_is_refused_by_name() {
        var console = new Captured().input(LIST.replace("slatecombe-chip-1-tb\n", ""));

        assertThat(console.run("tune", "-", "--brief", BRIEF)).isEqualTo(ExitStatus.BAD_INPUT);

        assertThat(console.err()).contains("expected also drive");
    }
}
