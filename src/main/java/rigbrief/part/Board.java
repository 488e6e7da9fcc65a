package rigbrief.part;

import java.util.List;
import rigbrief.quantity.Current;
import rigbrief.quantity.Power;

/**
 * A mainboard.
 *
 * @param listing identity, look and guarantee, as in every part
 * @param socket the processor socket
 * @param families processor families it supports, each with the firmware that first does
 * @param shippedFirmware firmware version it leaves the shop with, digits and dots
 * @param firmwareWithoutProcessor whether firmware can be written with no working processor fitted
 * @param form size
 * @param memoryType memory generation
 * @param moduleForm memory module form
 * @param memorySlots memory slots
 * @param memoryMaxGb most memory it takes, in GB
 * @param memoryMaxMts fastest memory rate by number of modules
 * @param processorPower processor power its regulators sustain
 * @param processorPlugs processor power connectors
 * @param slots expansion slots by position, 1 nearest the processor
 * @param m2 M.2 slots in the order of their numbers
 * @param shares what stops working when an M.2 slot is used
 * @param sataPorts SATA ports
 * @param lanGbps wired network rate in Gbit/s; 0 when it has none
 * @param wireless wireless network built in
 * @param frontPorts headers for the case front
 * @param fanHeaders fan headers, the processor fan's not counted
 * @param fanHeaderCurrent current each fan header feeds
 * @param lightingHeaders headers for lit parts
 * @param outputs screen outputs fed by integrated graphics
 * @param features firmware features an operating system may require
 */
public record Board(
        Listing listing,
        String socket,
        Fact<List<FamilySupport>> families,
        String shippedFirmware,
        boolean firmwareWithoutProcessor,
        BoardForm form,
        MemoryType memoryType,
        ModuleForm moduleForm,
        int memorySlots,
        int memoryMaxGb,
        List<RateByModules> memoryMaxMts,
        Fact<Power> processorPower,
        Fact<Tally<Plug>> processorPlugs,
        List<ExpansionSlot> slots,
        List<M2Slot> m2,
        List<Share> shares,
        int sataPorts,
        double lanGbps,
        WirelessStandard wireless,
        Fact<Tally<FrontPort>> frontPorts,
        Fact<Integer> fanHeaders,
        Fact<Current> fanHeaderCurrent,
        int lightingHeaders,
        List<Port> outputs,
        List<String> features)
        implements Part {
    public Board {
        memoryMaxMts = List.copyOf(memoryMaxMts);
        slots = List.copyOf(slots);
        m2 = List.copyOf(m2);
        shares = List.copyOf(shares);
        outputs = List.copyOf(outputs);
        features = List.copyOf(features);
    }

    static Board from(Listing listing, Cells cells) {
        return new Board(
                listing,
                cells.text("socket"),
                cells.maybeList("families", FamilySupport::read),
                cells.parsed("shipped_firmware", FamilySupport::version),
                cells.yes("firmware_without_processor"),
                cells.choice("form_factor", BoardForm.class),
                cells.choice("memory_type", MemoryType.class),
                cells.choiceOr("memory_form", ModuleForm.UDIMM),
                cells.whole("memory_slots", 1, 16),
                cells.whole("memory_max_gb", 4, 8_192),
                cells.list("memory_max_mts", RateByModules::read),
                cells.power("processor_power_w", 20, 1_000),
                cells.tally("processor_connectors", Plug.class),
                cells.listOrNone("slots", ExpansionSlot::read),
                cells.listOrNone("m2", M2Slot::read),
                cells.listOrNone("shares", Share::read),
                cells.wholeOr("sata_ports", 0, 20, 0),
                cells.numberOr("lan_gbps", 0, 100, 0),
                cells.choiceOr("wireless", WirelessStandard.NONE),
                cells.tally("front_usb", FrontPort.class),
                cells.maybeWhole("fan_headers", 0, 20).stream()
                        .mapToObj(Fact::of)
                        .findFirst()
                        .orElse(Fact.notStated(listing.id(), "fan_headers")),
                cells.current("fan_header_ma", 200, 5_000),
                cells.wholeOr("lighting_headers", 0, 12, 0),
                cells.listOrNone("outputs", Port::read),
                cells.listOrNone("features", entry -> entry));
    }

    @Override
    public Kind kind() {
        return Kind.BOARD;
    }

    /**
     * The fastest rate with that many modules fitted, in MT/s; the slowest stated beyond the table.
     */
    public int memoryMts(int modules) {
        int slowest = Integer.MAX_VALUE;
        for (RateByModules rate : memoryMaxMts) {
            if (rate.modules() >= modules) {
                return rate.mts();
            }
            slowest = Math.min(slowest, rate.mts());
        }
        return slowest;
    }
}
