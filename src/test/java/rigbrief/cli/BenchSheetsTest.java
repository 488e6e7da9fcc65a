package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sheets for counter, bench and owner from a list of part ids, as a user runs them. */
class BenchSheetsTest {
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

    @ParameterizedTest
    @CsvSource({"orders,ORDER LIST", "assembly,ASSEMBLY PLAN", "handover,HANDOVER SHEET"})
    void a_list_of_ids_is_enough_for_each_sheet(String what, String head) {
        var console = new Captured().input(LIST);

        ExitStatus status = console.run("document", "-", "--what", what);

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out()).startsWith(head).contains("Next: rigbrief document -");
    }

    @Test
    void an_order_list_comes_as_csv_alone() {
        var console = new Captured().input(LIST);

        ExitStatus status = console.run("document", "-", "--what", "orders", "--format", "csv");

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out()).startsWith("row,buy-order,supplier,").doesNotContain("Next:");
        assertThat(console.err()).contains("Next: ");
    }

    @ParameterizedTest
    @CsvSource({"proposal", "assembly", "handover"})
    void csv_of_what_is_no_list_is_wrong_use(String what) {
        var console = new Captured().input(LIST);

        ExitStatus status = console.run("document", "-", "--what", what, "--format", "csv");

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(console.out()).isEmpty();
        assertThat(console.err()).contains("--format: found csv, expected text, html or pdf");
    }

    @ParameterizedTest
    @CsvSource({"orders", "assembly", "handover"})
    void a_build_that_lacks_parts_is_a_fault_of_the_file(String what) {
        var console = new Captured().input("ostrel-damask-6\n");

        ExitStatus status = console.run("document", "-", "--what", what);

        assertThat(status).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(console.err()).contains("expected also board, memory, drive, supply, case");
    }
}
