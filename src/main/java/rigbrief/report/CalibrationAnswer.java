package rigbrief.report;

import java.util.List;
import rigbrief.measurement.calibrate.Calibration;

/**
 * A calibration with what it was made from.
 *
 * @param files names of the files of measurements
 * @param calibration what was found
 * @param written names of the files written; none when none were asked for
 */
public record CalibrationAnswer(List<String> files, Calibration calibration, List<String> written) {
    public CalibrationAnswer {
        files = List.copyOf(files);
        written = List.copyOf(written);
    }
}
