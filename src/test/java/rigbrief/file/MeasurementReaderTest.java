package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.file.FolderFixture.aFolder;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;
import rigbrief.measurement.Measurement;
import rigbrief.measurement.Rig;
import rigbrief.part.Resolution;

class MeasurementReaderTest {
    private static final String PARTS = "machine,processor,graphics,memory,drive,workload";

    @TempDir private Path folder;
    private Catalogue catalogue;

    @BeforeEach
    void readCatalogue() throws BadInput {
        catalogue = CatalogueReader.read(aFolder().write(folder));
    }

    @Test
    void a_row_of_a_title_names_machine_parts_settings_and_rates() throws BadInput {
        Measurement it =
                read(PARTS
                                + ",resolution,preset,rays,upscaling,average_fps,low_fps\n"
                                + "a1,tarn-6,gill-8,rill-32,,sunken-lanes,2560x1440,low,full,swift,81.5,62\n")
                        .get(0);

        Rig rig = it.rig().orElseThrow();
        assertThat(it.place()).isEqualTo("file:2");
        assertThat(it.machine()).isEqualTo("a1");
        assertThat(rig.processor().id()).isEqualTo("tarn-6");
        assertThat(rig.graphics().orElseThrow().id()).isEqualTo("gill-8");
        assertThat(rig.memoryMts()).isEqualTo(5_600);
        assertThat(rig.memoryGb()).isEqualTo(32);
        assertThat(it.resolution()).contains(new Resolution(2560, 1440));
        assertThat(it.settings().preset()).contains("low");
        assertThat(it.settings().rays()).contains("full");
        assertThat(it.settings().upscaling()).contains("swift");
        assertThat(it.averageFps()).hasValue(81.5);
        assertThat(it.lowFps()).hasValue(62);
        assertThat(it.seconds()).isEmpty();
    }

    @Test
    void what_the_memory_really_ran_at_goes_before_what_its_kit_allows() throws BadInput {
        List<Measurement> measured =
                read(
                        PARTS
                                + ",memory_mts,memory_kits,average_fps\n"
                                + "a1,tarn-6,,rill-32,,sunken-lanes,4800,2,30\n");

        assertThat(measured.get(0).rig().orElseThrow().memoryMts()).isEqualTo(4_800);
        assertThat(measured.get(0).rig().orElseThrow().memoryGb()).isEqualTo(64);
        assertThat(measured.get(0).rig().orElseThrow().graphics()).isEmpty();
    }

    @Test
    void rates_are_taken_from_a_log_beside_the_file() throws Exception {
        Files.writeString(folder.resolve("run.csv"), "n,ms\n1,10\n2,30\n");
        Path file = folder.resolve("measured.csv");
        Files.writeString(
                file,
                PARTS
                        + ",frame_log\na1,tarn-6,gill-8,rill-32,,sunken-lanes,run.csv\n"
                        + "a1,tarn-6,gill-8,rill-32,,sunken-lanes,run.csv\n");

        List<Measurement> measured =
                MeasurementReader.ofMachines(
                        file, catalogue, new FrameColumn(Optional.of("ms"), false));

        assertThat(measured).hasSize(2);
        assertThat(measured.get(0).averageFps().getAsDouble()).isCloseTo(50, within(1e-9));
        assertThat(measured.get(0).lowFps().getAsDouble()).isCloseTo(1_000 / 30.0, within(1e-9));
    }

    @Test
    void parts_are_taken_from_a_build_beside_the_file() throws Exception {
        Files.writeString(folder.resolve("a1.build"), "tarn-6\ngill-8\nrill-32\nmere-1t\n");
        Path file = folder.resolve("measured.csv");
        Files.writeString(file, "machine,build,workload,seconds\na1,a1.build,vault-drawing,70\n");

        Measurement it = MeasurementReader.ofMachines(file, catalogue, FrameColumn.usual()).get(0);

        assertThat(it.rig().orElseThrow().processor().id()).isEqualTo("tarn-6");
        assertThat(it.rig().orElseThrow().drive().orElseThrow().id()).isEqualTo("mere-1t");
        assertThat(it.seconds()).hasValue(70);
    }

    @Test
    void a_file_about_one_build_names_no_parts() {
        Faults faults = new Faults();

        List<Measurement> measured =
                MeasurementReader.ofBuild(
                        new SourceText("file", "workload,average_fps\nsunken-lanes,70\n", ""),
                        Path.of(""),
                        Known.of(catalogue),
                        FrameColumn.usual(),
                        faults);

        assertThat(faults.all()).isEmpty();
        assertThat(measured.get(0).rig()).isEmpty();
        assertThat(measured.get(0).averageFps()).hasValue(70);
    }

    @Test
    void all_faults_of_a_file_are_reported_at_once() {
        assertThat(
                        faults(
                                PARTS
                                        + ",preset,average_fps,low_fps,seconds\n"
                                        + "a1,tarn-7,gill-8,rill-32,,sunken-lanes,,70,,\n"
                                        + "a2,tarn-6,gill-8,,,sunken-lanes,,70,,\n"
                                        + "a3,tarn-6,,rill-32,,sunken-lane,,70,,\n"
                                        + "a4,tarn-6,,rill-32,,sunken-lanes,hgh,,,\n"
                                        + "a5,tarn-6,,rill-32,,sunken-lanes,,50,60,8\n"
                                        + "a6,tarn-6,,rill-32,,vault-drawing,,,,\n"
                                        + "a7,tarn-6,,rill-32,mere-1t,vault-drawing,,60,,9\n"
                                        + "a7,tarn-6,gill-8,rill-32,,sunken-lanes,,70,,\n"))
                .containsExactly(
                        "file:2:4: processor: found \"tarn-7\", expected the id of a processor in the catalogue: tarn-6; did you mean tarn-6?",
                        "file:3:18: memory: found nothing, expected the id of a memory in the catalogue; write the part that was measured, or the build file in a column build",
                        "file:4:21: workload: found \"sunken-lane\", expected a workload of the catalogue: sunken-lanes, vault-drawing, map-room; did you mean sunken-lanes?",
                        "file:5:38: average_fps: found nothing, expected the measured average in frames per second; write it in, or take the row out",
                        "file:5:34: preset: found \"hgh\", expected a step that this title has: low, high; did you mean high?",
                        "file:6:41: seconds: found \"8\", expected no time of a title that draws frames; leave the cell empty",
                        "file:6:38: low_fps: found \"60\", expected no more than the average; look whether the two are exchanged",
                        "file:7:38: seconds: found nothing, expected the measured time of the task in seconds; write it in, or take the row out",
                        "file:7:20: drive: found nothing, expected the id of the drive it ran from, since this task moves data; write it in, or take the row out",
                        "file:8:43: average_fps: found \"60\", expected no frame rate of a task; leave the cell empty",
                        "file:9:1: machine: found \"a7\", expected a name used for one processor and card; give the machine another name, or correct its parts");
    }

    @Test
    void a_workload_without_a_speed_and_a_file_without_a_row_are_faults() {
        assertThat(faults(PARTS + ",seconds\na1,tarn-6,,rill-32,,map-room,3\n"))
                .containsExactly(
                        "file:2:21: workload: found \"map-room\", expected a workload with a speed; take the row out: this one only takes up room");
        assertThat(faults(PARTS + ",seconds\n"))
                .containsExactly(
                        "file:2:1: row: found nothing, expected a measurement; write a row for each");
    }

    @Test
    void faults_of_logs_and_builds_are_reported_with_those_of_the_file() throws IOException {
        Files.writeString(folder.resolve("run.csv"), "ms\nfast\n");
        Path file = folder.resolve("measured.csv");
        Files.writeString(
                file,
                "machine,build,workload,frame_log\na1,none.build,sunken-lanes,run.csv\n"
                        + "a1,none.build,sunken-lanes,run.csv\n");

        BadInput bad =
                catchThrowableOfType(
                        BadInput.class,
                        () -> MeasurementReader.ofMachines(file, catalogue, FrameColumn.usual()));

        assertThat(bad.faults())
                .extracting(fault -> Path.of(fault.file()).getFileName().toString())
                .containsExactly("none.build", "run.csv");
    }

    private static ByteArrayInputStream in(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    private List<Measurement> read(String text) throws BadInput {
        return MeasurementReader.ofMachines(in(text), "file", catalogue, FrameColumn.usual());
    }

    private List<String> faults(String text) {
        BadInput bad = catchThrowableOfType(BadInput.class, () -> read(text));
        return bad.faults().stream().map(Fault::text).toList();
    }
}
