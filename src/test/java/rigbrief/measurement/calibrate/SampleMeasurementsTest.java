package rigbrief.measurement.calibrate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.FrameColumn;
import rigbrief.file.MeasurementReader;
import rigbrief.measurement.calibrate.Calibration.MisSet;

/** The sample measurements are those of an invented world whose truth stays in the tests. */
class SampleMeasurementsTest {
    private static final long SEED = 7;
    private static final Path FILE = Path.of("scenarios/measurements/thirty-machines.csv");

    /** Run with {@code -Drigbrief.keeps=write} to write the file anew. */
    @Test
    void the_file_is_what_the_generator_makes() throws IOException {
        String csv = new InventedWorld(SEED, 0.10, 1).csv();
        if ("write".equals(System.getProperty("rigbrief.keeps"))) {
            Files.writeString(FILE, csv);
        }

        assertThat(Files.readString(FILE)).isEqualTo(csv);
        assertThat(csv.lines()).hasSize(1 + InventedWorld.MACHINES * 12);
    }

    @Test
    void read_back_it_points_out_the_two_machines_and_no_other() throws BadInput {
        Calibration it =
                new Calibrator(InventedWorld.catalogue(), Terms.usual())
                        .calibrate(
                                MeasurementReader.ofMachines(
                                        FILE, InventedWorld.catalogue(), FrameColumn.usual()));

        assertThat(it.misSet())
                .extracting(MisSet::machine)
                .containsExactly(InventedWorld.SLOW_CARD, InventedWorld.SLOW_PROCESSOR);
    }
}
