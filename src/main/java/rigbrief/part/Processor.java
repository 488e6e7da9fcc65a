package rigbrief.part;

import java.util.List;
import java.util.Optional;

/**
 * A processor.
 *
 * @param listing identity, look and guarantee, as in every part
 * @param socket the socket it fits
 * @param family the key by which boards list it as supported
 * @param performanceCores number of performance cores
 * @param efficiencyCores number of efficiency cores
 * @param threads hardware threads
 * @param baseGhz guaranteed clock in GHz
 * @param boostGhz highest clock in GHz
 * @param rateSingle work per second on one thread, relative to a reference of 100
 * @param rateAll work per second on all threads, same scale
 * @param basePowerW power class in watts
 * @param sustainedPowerW power it may draw for as long as it likes, in watts
 * @param limitC highest temperature the maker allows, in °C
 * @param memory memory generations and rates it takes
 * @param memoryMaxGb most memory it addresses, in GB
 * @param pcieGen PCI Express generation of its lanes
 * @param pcieLanes lanes for the graphics slot and drives
 * @param integratedTflops compute rate of the integrated graphics in TFLOP/s; 0 when it has none
 * @param boxedCooler the cooler in the box, if any
 * @param features firmware features it brings that an operating system may require
 */
public record Processor(
        Listing listing,
        String socket,
        String family,
        int performanceCores,
        int efficiencyCores,
        int threads,
        double baseGhz,
        double boostGhz,
        double rateSingle,
        double rateAll,
        int basePowerW,
        int sustainedPowerW,
        int limitC,
        List<MemoryRate> memory,
        int memoryMaxGb,
        int pcieGen,
        int pcieLanes,
        double integratedTflops,
        Optional<BoxedCooler> boxedCooler,
        List<String> features)
        implements Part {
    public Processor {
        memory = List.copyOf(memory);
        features = List.copyOf(features);
    }

    static Processor from(Listing listing, Cells cells) {
        return new Processor(
                listing,
                cells.text("socket"),
                cells.text("family"),
                cells.whole("performance_cores", 1, 256),
                cells.wholeOr("efficiency_cores", 0, 256, 0),
                cells.whole("threads", 1, 512),
                cells.number("base_ghz", 0.5, 8),
                cells.number("boost_ghz", 0.5, 8),
                cells.number("rate_single", 5, 1_000),
                cells.number("rate_all", 5, 20_000),
                cells.whole("base_power_w", 5, 500),
                cells.whole("sustained_power_w", 5, 600),
                cells.whole("limit_c", 60, 125),
                cells.list("memory", MemoryRate::read),
                cells.whole("memory_max_gb", 4, 8_192),
                cells.whole("pcie_gen", 2, 6),
                cells.whole("pcie_lanes", 4, 256),
                cells.numberOr("integrated_graphics_tflops", 0, 50, 0),
                BoxedCooler.from(cells),
                cells.listOrNone("features", entry -> entry));
    }

    @Override
    public Kind kind() {
        return Kind.PROCESSOR;
    }

    /** The same processor at other rates; units as in the record. */
    public Processor rated(double otherRateSingle, double otherRateAll) {
        return new Processor(
                listing,
                socket,
                family,
                performanceCores,
                efficiencyCores,
                threads,
                baseGhz,
                boostGhz,
                otherRateSingle,
                otherRateAll,
                basePowerW,
                sustainedPowerW,
                limitC,
                memory,
                memoryMaxGb,
                pcieGen,
                pcieLanes,
                integratedTflops,
                boxedCooler,
                features);
    }

    /** Whether a screen can be driven without a graphics card. */
    public boolean integratedGraphics() {
        return integratedTflops > 0;
    }

    /** The fastest rate it takes modules of a generation at, in MT/s; 0 when it takes none. */
    public int memoryMts(MemoryType type) {
        int fastest = 0;
        for (MemoryRate rate : memory) {
            if (rate.type() == type) {
                fastest = Math.max(fastest, rate.mts());
            }
        }
        return fastest;
    }
}
