package rigbrief.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import rigbrief.brief.Brief;
import rigbrief.brief.Brief.LightingNeed;
import rigbrief.brief.Brief.Strength;
import rigbrief.brief.BriefDraft;
import rigbrief.brief.WorkloadNeed;
import rigbrief.part.WirelessStandard;
import rigbrief.quantity.Money;

/**
 * One must of a brief, with the brief as it would be without it.
 *
 * @param name the must as a client would say it
 * @param dropped the brief without it
 */
record Must(String name, UnaryOperator<Brief> dropped) {
    /** Stands in for "no ceiling": more than any desktop costs, in minor units. */
    private static final long UNLIMITED_MINOR = 100_000_000_000L;

    /** The musts of a brief, in the brief's order. */
    static List<Must> of(Brief brief) {
        List<Must> musts = new ArrayList<>();
        musts.add(
                new Must(
                        "ceiling " + brief.ceiling(),
                        it ->
                                new BriefDraft(it)
                                        .ceiling(Money.ofMinor(UNLIMITED_MINOR, it.currency()))
                                        .toBrief()));
        for (WorkloadNeed need : brief.workloads()) {
            // Even a workload that is only wished for must have the memory it wants.
            String asked = need.must().map(Must::asked).orElse("at all");
            musts.add(new Must(need.use() + " " + asked, it -> without(it, need.use())));
        }
        addLooks(brief, musts);
        addBody(brief, musts);
        addOrder(brief, musts);
        return musts;
    }

    private static String asked(WorkloadNeed.Target target) {
        List<String> words = new ArrayList<>();
        target.averageFps().ifPresent(fps -> words.add("average %s fps".formatted(plain(fps))));
        target.lowFps().ifPresent(fps -> words.add("1 %% low %s fps".formatted(plain(fps))));
        target.finishWithinS().ifPresent(s -> words.add("within %s s".formatted(plain(s))));
        return String.join(", ", words);
    }

    private static String plain(double value) {
        return new java.math.BigDecimal(Double.toString(value))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** The brief of a client who gives the workload up, and with it the memory it wants. */
    private static Brief without(Brief brief, String use) {
        List<WorkloadNeed> needs = new ArrayList<>(brief.workloads());
        needs.removeIf(need -> need.use().equals(use));
        List<String> beside = new ArrayList<>(brief.atOnce());
        beside.remove(use);
        return new BriefDraft(brief).workloads(needs).atOnce(beside).toBrief();
    }

    private static void addLooks(Brief brief, List<Must> musts) {
        Brief.Looks looks = brief.looks();
        if (looks.lighting() != LightingNeed.ANY) {
            musts.add(
                    new Must(
                            "lighting "
                                    + (looks.lighting() == LightingNeed.NONE
                                            ? "none"
                                            : "switchable"),
                            it ->
                                    new BriefDraft(it)
                                            .looks(
                                                    new Brief.Looks(
                                                            LightingNeed.ANY,
                                                            it.looks().colour(),
                                                            it.looks().colourStrength(),
                                                            it.looks().side()))
                                            .toBrief()));
        }
        if (looks.colour().isPresent() && looks.colourStrength() == Strength.MUST) {
            musts.add(
                    new Must(
                            "colour " + looks.colour().get().word(),
                            it ->
                                    new BriefDraft(it)
                                            .looks(
                                                    new Brief.Looks(
                                                            it.looks().lighting(),
                                                            it.looks().colour(),
                                                            Strength.WISH,
                                                            it.looks().side()))
                                            .toBrief()));
        }
        if (looks.side().isPresent()) {
            musts.add(
                    new Must(
                            "side panel " + looks.side().get().word(),
                            it ->
                                    new BriefDraft(it)
                                            .looks(
                                                    new Brief.Looks(
                                                            it.looks().lighting(),
                                                            it.looks().colour(),
                                                            it.looks().colourStrength(),
                                                            Optional.empty()))
                                            .toBrief()));
        }
    }

    private static void addBody(Brief brief, List<Must> musts) {
        if (brief.noise().mustDba().isPresent()) {
            musts.add(
                    new Must(
                            "noise at most %d dB(A)".formatted(brief.noise().mustDba().getAsInt()),
                            it ->
                                    new BriefDraft(it)
                                            .noise(
                                                    new Brief.Noise(
                                                            OptionalInt.empty(),
                                                            it.noise().wishDba(),
                                                            it.noise().seatDistanceM()))
                                            .toBrief()));
        }
        Brief.SizeNeed size = brief.size();
        if (size.atMostDecilitres().isPresent()
                || size.height().isPresent()
                || size.width().isPresent()
                || size.depth().isPresent()
                || size.mass().isPresent()) {
            musts.add(
                    new Must(
                            "size " + size(size),
                            it ->
                                    new BriefDraft(it)
                                            .size(
                                                    new Brief.SizeNeed(
                                                            OptionalInt.empty(),
                                                            Optional.empty(),
                                                            Optional.empty(),
                                                            Optional.empty(),
                                                            Optional.empty()))
                                            .toBrief()));
        }
        if (brief.memory().atLeastGb() > 0 || brief.memory().ecc()) {
            musts.add(
                    new Must(
                            "memory at least %d GB%s"
                                    .formatted(
                                            brief.memory().atLeastGb(),
                                            brief.memory().ecc() ? " with error correction" : ""),
                            it ->
                                    new BriefDraft(it)
                                            .memory(new Brief.MemoryNeed(0, false))
                                            .toBrief()));
        }
        if (brief.storage().atLeastGb() > 0 || !brief.storage().roomFor().isEmpty()) {
            musts.add(
                    new Must(
                            "storage",
                            it ->
                                    new BriefDraft(it)
                                            .storage(
                                                    new Brief.StorageNeed(
                                                            0, List.of(), it.storage().years()))
                                            .toBrief()));
        }
    }

    private static String size(Brief.SizeNeed size) {
        List<String> words = new ArrayList<>();
        size.atMostDecilitres()
                .ifPresent(dl -> words.add("at most %s l".formatted(plain(dl / 10.0))));
        size.height().ifPresent(mm -> words.add("height " + mm));
        size.width().ifPresent(mm -> words.add("width " + mm));
        size.depth().ifPresent(mm -> words.add("depth " + mm));
        size.mass().ifPresent(g -> words.add("mass " + g));
        return String.join(", ", words);
    }

    private static void addOrder(Brief brief, List<Must> musts) {
        if (brief.wireless().strength() == Strength.MUST) {
            musts.add(
                    new Must(
                            "wireless " + brief.wireless().atLeast().word(),
                            it ->
                                    new BriefDraft(it)
                                            .wireless(
                                                    new Brief.Wireless(
                                                            Strength.NONE, WirelessStandard.NONE))
                                            .toBrief()));
        }
        if (!brief.frontPorts().isEmpty()) {
            musts.add(
                    new Must(
                            "front ports",
                            it -> new BriefDraft(it).frontPorts(List.of()).toBrief()));
        }
        if (!brief.keep().isEmpty()) {
            musts.add(new Must("kept parts", it -> new BriefDraft(it).keep(List.of()).toBrief()));
        }
        if (!brief.avoid().makers().isEmpty() || !brief.avoid().parts().isEmpty()) {
            musts.add(
                    new Must(
                            "what to avoid",
                            it ->
                                    new BriefDraft(it)
                                            .avoid(new Brief.Avoid(List.of(), List.of()))
                                            .toBrief()));
        }
        Brief.Buying buying = brief.buying();
        if (!buying.suppliers().isEmpty()
                || buying.atMostSuppliers().isPresent()
                || buying.withinDays().isPresent()) {
            musts.add(
                    new Must(
                            "suppliers and lead time",
                            it ->
                                    new BriefDraft(it)
                                            .buying(
                                                    new Brief.Buying(
                                                            List.of(),
                                                            OptionalInt.empty(),
                                                            OptionalInt.empty()))
                                            .toBrief()));
        }
        if (brief.quantity() > 1) {
            musts.add(
                    new Must(
                            "quantity " + brief.quantity(),
                            it -> new BriefDraft(it).quantity(1).toBrief()));
        }
        brief.screen()
                .ifPresent(
                        screen ->
                                musts.add(
                                        new Must(
                                                "display %s at %d Hz"
                                                        .formatted(
                                                                screen.resolution(),
                                                                screen.refreshHz()),
                                                it ->
                                                        new BriefDraft(it)
                                                                .screen(Optional.empty())
                                                                .toBrief())));
    }
}
