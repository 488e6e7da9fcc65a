package rigbrief.part;

import java.util.Optional;

/**
 * The cooler that comes in a processor's box.
 *
 * @param ratedHeatW heat it is made for, in watts
 * @param maxDba level at full speed in dB(A)
 */
public record BoxedCooler(int ratedHeatW, double maxDba) {
    static Optional<BoxedCooler> from(Cells cells) {
        int heatW = cells.wholeOr("boxed_cooler_w", 0, 400, 0);
        double dba = cells.numberOr("boxed_cooler_dba", 10, 70, 42);
        return heatW == 0 ? Optional.empty() : Optional.of(new BoxedCooler(heatW, dba));
    }
}
