package rigbrief.brief;

import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import rigbrief.part.Colour;
import rigbrief.part.FrontPort;
import rigbrief.part.SidePanel;
import rigbrief.part.WirelessStandard;
import rigbrief.quantity.Length;
import rigbrief.quantity.Mass;
import rigbrief.quantity.Money;

/**
 * The client's needs.
 *
 * @param name the brief's name: its file name without the ending
 * @param client who it is for
 * @param currency the currency of every amount
 * @param quantity how many like machines are wanted
 * @param ceiling most that all machines may cost together, all in
 * @param overrunBasisPoints how far over the ceiling a build may go when that buys a wish, in
 *     hundredths of a percent
 * @param confidencePercent chance with which a must of a workload has to hold
 * @param screen the picture to be shown; empty when the client did not say
 * @param workloads what the machine must run, or the client wishes it would
 * @param atOnce ids of workloads that run at the same time, beside the one in front
 * @param looks how it should look
 * @param noise how loud it may be
 * @param wireless whether it needs a wireless network
 * @param memory memory wanted
 * @param storage storage wanted
 * @param size outer size and mass allowed
 * @param frontPorts ports wanted on the case front
 * @param keep the client's own parts, free of charge
 * @param avoid makers and parts not to be used
 * @param buying where, from how many, and how soon to buy
 * @param system the operating-system licence wanted
 * @param place where the machine will stand and how it will be used
 * @param headroom planning margins
 * @param wishes weights of the soft goals
 * @param fees what is charged beside parts
 * @param locale the client's language and country: how documents are worded, numbers written
 */
public record Brief(
        String name,
        String client,
        Currency currency,
        int quantity,
        Money ceiling,
        int overrunBasisPoints,
        int confidencePercent,
        Optional<Screen> screen,
        List<WorkloadNeed> workloads,
        List<String> atOnce,
        Looks looks,
        Noise noise,
        Wireless wireless,
        MemoryNeed memory,
        StorageNeed storage,
        SizeNeed size,
        List<FrontPort> frontPorts,
        List<Kept> keep,
        Avoid avoid,
        Buying buying,
        SystemNeed system,
        Place place,
        Headroom headroom,
        Wishes wishes,
        Fees fees,
        Locale locale) {
    /** Where a brief says nothing: English, written as in Great Britain. */
    public static final Locale USUAL_LOCALE = Locale.UK;

    public Brief {
        workloads = List.copyOf(workloads);
        atOnce = List.copyOf(atOnce);
        frontPorts = List.copyOf(frontPorts);
        keep = List.copyOf(keep);
    }

    /** A brief that says nothing about the client's language and country. */
    public Brief(
            String name,
            String client,
            Currency currency,
            int quantity,
            Money ceiling,
            int overrunBasisPoints,
            int confidencePercent,
            Optional<Screen> screen,
            List<WorkloadNeed> workloads,
            List<String> atOnce,
            Looks looks,
            Noise noise,
            Wireless wireless,
            MemoryNeed memory,
            StorageNeed storage,
            SizeNeed size,
            List<FrontPort> frontPorts,
            List<Kept> keep,
            Avoid avoid,
            Buying buying,
            SystemNeed system,
            Place place,
            Headroom headroom,
            Wishes wishes,
            Fees fees) {
        this(
                name,
                client,
                currency,
                quantity,
                ceiling,
                overrunBasisPoints,
                confidencePercent,
                screen,
                workloads,
                atOnce,
                looks,
                noise,
                wireless,
                memory,
                storage,
                size,
                frontPorts,
                keep,
                avoid,
                buying,
                system,
                place,
                headroom,
                wishes,
                fees,
                USUAL_LOCALE);
    }

    /** Whether a need has to be met, is only wished for, or was not mentioned. */
    public enum Strength {
        MUST,
        WISH,
        NONE
    }

    /**
     * What the client says about lit parts: none lit (a part that can be switched off counts as
     * unlit only when {@link #NONE} allows it), lit but switchable, or no matter.
     */
    public enum LightingNeed {
        NONE,
        SWITCHABLE,
        ANY
    }

    /**
     * Looks.
     *
     * @param lighting what may be lit
     * @param colour the colour wanted; empty for no matter
     * @param colourStrength whether the colour of what shows is a must or a wish
     * @param side the side panel wanted; empty for no matter
     */
    public record Looks(
            LightingNeed lighting,
            Optional<Colour> colour,
            Strength colourStrength,
            Optional<SidePanel> side) {}

    /**
     * Noise at the seat under the heaviest workload.
     *
     * @param mustDba the most allowed in dB(A); empty for no limit
     * @param wishDba the level wished for in dB(A); empty for none
     * @param seatDistanceM distance from the case to the ear in metres
     */
    public record Noise(OptionalInt mustDba, OptionalInt wishDba, double seatDistanceM) {}

    /**
     * Wireless network.
     *
     * @param strength must, wish or none
     * @param atLeast the oldest standard that will do
     */
    public record Wireless(Strength strength, WirelessStandard atLeast) {}

    /**
     * Memory.
     *
     * @param atLeastGb least capacity in GB; 0 for what the workloads need
     * @param ecc whether it must correct errors
     */
    public record MemoryNeed(int atLeastGb, boolean ecc) {}

    /**
     * Storage.
     *
     * @param atLeastGb least capacity in GB, both drives together
     * @param roomFor ids of workloads that are installed
     * @param years years over which data grow
     */
    public record StorageNeed(int atLeastGb, List<String> roomFor, int years) {
        public StorageNeed {
            roomFor = List.copyOf(roomFor);
        }
    }

    /**
     * Outer size and mass.
     *
     * @param atMostDecilitres largest volume in tenths of a litre
     * @param height largest height
     * @param width largest width
     * @param depth largest depth
     * @param mass largest mass
     */
    public record SizeNeed(
            OptionalInt atMostDecilitres,
            Optional<Length> height,
            Optional<Length> width,
            Optional<Length> depth,
            Optional<Mass> mass) {}

    /**
     * What is not to be used.
     *
     * @param makers makers' names
     * @param parts part ids
     */
    public record Avoid(List<String> makers, List<String> parts) {
        public Avoid {
            makers = List.copyOf(makers);
            parts = List.copyOf(parts);
        }
    }

    /**
     * Buying.
     *
     * @param suppliers ids of the suppliers allowed; empty for all
     * @param atMostSuppliers how many suppliers one order may use; empty for any number
     * @param withinDays longest lead time in days; empty for any
     * @param variants whether machines of one order may differ in a part where stock runs short
     */
    public record Buying(
            List<String> suppliers,
            OptionalInt atMostSuppliers,
            OptionalInt withinDays,
            boolean variants) {
        public Buying {
            suppliers = List.copyOf(suppliers);
        }

        /** Terms of an order whose machines are all alike. */
        public Buying(List<String> suppliers, OptionalInt atMostSuppliers, OptionalInt withinDays) {
            this(suppliers, atMostSuppliers, withinDays, false);
        }

        /** The same terms, with or without variants. */
        public Buying with(boolean mayDiffer) {
            return new Buying(suppliers, atMostSuppliers, withinDays, mayDiffer);
        }
    }

    /**
     * Operating system.
     *
     * @param strength whether a licence must be part of the build
     * @param part id of the licence wanted; empty for any
     */
    public record SystemNeed(Strength strength, Optional<String> part) {}

    /**
     * Where the machine stands and how it is used.
     *
     * @param roomC room temperature in °C
     * @param altitudeM height above sea level in metres
     * @param mainsV mains voltage, 115 or 230
     * @param hoursPerDay hours of use a day
     * @param loadShare share of those hours under the heaviest workload, 0 to 1
     * @param tariffPerKwhMinor price of a kWh in hundredths of a minor unit
     * @param helperProcessor whether the builder has a processor at hand that boots older firmware
     */
    public record Place(
            double roomC,
            double altitudeM,
            int mainsV,
            double hoursPerDay,
            double loadShare,
            long tariffPerKwhMinor,
            boolean helperProcessor) {}

    /**
     * Planning margins.
     *
     * @param supplySharePercent most of a supply's rating that sustained load may take, in percent
     * @param supplySizesUp how many usual sizes above the smallest sufficient one the supply is
     *     planned
     * @param thermalMarginK distance kept from temperature limits in kelvin
     */
    public record Headroom(int supplySharePercent, int supplySizesUp, int thermalMarginK) {}

    /**
     * What is charged beside parts.
     *
     * @param assembly fee per machine
     * @param taxBasisPoints tax on everything, in hundredths of a percent
     */
    public record Fees(Money assembly, int taxBasisPoints) {}
}
