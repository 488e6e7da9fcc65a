package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static rigbrief.file.FolderFixture.aFolder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.Shape;
import rigbrief.catalogue.PartRates;
import rigbrief.catalogue.TaskTime;
import rigbrief.catalogue.Workload;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.fixture.WorkloadFixture;
import rigbrief.part.Drive;
import rigbrief.part.Graphics;
import rigbrief.part.Processor;

/** Overlays: written, laid over a catalogue, and refused where they are none. */
class OverlayTest {
    private static final OptionalDouble AS_LISTED = OptionalDouble.empty();

    @TempDir private Path base;
    @TempDir private Path overlay;
    @TempDir private Path topmost;

    @BeforeEach
    void writeCatalogue() {
        aFolder().write(base);
    }

    private Catalogue stacked(Path... folders) throws BadInput {
        return CatalogueReader.readNoted(List.of(folders)).catalogue();
    }

    @Test
    void every_workload_comes_back_as_it_was_written() throws Exception {
        List<Workload> workloads = stacked(base).workloads();

        OverlayWriter.write(overlay, workloads, List.of(), List.of("made by a test"), false);

        assertThat(stacked(base, overlay).workloads()).isEqualTo(workloads);
        assertThat(Files.readString(overlay.resolve("workloads.yaml")))
                .startsWith("# made by a test\nworkloads:\n");
    }

    @Test
    void an_overlay_that_was_not_written_to_its_end_is_refused() throws Exception {
        List<Workload> workloads = stacked(base).workloads();
        OverlayWriter.write(overlay, workloads, List.of(), List.of(), false);
        Files.writeString(overlay.resolve(OverlayWriter.UNFINISHED), "");

        assertThatThrownBy(() -> stacked(base, overlay))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("broken off");

        OverlayWriter.write(overlay, workloads, List.of(), List.of(), true);
        assertThat(stacked(base, overlay).workloads()).isEqualTo(workloads);
    }

    @Test
    void every_workload_of_the_sample_comes_back_as_it_was_written() throws Exception {
        Path sample = Path.of("catalog-sample");
        List<Workload> workloads = stacked(sample).workloads();

        OverlayWriter.write(overlay, workloads, List.of(), List.of(), false);

        assertThat(stacked(sample, overlay).workloads()).isEqualTo(workloads);
    }

    @Test
    void rates_stand_in_place_of_those_of_the_sheets_and_the_rest_stays() throws Exception {
        List<PartRates> rates =
                List.of(
                        PartRates.ofCard(
                                "gill-8",
                                OptionalDouble.of(19.2),
                                AS_LISTED,
                                OptionalDouble.of(8.5)),
                        PartRates.ofProcessor("tarn-6", OptionalDouble.of(104.25), AS_LISTED),
                        PartRates.ofDrive("mere-1t", OptionalDouble.of(2_345.4), AS_LISTED));

        OverlayWriter.write(overlay, stacked(base).workloads(), rates, List.of(), false);

        Graphics card = (Graphics) stacked(base, overlay).part("gill-8").orElseThrow();
        Processor processor = (Processor) stacked(base, overlay).part("tarn-6").orElseThrow();
        Graphics listed = (Graphics) stacked(base).part("gill-8").orElseThrow();
        assertThat(card).isEqualTo(listed.rated(19.2, listed.bandwidthGbs(), 8.5));
        assertThat(processor.rateSingle()).isEqualTo(104.25);
        assertThat(processor.rateAll()).isEqualTo(640);
        Drive drive = (Drive) stacked(base, overlay).part("mere-1t").orElseThrow();
        Drive asListed = (Drive) stacked(base).part("mere-1t").orElseThrow();
        assertThat(drive).isEqualTo(asListed.rated(2_345, asListed.writeMbs()));
    }

    @Test
    void a_title_may_say_how_its_frame_times_come_together() throws Exception {
        FrameRate plain = (FrameRate) stacked(base).workload("sunken-lanes").orElseThrow();
        FrameRate shaped = WorkloadFixture.shaped(plain, new Shape(6.5, 0.08, 3.25));

        OverlayWriter.write(overlay, List.of(shaped), List.of(), List.of(), false);

        FrameRate read = (FrameRate) stacked(base, overlay).workload("sunken-lanes").orElseThrow();
        assertThat(plain.shape()).isEqualTo(new Shape(4, 0.12, 2));
        assertThat(read.shape()).isEqualTo(new Shape(6.5, 0.08, 3.25));
    }

    @Test
    void a_shape_out_of_range_is_refused() throws Exception {
        FrameRate plain = (FrameRate) stacked(base).workload("sunken-lanes").orElseThrow();
        FrameRate shaped = WorkloadFixture.shaped(plain, new Shape(0.5, 0.6, 21));

        OverlayWriter.write(overlay, List.of(shaped), List.of(), List.of(), false);

        assertThat(faults(base, overlay))
                .filteredOn(line -> line.contains("shape"))
                .hasSize(3)
                .anyMatch(line -> line.contains("overlap: found \"0.5\""))
                .anyMatch(line -> line.contains("spread: found \"0.6\""))
                .anyMatch(line -> line.contains("overflow-penalty: found \"21\""));
    }

    @Test
    void figures_are_written_with_five_digits() {
        assertThat(WorkloadWriter.figure(104.4712345)).isEqualTo("104.47");
        assertThat(WorkloadWriter.figure(0.000123456789)).isEqualTo("0.00012346");
        assertThat(WorkloadWriter.figure(15_000)).isEqualTo("15000");
    }

    @Test
    void the_topmost_overlay_wins_and_the_digest_covers_all_in_their_order() throws Exception {
        Files.writeString(overlay.resolve("rates.csv"), "part,tflops\ngill-8,18\n");
        Files.writeString(topmost.resolve("rates.csv"), "part,tflops\ngill-8,17\n");

        Catalogue both = stacked(base, overlay, topmost);

        assertThat(((Graphics) both.part("gill-8").orElseThrow()).tflops()).isEqualTo(17);
        assertThat(
                        List.of(
                                stacked(base).digest(),
                                stacked(base, overlay).digest(),
                                stacked(base, topmost).digest(),
                                both.digest(),
                                stacked(base, topmost, overlay).digest()))
                .doesNotHaveDuplicates();
        assertThat(stacked(base).digest()).isEqualTo(CatalogueReader.read(base).digest());
    }

    @Test
    void workloads_keep_their_places() throws Exception {
        Workload task = stacked(base).workload("vault-drawing").orElseThrow();
        TaskTime listed = (TaskTime) task;
        TaskTime heavier =
                new TaskTime(
                        listed.id(),
                        listed.title(),
                        listed.job(),
                        listed.memoryGb(),
                        listed.vramGb(),
                        listed.diskGb(),
                        new Workload.Fitted(30, 0.05),
                        1_000,
                        listed.parallel(),
                        listed.gflop(),
                        listed.readGb(),
                        listed.writeGb());

        OverlayWriter.write(overlay, List.of(heavier), List.of(), List.of(), false);

        List<Workload> workloads = stacked(base, overlay).workloads();
        assertThat(workloads).hasSize(3);
        assertThat(workloads.get(0)).isInstanceOf(FrameRate.class);
        assertThat(workloads.get(1)).isEqualTo(heavier);
    }

    @Test
    void all_faults_of_an_overlay_are_reported_with_those_below() throws IOException {
        aFolder().replace("offers.csv", "mere-1t", "mere-2t").write(base);
        Files.writeString(
                overlay.resolve("rates.csv"),
                "part,tflops,rate_all\ngil-8,3,\ngill-8,-1,\ntarn-6,3,\ngill-8,3,\ngill-8,4,\n");
        Files.writeString(
                overlay.resolve("workloads.yaml"),
                "workloads:\n  - id: map-rom\n    title: x\n    kind: capacity\n    memory-gb: 1\n"
                        + "    disk-gb: 1\n");

        assertThat(faults(base, overlay))
                .hasSize(6)
                .anyMatch(line -> line.startsWith(base.resolve("offers.csv").toString()))
                .contains(
                        overlay.resolve("workloads.yaml")
                                + ":2:9: workloads[0].id: found \"map-rom\", expected a workload of the catalogue: sunken-lanes, vault-drawing, map-room; did you mean map-room?",
                        overlay.resolve("rates.csv")
                                + ":2:1: part: found \"gil-8\", expected the id of a processor, card or drive of the catalogue: tarn-6, gill-8, mere-1t; did you mean gill-8?",
                        overlay.resolve("rates.csv")
                                + ":4:8: tflops: found \"3\", expected no such rate of a processor; leave the cell empty",
                        overlay.resolve("rates.csv")
                                + ":6:1: part: found \"gill-8\", expected a part named once; take one of the two rows out");
    }

    @Test
    void what_is_no_overlay_is_refused() throws IOException {
        Path file = Files.createFile(overlay.resolve("file"));

        assertThat(faults(base, base))
                .containsExactly(
                        base
                                + ":1:1: overlay: found \"a second catalogue\", expected an overlay: workloads.yaml, rates.csv or both; name one catalogue, first, and overlays behind it");
        assertThat(faults(base, topmost))
                .containsExactly(
                        topmost
                                + ":1:1: overlay: found nothing, expected workloads.yaml, rates.csv or both; name the folder of an overlay");
        assertThat(faults(base, file))
                .containsExactly(
                        file
                                + ":1:1: overlay: found \"a file\", expected a folder; name the folder it was written to");
    }

    @Test
    void files_that_are_there_are_named_and_not_overwritten() throws Exception {
        List<Workload> workloads = stacked(base).workloads();
        OverlayWriter.write(overlay, workloads, List.of(), List.of(), false);

        assertThat(OverlayWriter.taken(overlay))
                .containsExactly(overlay.resolve("workloads.yaml"), overlay.resolve("rates.csv"));
        assertThat(OverlayWriter.taken(topmost)).isEmpty();
        assertThatThrownBy(
                        () -> OverlayWriter.write(overlay, workloads, List.of(), List.of(), false))
                .isInstanceOf(FileRefused.class);
        OverlayWriter.write(overlay, workloads, List.of(), List.of("anew"), true);
        assertThat(Files.readString(overlay.resolve("workloads.yaml"))).startsWith("# anew\n");
    }

    private static List<String> faults(Path... folders) {
        BadInput bad =
                catchThrowableOfType(
                        BadInput.class, () -> CatalogueReader.readNoted(List.of(folders)));
        return bad.faults().stream().map(Fault::text).toList();
    }
}
