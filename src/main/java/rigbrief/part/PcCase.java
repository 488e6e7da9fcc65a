package rigbrief.part;

import java.util.List;
import rigbrief.quantity.Length;

/**
 * A case.
 *
 * @param listing identity, look and guarantee, as in every part
 * @param boards board sizes it takes
 * @param graphicsLength longest graphics card with nothing mounted behind the front fans
 * @param graphicsHeight tallest graphics card
 * @param expansionSlots openings for cards
 * @param coolerHeight tallest processor cooler
 * @param supplies supply bodies it takes
 * @param supplyLength longest supply with the drive cage out
 * @param supplyLengthWithCage longest supply with the drive cage in use
 * @param positions where fans can be mounted
 * @param includedFans fans that come mounted
 * @param includedFanM3h free flow of one included fan in m³/h
 * @param includedFanPa shut-off pressure of one included fan in Pa
 * @param includedFanDba level of one included fan at full speed in dB(A)
 * @param radiators where radiators can be mounted
 * @param bays35 3.5-inch bays
 * @param bays25 2.5-inch bays
 * @param frontPorts front ports, each wanting a board header
 * @param side side panel
 * @param dampingDb sound the panels take away, in dB
 * @param impedance flow resistance in Pa per (m³/h)²
 * @param widthMm outer width in mm
 * @param heightMm outer height in mm
 * @param depthMm outer depth in mm
 * @param cardBracket whether a bracket that carries a graphics card comes with it
 */
public record PcCase(
        Listing listing,
        Fact<List<BoardForm>> boards,
        Fact<Length> graphicsLength,
        Fact<Length> graphicsHeight,
        int expansionSlots,
        Fact<Length> coolerHeight,
        Fact<List<SupplyForm>> supplies,
        Fact<Length> supplyLength,
        Fact<Length> supplyLengthWithCage,
        List<FanPosition> positions,
        List<IncludedFans> includedFans,
        double includedFanM3h,
        double includedFanPa,
        double includedFanDba,
        List<RadiatorPosition> radiators,
        int bays35,
        int bays25,
        Fact<Tally<FrontPort>> frontPorts,
        SidePanel side,
        double dampingDb,
        double impedance,
        int widthMm,
        int heightMm,
        int depthMm,
        boolean cardBracket)
        implements Part {
    public PcCase {
        positions = List.copyOf(positions);
        includedFans = List.copyOf(includedFans);
        radiators = List.copyOf(radiators);
    }

    static PcCase from(Listing listing, Cells cells) {
        return new PcCase(
                listing,
                cells.maybeList("boards", entry -> Words.read(entry, BoardForm.class)),
                cells.length("graphics_length_mm", 100, 600),
                cells.length("graphics_height_mm", 50, 300),
                cells.whole("expansion_slots", 0, 12),
                cells.length("cooler_height_mm", 20, 300),
                cells.maybeList("supplies", entry -> Words.read(entry, SupplyForm.class)),
                cells.length("supply_length_mm", 80, 400),
                cells.length("supply_length_with_cage_mm", 80, 400),
                cells.listOrNone("positions", FanPosition::read),
                cells.listOrNone("included_fans", IncludedFans::read),
                cells.numberOr("included_fan_m3h", 5, 400, 80),
                cells.numberOr("included_fan_pa", 0.1, 100, 12),
                cells.numberOr("included_fan_dba", 5, 60, 25),
                cells.listOrNone("radiators", RadiatorPosition::read),
                cells.wholeOr("bays_35", 0, 20, 0),
                cells.wholeOr("bays_25", 0, 20, 0),
                cells.tally("front_usb", FrontPort.class),
                cells.choice("side", SidePanel.class),
                cells.numberOr("damping_db", 0, 20, 0),
                cells.number("impedance", 0.00001, 1),
                cells.whole("width_mm", 60, 700),
                cells.whole("height_mm", 60, 900),
                cells.whole("depth_mm", 60, 900),
                cells.yes("card_bracket"));
    }

    @Override
    public Kind kind() {
        return Kind.CASE;
    }

    /** Outer volume in tenths of a litre, rounded to the nearest. */
    public long volumeDecilitres() {
        return Math.round((double) widthMm * heightMm * depthMm / 100_000.0);
    }
}
