package rigbrief.part;

import rigbrief.quantity.Current;

/**
 * A fan, or a box of like fans.
 *
 * @param listing identity, look and guarantee, as in every part
 * @param sizeMm frame size in mm
 * @param maxRpm full speed
 * @param flowM3h free flow of one fan in m³/h
 * @param pressurePa shut-off pressure of one fan in Pa
 * @param maxDba level of one fan at full speed in dB(A)
 * @param pack fans in the box
 * @param connector how it is fed
 * @param current current of one fan
 */
public record Fan(
        Listing listing,
        int sizeMm,
        int maxRpm,
        double flowM3h,
        double pressurePa,
        double maxDba,
        int pack,
        FanConnector connector,
        Fact<Current> current)
        implements Part {
    static Fan from(Listing listing, Cells cells) {
        return new Fan(
                listing,
                cells.whole("size_mm", 40, 230),
                cells.whole("max_rpm", 200, 10_000),
                cells.number("flow_m3h", 5, 500),
                cells.number("pressure_pa", 0.1, 200),
                cells.number("max_dba", 5, 70),
                cells.wholeOr("pack", 1, 10, 1),
                cells.choiceOr("connector", FanConnector.PWM4),
                cells.current("current_ma", 10, 3_000));
    }

    @Override
    public Kind kind() {
        return Kind.FAN;
    }
}
