package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static rigbrief.file.FolderFixture.aFolder;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.build.BuildRecord;
import rigbrief.build.HistoryEntry;
import rigbrief.build.PartState;
import rigbrief.build.Units;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;

class UnitsSectionTest {
    private static final String FILE =
            """
            schema: rigbrief/build/1
            catalogue: { name: Small Stock, digest: 'sha256:00' }
            currency: EUR
            lines:
              - { slot: supply, part: weir-750, unit-price: "99.00", units: [
                  { count: 2, state: ordered, since: 2026-11-21, supplier: gone-since, paid: "98.00" },
                  { count: 1, state: returned, paid: "98.00", refunded: "90.00" } ] }
              - { slot: processor, part: tarn-6, unit-price: 189.9, state: fitted }
            aside:
              - slot: board
                part: left-the-catalogue
                name: Fell Board Z
                unit-price: "80.00"
                units: [ { count: 2, state: faulty } ]
            history:
              - { date: 2026-11-21, by: Ida, slot: supply, part: weir-750, count: 2, from: wanted, to: ordered, paid: "98.00" }
              - { date: 2026-11-22, slot: board, from-part: left-the-catalogue, to-part: fell-b, note: dead slots }
            brief:
              client: x
              currency: EUR
              quantity: 2
              ceiling: 4000
            """;

    private static Catalogue catalogue;

    @BeforeAll
    static void read(@TempDir Path folder) throws BadInput {
        catalogue = CatalogueReader.read(aFolder().write(folder));
    }

    @Test
    void units_that_differ_have_each_their_own_state() throws BadInput {
        BuildRecord build = read(FILE);

        assertThat(build.lines().get(1).units())
                .extracting(units -> units.count() + " " + units.state().word())
                .containsExactly("2 ordered", "1 returned");
        assertThat(build.lines().get(1).state()).isEqualTo(PartState.ORDERED);
    }

    @Test
    void a_line_without_units_has_as_many_as_the_machines_need() throws BadInput {
        BuildRecord build = read(FILE);

        assertThat(build.lines().get(0).units(build.machines()))
                .containsExactly(Units.of(2, PartState.FITTED));
    }

    @Test
    void what_was_set_aside_and_what_was_done_need_not_be_in_the_catalogue() throws BadInput {
        BuildRecord build = read(FILE);

        assertThat(build.aside().get(0).part()).isEqualTo("left-the-catalogue");
        assertThat(build.history()).hasSize(2);
        assertThat(build.history().get(1)).isInstanceOf(HistoryEntry.Swap.class);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "count: 2, state: ordered | count: 3, state: ordered | lines[0].units: found",
                "part: weir-750 | state: wanted, part: weir-750 | expected no state beside units",
                "state: returned, paid | state: sent-off, paid | one of wanted, ordered, received",
                "since: 2026-11-21 | since: 21.11.2026 | expected a date of the calendar",
                "units: [ { count: 2, state: faulty } ] | kept: no | at least one group of units",
                "from: wanted, to: ordered | from: wanted | history[0].to: found nothing",
                "refunded: \"90.00\" | refunded: much | lines[0].units[1].refunded"
            })
    void a_wrong_order_is_refused(String from, String to, String fault) {
        String text = FILE.replaceFirst(Pattern.quote(from), to);

        assertThat(faults(text)).anyMatch(line -> line.contains(fault.strip()));
    }

    private static BuildRecord read(String text) throws BadInput {
        var in = new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
        return BuildReader.read(in, "b", catalogue);
    }

    private static List<String> faults(String text) {
        BadInput bad = catchThrowableOfType(BadInput.class, () -> read(text));
        return bad.faults().stream().map(Fault::text).toList();
    }
}
