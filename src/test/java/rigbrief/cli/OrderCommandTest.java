package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OrderCommandTest {
    private static final String BOARD = "hobbinfold-plain-1644m-d4";
    private static final String BUILD =
            """
            schema: rigbrief/build/1
            tier: lean
            catalogue: { name: small, digest: 'sha256:00' }
            currency: EUR
            lines:
              - { slot: board, part: %s, supplier: quaymark, unit-price: "58.90" }
              - { slot: drive, part: slatecombe-chip-500-gb, unit-price: "32.02", state: ordered }
              - { slot: second-drive, part: slatecombe-chip-500-gb, unit-price: "32.02" }
            """
                    .formatted(BOARD);

    @TempDir Path folder;

    private Path file;

    @BeforeEach
    void write() throws IOException {
        file = Files.writeString(folder.resolve("desk.build.yaml"), BUILD);
    }

    @Test
    void a_move_is_kept_in_the_file_with_its_history() throws IOException {
        var console = new Captured();

        ExitStatus status =
                console.run(
                        "order",
                        file.toString(),
                        BOARD,
                        "ordered",
                        "--date",
                        "2026-11-21",
                        "--paid",
                        "57.5",
                        "--by",
                        "Ida",
                        "--note",
                        "last two");

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out())
                .startsWith("Ordered on 2026-11-21: 1 unit of " + BOARD + ", until then wanted.")
                .contains("due 2026-11-");
        assertThat(Files.readString(file))
                .contains("paid: \"57.50\"", "since: 2026-11-21", "by: Ida", "note: last two");
    }

    /** Between these two zones lie 26 hours: never is it the same day in both. */
    @Test
    void a_clock_that_jumps_back_can_not_put_a_move_before_the_one_it_follows() throws Exception {
        TimeZone usual = TimeZone.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            new Captured().run("order", file.toString(), "board", "ordered");
            String ahead = Files.readString(file);
            TimeZone.setDefault(TimeZone.getTimeZone("Etc/GMT+12"));
            var console = new Captured();

            ExitStatus status = console.run("order", file.toString(), "board", "received");

            assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
            assertThat(console.err()).contains("--date");
            assertThat(file).as("left alone").hasContent(ahead);
            assertThat(new Captured().run("order", file.toString(), "drive", "received"))
                    .as("another part has a time of its own")
                    .isEqualTo(ExitStatus.DONE);
        } finally {
            TimeZone.setDefault(usual);
        }
    }

    @Test
    void the_same_moves_make_the_same_bytes() throws IOException {
        Path other = Files.writeString(folder.resolve("other.build.yaml"), BUILD);

        for (Path each : Stream.of(file, other).toList()) {
            new Captured().run("order", each.toString(), BOARD, "ordered", "--date", "2026-11-21");
        }

        assertThat(file).hasSameBinaryContentAs(other);
    }

    @Test
    void without_a_part_the_order_is_shown_and_the_file_left_alone() {
        var console = new Captured();

        ExitStatus status = console.run("order", file.toString());

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out())
                .contains("To do", "Order from Quaymark Wholesale:", "Money", "planned")
                .contains("Next: rigbrief order " + file + " " + BOARD + " ordered");
        assertThat(file).hasContent(BUILD);
    }

    @Test
    void json_goes_out_alone_with_its_schema() {
        var console = new Captured();

        console.run("order", file.toString(), "--format", "json");

        assertThat(console.out()).contains("\"schema\" : \"rigbrief/order/1\"").endsWith("}\n");
        assertThat(console.err()).contains("Next: ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "board fitted | possible now: ordered, received",
                "boad ordered | expected a part of the build",
                "slatecombe-chip-500-gb received | name the slot instead of the part",
                "board orderd | did you mean ordered?",
                "board ordered --units 2 | expected a number from 1 to 1",
                "board ordered --date 21.11.2026 | write year, month, day: 2026-11-20",
                "board ordered --paid 57,50 | expected an amount of EUR",
                "board ordered --supplier quaymerk | did you mean quaymark?",
                "board wanted --refunded 3 | --refunded: found one, expected it with returned only",
                "board | found no STATE behind board",
                "--units 2 | found options of a move and no PART"
            })
    void a_wrong_move_is_wrong_use_and_changes_nothing(String line, String expected) {
        var console = new Captured();

        ExitStatus status = console.run(("order " + file + " " + line).split(" "));

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(console.err()).contains(expected);
        assertThat(console.out()).isEmpty();
        assertThat(file).hasContent(BUILD);
    }

    @Test
    void a_plain_list_of_parts_is_not_written_over() throws IOException {
        Path list = Files.writeString(folder.resolve("parts"), BOARD + "\n");
        var console = new Captured();

        ExitStatus status = console.run("order", list.toString(), "board", "ordered");

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(console.err()).contains("expected a build file");
        assertThat(list).hasContent(BOARD);
    }

    @Test
    void one_of_two_like_drives_is_named_by_its_slot() {
        var console = new Captured();

        ExitStatus status =
                console.run("order", file.toString(), "drive", "received", "--date", "2026-11-25");

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out()).contains("Received on 2026-11-25");
    }
}
