package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static rigbrief.file.FolderFixture.aFolder;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.build.Build;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.PartState;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.part.Slot;

class BuildReaderTest {
    private static final String FILE =
            """
            schema: rigbrief/build/1
            tier: lean
            catalogue: { name: Small Stock, digest: 'sha256:00' }
            currency: EUR
            lines:
              - { slot: supply, part: weir-750, unit-price: "99.00", supplier: millrace, state: ordered }
              - { slot: processor, part: tarn-6, unit-price: 189.9 }
              - { slot: case, part: owned-case, unit-price: 0, kept: yes, state: received, spec: { maker: Old, model: Box, expansion_slots: 7, side: solid, impedance: 0.0004, width_mm: 200, height_mm: 450, depth_mm: 450 } }
            """;

    private static Catalogue catalogue;

    @BeforeAll
    static void read(@TempDir Path folder) throws BadInput {
        catalogue = CatalogueReader.read(aFolder().write(folder));
    }

    @Test
    void a_build_file_is_read_in_slot_order() throws BadInput {
        BuildRecord build = read(FILE);

        assertThat(build.tier()).contains("lean");
        assertThat(build.brief()).isEmpty();
        assertThat(build.catalogueDigest()).isEqualTo("sha256:00");
        assertThat(build.lines())
                .extracting(BuildLine::slot)
                .containsExactly(Slot.PROCESSOR, Slot.SUPPLY, Slot.CASE);
        assertThat(build.lines())
                .extracting(BuildLine::state)
                .containsExactly(PartState.WANTED, PartState.ORDERED, PartState.RECEIVED);
        assertThat(build.lines().get(0).unitPrice().plain()).isEqualTo("189.90");
        assertThat(build.lines().get(2).kept()).isTrue();
    }

    @Test
    void a_plain_list_fills_the_slots_by_kind() throws BadInput {
        String list =
                """
                # what the client sent
                tarn-6, fell-b ; rill-32 x2   # two kits
                mere-1t
                mere-1t

                airt-120 x3
                """;

        Build build = read(list).build();

        assertThat(build)
                .hasToString(
                        "processor=tarn-6, board=fell-b, memory=rill-32 x2, drive=mere-1t,"
                                + " second-drive=mere-1t, fans=airt-120 x3");
    }

    @Test
    void two_drives_of_a_kind_take_both_places() throws BadInput {
        assertThat(read("mere-1t x2").build()).hasToString("drive=mere-1t, second-drive=mere-1t");
    }

    @Test
    void the_same_kit_named_twice_is_two_kits() throws BadInput {
        assertThat(read("rill-32\nrill-32").build()).hasToString("memory=rill-32 x2");
    }

    @Test
    void a_plain_list_has_the_cheapest_offer_that_is_in_stock() throws BadInput {
        // Dovecote is cheaper and has none left.
        List<BuildLine> lines = read("tarn-6\nfell-b\n").lines();

        assertThat(lines.get(0).supplier()).contains("millrace");
        assertThat(lines.get(0).unitPrice().plain()).isEqualTo("189.90");
        assertThat(lines.get(1).supplier()).isEmpty();
        assertThat(lines.get(1).unitPrice().plain()).isEqualTo("0.00");
    }

    @ParameterizedTest
    @MethodSource("listFaults")
    void a_wrong_list_is_refused(String text, List<String> expected) {
        assertThat(faults(text)).isEqualTo(expected);
    }

    static Stream<Arguments> listFaults() {
        return Stream.of(
                list(
                        "tarn-6\n  tarn-7 # newer\n",
                        "b:2:3: part: found \"tarn-7\", expected the id of a part in the catalogue;"
                                + " did you mean tarn-6?"),
                list(
                        "mere-1t;mere-1t;mere-1t",
                        "b:1:17: part: found \"mere-1t\", expected no more drive than there are"
                                + " slots; take one drive out"),
                list(
                        "tarn-6 x0",
                        "b:1:1: part: found \"tarn-6\", expected a number of pieces from 1 to 16;"
                                + " correct the number behind x"),
                list(
                        "# nothing\n\n",
                        "b:1:1: part: found nothing, expected at least one part id; write one a"
                                + " line"),
                list(
                        "first\nsecond",
                        "b:1:1: part: found \"first\", expected the id of a part in the catalogue;"
                                + " name another, or add it there",
                        "b:2:1: part: found \"second\", expected the id of a part in the catalogue;"
                                + " name another, or add it there"));
    }

    private static Arguments list(String text, String... lines) {
        return Arguments.of(text, List.of(lines));
    }

    @ParameterizedTest
    @MethodSource("fileFaults")
    void one_wrong_text_in_a_build_file_is_one_fault_at_its_place(FaultCase wrong) {
        String text = FolderFixture.replaceOnce(FILE, wrong.from(), wrong.text());

        assertThat(faults(text)).isEqualTo(List.of(wrong.line("b", FILE)));
    }

    static Stream<FaultCase> fileFaults() {
        return Stream.of(
                value(
                        "schema: rigbrief/build/1",
                        "schema: »rigbrief/build/9",
                        "schema: found \"rigbrief/build/9\", expected rigbrief/build/1; name a build"
                                + " file, or a plain list of part ids"),
                value(
                        "currency: EUR",
                        "currency: »USD",
                        "currency: found \"USD\", expected EUR, the catalogue's currency; use the"
                                + " catalogue that the build was made from"),
                value(
                        "part: tarn-6",
                        "part: »tarn-5",
                        "lines[1].part: found \"tarn-5\", expected a part that is still in the"
                                + " catalogue; name the catalogue that the build was made from (and"
                                + " for replace the newer one with --against), or"
                                + " another part"),
                value(
                        "part: tarn-6",
                        "part: »fell-b",
                        "lines[1].part: found \"fell-b\", expected a part of kind processor, and"
                                + " this is a board; correct the slot or the part"),
                value(
                        "{ slot: processor, part: tarn-6",
                        "{ slot: »supply, part: weir-750",
                        "lines[1].slot: found \"supply\", expected each slot once; put what is"
                                + " alike under one slot, with pieces"),
                value(
                        "supplier: millrace",
                        "supplier: »millrase",
                        "lines[0].supplier: found \"millrase\", expected a supplier of the"
                                + " catalogue: dovecote, millrace; did you mean millrace?"),
                value(
                        "state: ordered",
                        "state: »orderd",
                        "lines[0].state: found \"orderd\", expected one of wanted, ordered,"
                                + " received, fitted, faulty, returned; did you mean ordered?"),
                value(
                        "unit-price: 189.9 ",
                        "unit-price: »-1 ",
                        "lines[1].unit-price: found \"-1\", expected an amount from 0 to 100000000;"
                                + " write it in EUR, such as 1900"),
                FaultCase.at(
                        "b",
                        ", unit-price: 189.9 ",
                        "",
                        "{ slot: processor",
                        "lines[1].unit-price: found nothing, expected an amount from 0 to"
                                + " 100000000; write it in EUR, such as 1900"),
                value(
                        "side: solid",
                        "side: »wood",
                        "lines[2].spec.side: found \"wood\", expected one of solid, tinted, clear;"
                                + " use one of these words"),
                value(
                        "kept: yes",
                        "»kepd: yes",
                        "lines[2].kepd: found \"kepd\", expected a key that is known under"
                                + " lines[2]; did you mean kept?"));
    }

    @Test
    void a_build_file_without_lines_and_catalogue_tells_both() {
        assertThat(faults("schema: rigbrief/build/1\n"))
                .extracting(line -> line.replaceAll(": found.*", ""))
                .containsExactly("b:1:1: catalogue", "b:1:1: lines");
    }

    @Test
    void a_fault_in_the_brief_inside_is_told_with_its_path() {
        String text = FILE + "brief:\n  client: x\n  currency: EUR\n  ceiling: lots\n";

        assertThat(faults(text))
                .containsExactly(
                        "b:12:12: brief.ceiling: found \"lots\", expected an amount above 0, at"
                                + " most 100000000; write it in EUR, such as 1900");
    }

    private static FaultCase value(String from, String to, String fault) {
        return FaultCase.of("b", from, to, fault);
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
