package rigbrief.part;

import java.util.List;
import rigbrief.quantity.Length;

/**
 * A cooler for the processor.
 *
 * @param listing identity, look and guarantee, as in every part
 * @param type air or liquid
 * @param sockets sockets it has brackets for
 * @param height top of an air cooler above the board
 * @param radiatorMm length class of the radiator, such as 240; 0 for an air cooler
 * @param thickness radiator without its fans
 * @param resistanceKw thermal resistance at full speed in K/W
 * @param ratedHeatW heat it is made for, in watts
 * @param memoryClearance room for memory modules under it
 * @param fanRaiseMm how far its front fan can be raised over tall memory, in mm
 * @param fanSizeMm size of its fans in mm
 * @param fans number of fans
 * @param maxRpm full speed of its fans
 * @param maxDba level at full speed in dB(A)
 */
public record Cooler(
        Listing listing,
        CoolerType type,
        Fact<List<String>> sockets,
        Fact<Length> height,
        int radiatorMm,
        Fact<Length> thickness,
        double resistanceKw,
        int ratedHeatW,
        Fact<Length> memoryClearance,
        int fanRaiseMm,
        int fanSizeMm,
        int fans,
        int maxRpm,
        double maxDba)
        implements Part {
    static Cooler from(Listing listing, Cells cells) {
        return new Cooler(
                listing,
                cells.choice("type", CoolerType.class),
                cells.maybeList("sockets", entry -> entry),
                cells.length("height_mm", 20, 300),
                cells.wholeOr("radiator_mm", 120, 480, 0),
                cells.length("thickness_mm", 15, 80),
                cells.number("resistance_kw", 0.02, 3),
                cells.whole("rated_heat_w", 20, 600),
                cells.length("memory_clearance_mm", 20, 120),
                cells.wholeOr("fan_raise_mm", 0, 60, 0),
                cells.wholeOr("fan_size_mm", 40, 200, 120),
                cells.wholeOr("fans", 0, 6, 1),
                cells.whole("max_rpm", 0, 6_000),
                cells.number("max_dba", 0, 70));
    }

    @Override
    public Kind kind() {
        return Kind.COOLER;
    }
}
