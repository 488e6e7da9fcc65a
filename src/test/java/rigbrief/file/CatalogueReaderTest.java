package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static rigbrief.file.FolderFixture.aFolder;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.Offer;
import rigbrief.catalogue.Reference;
import rigbrief.catalogue.TaskTime;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.part.Board;
import rigbrief.part.Kind;
import rigbrief.part.Share;

class CatalogueReaderTest {
    @TempDir Path folder;

    @Test
    void a_folder_without_a_fault_is_read_whole() throws BadInput {
        Catalogue catalogue = CatalogueReader.read(aFolder().write(folder));

        assertThat(catalogue.name()).isEqualTo("Small Stock");
        assertThat(catalogue.asOf()).isEqualTo(LocalDate.of(2026, 11, 20));
        assertThat(catalogue.reference()).isEqualTo(new Reference(24, 74, 83, 40));
        assertThat(catalogue.partCount()).isEqualTo(14);
        assertThat(catalogue.offerCount()).isEqualTo(3);
        assertThat(catalogue.suppliers().get(0).delivery().plain()).isEqualTo("4.90");
        for (Kind kind : Kind.values()) {
            assertThat(catalogue.parts(kind)).as(kind.word()).hasSize(1);
        }
    }

    @Test
    void offers_keep_their_exact_prices_and_the_order_of_the_file() throws BadInput {
        Catalogue catalogue = CatalogueReader.read(aFolder().write(folder));

        List<Offer> offers = catalogue.offers("tarn-6");

        assertThat(offers).extracting(Offer::supplier).containsExactly("millrace", "dovecote");
        assertThat(offers).extracting(o -> o.price().plain()).containsExactly("189.90", "184.50");
        assertThat(catalogue.offers("mere-1t").get(0).price().plain()).isEqualTo("71.00");
    }

    @Test
    void workloads_of_the_three_kinds_are_read_with_their_defaults() throws BadInput {
        Catalogue catalogue = CatalogueReader.read(aFolder().write(folder));

        FrameRate lanes = (FrameRate) catalogue.workload("sunken-lanes").orElseThrow();
        TaskTime vault = (TaskTime) catalogue.workload("vault-drawing").orElseThrow();

        assertThat(lanes.rays().keySet()).containsExactly("off", "full");
        assertThat(lanes.upscaling()).containsEntry("swift", 0.5);
        assertThat(lanes.settings().get(0).standsInForRays()).isTrue();
        assertThat(vault.parallel()).isEqualTo(15_000);
        assertThat(catalogue.workload("map-room").orElseThrow().fitted().n()).isZero();
    }

    @Test
    void lists_inside_a_cell_are_read_entry_by_entry() throws BadInput {
        Catalogue catalogue = CatalogueReader.read(aFolder().write(folder));

        Board board = (Board) catalogue.parts(Kind.BOARD).get(0);

        assertThat(board.shares())
                .containsExactly(
                        new Share(2, List.of(3, 4), List.of()),
                        new Share(1, List.of(), List.of(3)));
    }

    @Test
    void a_byte_order_mark_and_carriage_returns_change_nothing() throws BadInput {
        FolderFixture plain = aFolder();
        FolderFixture marked = aFolder();
        plain.texts()
                .forEach((name, text) -> marked.with(name, "\uFEFF" + text.replace("\n", "\r\n")));

        Catalogue catalogue = CatalogueReader.read(marked.write(folder));

        assertThat(catalogue.partCount()).isEqualTo(14);
        assertThat(catalogue.parts(Kind.DISPLAY).get(0).name()).isEqualTo("Pane Wide 27");
    }

    @Test
    void the_digest_is_the_one_that_checksum_programs_give_for_the_list_of_the_files()
            throws BadInput {
        // Expected value: GNU coreutils, (sha256sum *.csv *.yaml | sort -k2 | sha256sum), run on
        // these very files.
        Catalogue catalogue = CatalogueReader.read(aFolder().write(folder));

        assertThat(catalogue.digest())
                .isEqualTo(
                        "sha256:923335518bcef2a328820b8312cba27015025fb22c3f535773c250f09788f975");
    }

    @Test
    void an_own_column_is_noted_and_does_no_harm() throws BadInput {
        FolderFixture files =
                aFolder()
                        .replace("fan.csv", "current_ma\n", "current_ma,shelf\n")
                        .replace("fan.csv", "pwm4,90\n", "pwm4,90,B2\n");

        CatalogueReader.Reading reading = CatalogueReader.readNoted(files.write(folder));

        assertThat(reading.notes())
                .extracting(Fault::text)
                .containsExactly(
                        folder.resolve("fan.csv")
                                + ":"
                                + FolderFixture.place(files.text("fan.csv"), "shelf")
                                + ": header: found \"shelf\", expected a column that is read"
                                + " here; nothing, if it is your own");
    }

    @Test
    void places_are_right_behind_a_cell_that_spans_lines() throws BadInput {
        // Counted by hand: the second row begins on line 4 since the first holds a line break.
        String text =
                "id,maker,model,note,max_mass_g\n"
                        + "prop-1,Prop,One,\"tall,\nthin\",2500\n"
                        + "prop-2,Prop,Two,,heavy\n";

        List<String> faults = faults(aFolder().with("brace.csv", text));

        assertThat(faults)
                .containsExactly(
                        "brace.csv:4:18: max_mass_g: found \"heavy\", expected a whole number of"
                                + " grams from 100 to 20000; write digits alone, or leave the cell"
                                + " empty if unknown");
    }

    @Test
    void places_are_right_behind_a_byte_order_mark_and_carriage_returns() {
        // Counted by hand.
        String text = "\uFEFFid,maker,model\r\nprop-1,Prop,One\r\nprop-2,,Two\r\n";

        assertThat(faults(aFolder().with("brace.csv", text)))
                .containsExactly(
                        "brace.csv:3:8: maker: found nothing, expected a text; write it in");
    }

    @Test
    void lines_that_are_empty_or_commas_alone_are_passed_by() throws BadInput {
        FolderFixture files = aFolder().with("brace.csv", "\n,,\nid,maker,model\n\n,,\np,P,P\n\n");

        assertThat(CatalogueReader.read(files.write(folder)).parts(Kind.BRACE)).hasSize(1);
    }

    @Test
    void the_files_of_kinds_may_be_missing() throws BadInput {
        FolderFixture files = aFolder().without("brace.csv").without("display.csv");

        assertThat(CatalogueReader.read(files.write(folder)).partCount()).isEqualTo(12);
    }

    @Test
    void the_other_files_must_be_there_and_all_that_are_missing_are_told() {
        FolderFixture files =
                aFolder().without("catalog.yaml").without("offers.csv").without("workloads.yaml");

        String rest =
                ":1:1: file: found nothing, expected a file of this name; check the name and the"
                        + " folder";

        assertThat(faults(files))
                .containsExactly(
                        "catalog.yaml" + rest, "offers.csv" + rest, "workloads.yaml" + rest);
    }

    @Test
    void an_empty_file_is_a_fault() {
        FolderFixture files = aFolder().with("brace.csv", "").with("workloads.yaml", "# none\n");

        assertThat(faults(files))
                .containsExactly(
                        "brace.csv:1:1: file: found nothing, expected a header and rows; write"
                                + " them in, or remove the file",
                        "workloads.yaml:1:1: file: found nothing, expected keys and values; write"
                                + " them in");
    }

    @Test
    void a_file_in_another_encoding_is_a_fault_at_its_first_strange_byte() throws IOException {
        aFolder().write(folder);
        // ISO 8859-1 has u with diaeresis as the single byte FC.
        byte[] latin =
                "id,maker,model\nprop-1,Prop,Gr\u00FCn\n".getBytes(StandardCharsets.ISO_8859_1);
        Files.write(folder.resolve("brace.csv"), latin);

        assertThat(faults())
                .containsExactly(
                        "brace.csv:2:15: file: found \"byte 0xFC\", expected UTF-8; save the file"
                                + " as UTF-8");
    }

    @Test
    void a_file_of_more_than_an_eighth_of_the_memory_is_refused_unread() throws IOException {
        long mostMib = Math.min(512, Runtime.getRuntime().maxMemory() / 8 >> 20);
        aFolder().write(folder);
        try (RandomAccessFile file =
                new RandomAccessFile(folder.resolve("fan.csv").toFile(), "rw")) {
            file.setLength((mostMib + 1 << 20) + 1); // a hole: it takes no room on the disk
        }

        assertThat(faults())
                .containsExactly(
                        ("fan.csv:1:1: file: found \"more than %d MiB\", expected at most %d MiB,"
                                        + " an eighth of the memory allowed; split the file, or"
                                        + " allow more: RIGBRIEF_JAVA_OPTIONS=-Xmx2g")
                                .formatted(mostMib, mostMib));
    }

    @Test
    void a_folder_in_the_place_of_a_file_is_a_fault() throws IOException {
        aFolder().without("fan.csv").write(folder);
        Files.createDirectory(folder.resolve("fan.csv"));

        assertThat(faults())
                .containsExactly(
                        "fan.csv:1:1: file: found \"a folder\", expected a file; name a file"
                                + " inside it");
    }

    @Test
    void semicolons_between_the_columns_are_one_fault_not_a_hundred() {
        FolderFixture files = aFolder().with("brace.csv", "id;maker;model\np;P;P\nq;Q;Q\n");

        assertThat(faults(files))
                .containsExactly(
                        "brace.csv:1:1: header: found \"id;maker;model\", expected commas between"
                                + " the columns; save the file again with commas as separators");
    }

    @Test
    void a_cell_of_more_than_ten_thousand_characters_is_refused() {
        String text = "id,maker,model\nprop-1," + "x".repeat(10_001) + ",One\n";

        assertThat(faults(aFolder().with("brace.csv", text)))
                .containsExactly(
                        "brace.csv:2:8: maker: found \""
                                + "x".repeat(77)
                                + "...\", expected at most 10000 characters; shorten the cell");
    }

    @Test
    void all_faults_of_all_files_are_told_at_once_in_the_order_of_reading() {
        FolderFixture files =
                aFolder()
                        .replace("catalog.yaml", "as-of: 2026-11-20", "as-of: soon")
                        .replace("drive.csv", ",7000,", ",fast,")
                        .replace("drive.csv", ",gen4x4,", ",gen9,")
                        .replace("offers.csv", ",30,2,", ",many,2,")
                        .replace("workloads.yaml", "disk-gb: 18", "disk-gb: -18");

        assertThat(faults(files))
                .extracting(line -> line.replaceAll(": found.*", ""))
                .containsExactly(
                        "catalog.yaml:" + place(files, "catalog.yaml", "soon") + ": as-of",
                        "drive.csv:" + place(files, "drive.csv", "gen9") + ": interface",
                        "drive.csv:" + place(files, "drive.csv", "fast") + ": read_mbs",
                        "offers.csv:" + place(files, "offers.csv", "many") + ": stock",
                        "workloads.yaml:"
                                + place(files, "workloads.yaml", "-18")
                                + ": workloads[1].disk-gb");
    }

    @Test
    void an_offer_for_a_part_whose_row_is_faulty_is_no_second_fault() {
        FolderFixture files = aFolder().replace("drive.csv", ",7000,", ",");

        assertThat(faults(files)).hasSize(1);
    }

    @Test
    void a_folder_that_is_none_is_one_fault() {
        Path missing = folder.resolve("elsewhere");

        BadInput bad = catchThrowableOfType(BadInput.class, () -> CatalogueReader.read(missing));

        assertThat(bad)
                .hasMessage(
                        missing
                                + ":1:1: catalogue: found nothing, expected a folder; name the"
                                + " folder of the catalogue");
    }

    @Test
    void sixty_thousand_parts_are_read() throws BadInput {
        String row = aFolder().text("memory.csv").lines().skip(1).findFirst().orElseThrow();
        StringBuilder text = new StringBuilder(aFolder().text("memory.csv"));
        for (int i = 0; i < 60_000; i++) {
            text.append(row.replace("rill-32", "rill-" + (100 + i))).append('\n');
        }

        Path written = aFolder().with("memory.csv", text.toString()).write(folder);

        assertThat(CatalogueReader.read(written).parts(Kind.MEMORY)).hasSize(60_001);
    }

    private static String place(FolderFixture files, String name, String needle) {
        return FolderFixture.place(files.text(name), needle);
    }

    private List<String> faults(FolderFixture files) {
        files.write(folder);
        return faults();
    }

    private List<String> faults() {
        BadInput bad = catchThrowableOfType(BadInput.class, () -> CatalogueReader.read(folder));
        return bad.faults().stream()
                .map(fault -> fault.text().replace(folder.toString() + "/", ""))
                .toList();
    }
}
