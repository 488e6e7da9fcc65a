package rigbrief.part;

import java.util.List;
import java.util.Optional;
import rigbrief.quantity.Length;

/**
 * A graphics card.
 *
 * @param listing identity, look and guarantee, as in every part
 * @param tflops compute rate in TFLOP/s, 32-bit
 * @param bandwidthGbs memory bandwidth in GB/s
 * @param vramGb memory in GB
 * @param rayRate ray work per second relative to a reference of 100; 0 when it has no hardware for
 *     it
 * @param upscaling name of the upscaling generation it runs, if any
 * @param length length
 * @param height height above the slot, power plug not counted
 * @param slots width in slots, such as 2.7
 * @param boardPowerW power the card draws under load, in watts
 * @param peakFactor 1 ms peak as a multiple of the board power
 * @param plugs power connectors
 * @param outputs screen outputs
 * @param bus how it meets the board
 * @param loadDba level under full load at 25 °C in dB(A)
 * @param idleDba level at idle in dB(A); 0 when its fans stand still
 */
public record Graphics(
        Listing listing,
        double tflops,
        double bandwidthGbs,
        int vramGb,
        double rayRate,
        Optional<String> upscaling,
        Fact<Length> length,
        Fact<Length> height,
        double slots,
        int boardPowerW,
        double peakFactor,
        Fact<Tally<Plug>> plugs,
        List<Port> outputs,
        Bus16 bus,
        double loadDba,
        double idleDba)
        implements Part {
    public Graphics {
        outputs = List.copyOf(outputs);
    }

    static Graphics from(Listing listing, Cells cells) {
        return new Graphics(
                listing,
                cells.number("tflops", 0.1, 500),
                cells.number("bandwidth_gbs", 5, 10_000),
                cells.whole("vram_gb", 1, 256),
                cells.numberOr("ray_rate", 0, 2_000, 0),
                Optional.of(cells.textOr("upscaling", "none")).filter(name -> !name.equals("none")),
                cells.length("length_mm", 100, 500),
                cells.length("height_mm", 50, 250),
                cells.number("slots", 1, 5),
                cells.whole("board_power_w", 10, 1_000),
                cells.numberOr("peak_factor", 1, 3, 1.5),
                cells.tally("connectors", Plug.class),
                cells.list("outputs", Port::read),
                cells.parsed("pcie", Bus16::read),
                cells.number("load_dba", 10, 70),
                cells.numberOr("idle_dba", 0, 60, 0));
    }

    @Override
    public Kind kind() {
        return Kind.GRAPHICS;
    }

    /** The same card at other rates; units as in the record. */
    public Graphics rated(double otherTflops, double otherBandwidthGbs, double otherRayRate) {
        return new Graphics(
                listing,
                otherTflops,
                otherBandwidthGbs,
                vramGb,
                otherRayRate,
                upscaling,
                length,
                height,
                slots,
                boardPowerW,
                peakFactor,
                plugs,
                outputs,
                bus,
                loadDba,
                idleDba);
    }

    /** Slots it covers, rounded up. */
    public int wholeSlots() {
        return (int) Math.ceil(slots - 1e-9);
    }

    /** Number of screens it drives at once. */
    public int outputCount() {
        int count = 0;
        for (Port port : outputs) {
            count += port.count();
        }
        return count;
    }
}
