package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReplaceCommandTest {
    private static final String BOARD = "skerrowby-cove-1644m";
    private static final String LIST =
            String.join(
                    "\n",
                    "merrowby-courante-6-n",
                    BOARD,
                    "lathmere-plainbar-2x16-d5-5600-c46",
                    "garrowick-couplet-sorrel-280",
                    "slatecombe-chip-1-tb",
                    "wattlemarsh-weir-650",
                    "brackenfin-frond-92",
                    "coffermere-bin-40");

    @TempDir private Path folder;

    @Test
    void a_part_that_is_gone_is_replaced_and_the_build_filed() throws IOException {
        Path out = folder.resolve("changed.build.yaml");
        var console = new Captured().input(LIST);

        ExitStatus status =
                console.run("replace", "-", "--unavailable", BOARD, "--out", out.toString());

        assertThat(console.err()).doesNotContain("fault");
        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out()).contains("LEAST CHANGE").contains("Next: rigbrief order ");
        assertThat(Files.readString(out)).doesNotContain("    part: " + BOARD).contains("history:");
    }

    @Test
    void a_part_may_be_named_by_its_slot() {
        var console = new Captured().input(LIST);

        assertThat(console.run("replace", "-", "--unavailable", "board"))
                .isEqualTo(ExitStatus.DONE);

        assertThat(console.out()).contains("Next: rigbrief replace - --unavailable board --out");
    }

    @Test
    void a_build_is_set_against_a_newer_catalogue() {
        var console = new Captured().input(LIST);

        ExitStatus status = console.run("replace", "-", "--against", "catalog-sample");

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out()).contains("Order first").contains("If one of them sells out");
    }

    @Test
    void json_goes_out_alone_with_its_schema() {
        var console = new Captured().input(LIST);

        console.run("replace", "-", "--unavailable", BOARD, "--format", "json");

        assertThat(console.out())
                .contains("\"schema\" : \"rigbrief/replacement/1\"")
                .endsWith("}\n");
        assertThat(console.err()).contains("Next: ");
    }

    @Test
    void a_part_that_is_not_in_the_build_is_wrong_use_and_the_nearest_is_named() {
        var console = new Captured().input(LIST);

        ExitStatus status = console.run("replace", "-", "--faulty", "bord");

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(console.err()).contains("did you mean board?");
    }

    @Test
    void a_price_without_money_is_wrong_use() {
        var console = new Captured().input(LIST);

        assertThat(console.run("replace", "-", "--price-rise", "board"))
                .isEqualTo(ExitStatus.WRONG_USE);

        assertThat(console.err()).contains("expected PART=MONEY");
    }

    @Test
    void an_existing_file_is_not_overwritten() throws IOException {
        Path out = Files.writeString(folder.resolve("there.yaml"), "precious");
        var console = new Captured().input(LIST);

        ExitStatus status =
                console.run("replace", "-", "--unavailable", BOARD, "--out", out.toString());

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(Files.readString(out)).isEqualTo("precious");
    }
}
