package rigbrief.report;

import java.nio.file.Path;
import java.util.List;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.CatalogueReader;
import rigbrief.file.FrameColumn;
import rigbrief.file.MeasurementReader;
import rigbrief.measurement.Measurement;
import rigbrief.measurement.calibrate.Calibrator;
import rigbrief.measurement.calibrate.Terms;

/** Calibrations of the sample catalogue by the sample measurements. */
final class CalibrationAnswers {
    static final String SAMPLE = "scenarios/measurements/thirty-machines.csv";

    private CalibrationAnswers() {}

    /** By all of them. */
    static CalibrationAnswer all() {
        return of(List.of(SAMPLE), Integer.MAX_VALUE);
    }

    /** By the first few, which are of one machine. */
    static CalibrationAnswer few() {
        return of(List.of(SAMPLE, "another.csv"), 9);
    }

    private static CalibrationAnswer of(List<String> files, int most) {
        try {
            Catalogue catalogue = CatalogueReader.read(Path.of("catalog-sample"));
            List<Measurement> measured =
                    MeasurementReader.ofMachines(Path.of(SAMPLE), catalogue, FrameColumn.usual());
            Calibrator calibrator = new Calibrator(catalogue, Terms.usual());
            return new CalibrationAnswer(
                    files,
                    calibrator.calibrate(measured.subList(0, Math.min(most, measured.size()))),
                    most < measured.size() ? List.of() : List.of("fitted/workloads.yaml"));
        } catch (BadInput bad) {
            throw new IllegalStateException(bad);
        }
    }
}
