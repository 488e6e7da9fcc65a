package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ExplainCommandTest {
    private static final String LIST =
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

    @Test
    void a_number_is_explained_and_the_next_command_named() {
        var console = new Captured().input(LIST);

        ExitStatus status = console.run("explain", "-", "--number", "heat.processor-c");

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out()).startsWith("heat.processor-c").contains("Next: rigbrief audit -");
    }

    @Test
    void without_a_number_the_names_are_listed() {
        var console = new Captured().input(LIST);

        assertThat(console.run("explain", "-")).isEqualTo(ExitStatus.DONE);

        assertThat(console.out()).contains("heat.processor-c", "power.wall-w", "noise.load-dba");
    }

    @Test
    void an_unknown_number_is_wrong_use_and_the_nearest_is_named() {
        var console = new Captured().input(LIST);

        ExitStatus status = console.run("explain", "-", "--number", "heat.procesor-c");

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(console.out()).isEmpty();
        assertThat(console.err()).contains("did you mean heat.processor-c?");
    }

    @Test
    void json_goes_out_alone_with_its_schema() {
        var console = new Captured().input(LIST);

        console.run("explain", "-", "--number", "cost.total", "--format", "json");

        assertThat(console.out())
                .contains("\"schema\" : \"rigbrief/explanation/1\"")
                .endsWith("}\n");
        assertThat(console.err()).contains("Next: ");
    }
}
