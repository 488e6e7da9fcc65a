package rigbrief.assembly.handover;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigbrief.assembly.Bench;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.brief.Kept;
import rigbrief.brief.Screen;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Kind;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;
import rigbrief.search.Certificate;
import rigbrief.search.Objective;
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;
import rigbrief.search.TwoStage;

/**
 * What fits next, what it would gain, and the least money it takes.
 *
 * <p>Each step is a brief of its own, solved again: the parts the machine has are the client's own
 * and cost nothing, a few slots are set free, and more is asked than before: a work that a part
 * holds back {@value #FASTER_PERCENT} % faster, twice the memory or storage, {@value #QUIETER_DB}
 * dB quieter. What comes out keeps every rule of the first brief.
 *
 * @param budget most that one step may cost: what the machine's parts cost
 * @param upgrades steps that can be had, in the order in which they were looked for
 * @param nothing titles of steps that can't be had for that money, or that nothing asks for
 */
public record UpgradePath(Money budget, List<Upgrade> upgrades, List<String> nothing) {
    /** How much faster a step has to be to be felt, in percent. Common practice. */
    public static final int FASTER_PERCENT = 10;

    /** How much quieter a step has to be to be heard, in dB. Common practice. */
    public static final int QUIETER_DB = 1;

    /** Whole tens of the currency are how people name a budget. */
    private static final int TENS = -1;

    /** Where only money counts the certifier alone proves such small briefs. */
    private static final long STEPS = 200_000;

    public UpgradePath {
        upgrades = List.copyOf(upgrades);
        nothing = List.copyOf(nothing);
    }

    /**
     * A sort of step: what more is asked, and which slots are set free for it. The fewest first: a
     * part that can stay stays.
     */
    private enum Sort {
        GRAPHICS(
                "next.graphics",
                More.Wish.GRAPHICS,
                List.of(
                        EnumSet.of(Slot.GRAPHICS),
                        EnumSet.of(Slot.GRAPHICS, Slot.SUPPLY, Slot.BRACE))),
        PROCESSOR(
                "next.processor",
                More.Wish.PROCESSOR,
                List.of(EnumSet.of(Slot.PROCESSOR), EnumSet.of(Slot.PROCESSOR, Slot.COOLER))),
        MEMORY("next.memory", More.Wish.MEMORY, List.of(EnumSet.of(Slot.MEMORY))),
        STORAGE("next.storage", More.Wish.STORAGE, List.of(EnumSet.of(Slot.SECOND_DRIVE))),
        QUIET(
                "next.quieter",
                More.Wish.QUIET,
                List.of(
                        EnumSet.of(Slot.COOLER),
                        EnumSet.of(Slot.FANS),
                        EnumSet.of(Slot.SUPPLY),
                        EnumSet.of(Slot.COOLER, Slot.FANS, Slot.SUPPLY)));

        private final String title;
        private final More.Wish wish;
        private final List<EnumSet<Slot>> free;

        Sort(String title, More.Wish wish, List<EnumSet<Slot>> free) {
            this.title = title;
            this.wish = wish;
            this.free = free;
        }
    }

    /** The path from a finished build. */
    public static UpgradePath of(Bench bench) {
        Brief brief = bench.brief();
        long partsMinor = bench.it().cost().partsMinor() / brief.quantity();
        Money budget = rounded(Money.ofMinor(partsMinor, brief.currency()));
        List<Upgrade> upgrades = new ArrayList<>();
        List<String> nothing = new ArrayList<>();
        for (Sort sort : Sort.values()) {
            step(sort, bench, budget)
                    .ifPresentOrElse(upgrades::add, () -> nothing.add(bench.say(sort.title)));
        }
        return new UpgradePath(budget, upgrades, nothing);
    }

    private static Money rounded(Money money) {
        BigDecimal tens = money.amount().setScale(TENS, RoundingMode.UP);
        return new Money(tens.max(BigDecimal.TEN), money.currency());
    }

    private static Optional<Upgrade> step(Sort sort, Bench bench, Money budget) {
        Optional<Upgrade> solved = Optional.empty();
        for (Set<Slot> free : sort.free) {
            Brief kept = without(empty(free, bench), bench, kept(free, bench, budget));
            solved = solved.isPresent() ? solved : solved(sort, bench, kept);
        }
        if (solved.isEmpty()) {
            // Last of all with anything in slots that are empty, such as a cooler for the boxed
            // one.
            Set<Slot> widest = sort.free.get(sort.free.size() - 1);
            solved = solved(sort, bench, kept(widest, bench, budget));
        }
        return sort == Sort.MEMORY ? memory(bench, budget, solved) : solved;
    }

    /** The same kits once more, where that is cheaper and slows nothing down. */
    private static Optional<Upgrade> memory(Bench bench, Money budget, Optional<Upgrade> solved) {
        Optional<Upgrade> second =
                SecondKit.beside(
                        bench,
                        kept(Sort.MEMORY.free.get(0), bench, budget),
                        bench.say(Sort.MEMORY.title));
        if (second.isEmpty() || solved.isEmpty()) {
            return second.or(() -> solved);
        }
        boolean better =
                second.get().cost().compareTo(solved.get().cost()) <= 0
                        && second.get().losses().isEmpty();
        return better ? second : solved;
    }

    private static Optional<Upgrade> solved(Sort sort, Bench bench, Brief kept) {
        Optional<Brief> asked = More.asked(sort.wish, bench, kept);
        if (asked.isEmpty()) {
            return Optional.empty();
        }
        Catalogue catalogue = bench.it().catalogue();
        SearchSpace space = SearchSpace.of(asked.get(), catalogue);
        if (space.candidates().impossible()) {
            return Optional.empty();
        }
        Certificate found =
                new TwoStage(1, 0, STEPS, () -> false)
                        .best(space.within(kept.ceiling().minorUnits()), Objective.leastMoney());
        return found.best().map(best -> upgrade(sort, bench, asked.get(), best, found.complete()));
    }

    private static Upgrade upgrade(
            Sort sort, Bench bench, Brief asked, Standing best, boolean proven) {
        Bench then = Bench.of(asked, bench.it().catalogue(), best.build(), bench.texts());
        return new Upgrade(
                bench.say(sort.title),
                changes(bench, best.build()),
                Money.ofMinor(best.totalMinor(), asked.currency()),
                Gains.between(bench, then),
                Gains.losses(bench, then),
                proven);
    }

    /** The brief with everything kept but what is set free: one machine, no fee, no overrun. */
    private static Brief kept(Set<Slot> free, Bench bench, Money budget) {
        Brief brief = bench.brief();
        return new BriefDraft(brief)
                .quantity(1)
                .ceiling(budget)
                .overrunBasisPoints(0)
                .keep(keep(free, bench.build()))
                .screen(brief.screen().map(screen -> kept(screen, bench.build())))
                .fees(new Brief.Fees(Money.zero(brief.currency()), brief.fees().taxBasisPoints()))
                .toBrief();
    }

    /** Slots that are empty and not set free. */
    private static Set<Slot> empty(Set<Slot> free, Bench bench) {
        Set<Slot> empty = EnumSet.allOf(Slot.class);
        empty.removeAll(bench.build().filled().keySet());
        empty.removeAll(free);
        return empty;
    }

    /** The brief with nothing to be bought for some slots: their parts are to be avoided. */
    private static Brief without(Set<Slot> empty, Bench bench, Brief brief) {
        Set<Kind> kinds = EnumSet.noneOf(Kind.class);
        empty.forEach(slot -> kinds.add(slot.kind()));
        List<String> parts = new ArrayList<>(brief.avoid().parts());
        for (Kind kind : kinds) {
            bench.it().catalogue().parts(kind).forEach(part -> parts.add(part.id()));
        }
        bench.build().filled().values().forEach(part -> parts.remove(part.id()));
        return new BriefDraft(brief)
                .avoid(new Brief.Avoid(brief.avoid().makers(), parts))
                .toBrief();
    }

    /** A display that was bought with the machine is the client's own by now. */
    private static Screen kept(Screen screen, Build build) {
        return build.has(Slot.DISPLAY)
                ? new Screen(
                        screen.resolution(),
                        screen.refreshHz(),
                        screen.bitsPerColour(),
                        screen.inputs(),
                        screen.count(),
                        screen.buy(),
                        Optional.of(build.display().id()))
                : screen;
    }

    private static List<Kept> keep(Set<Slot> free, Build build) {
        List<Kept> keep = new ArrayList<>();
        build.filled()
                .forEach(
                        (slot, part) -> {
                            if (!free.contains(slot)) {
                                keep.add(new Kept(slot, part, build.pieces(slot)));
                            }
                        });
        return keep;
    }

    private static List<String> changes(Bench bench, Build after) {
        Build before = bench.build();
        List<String> changes = new ArrayList<>();
        after.filled()
                .forEach(
                        (slot, part) -> {
                            boolean same =
                                    before.has(slot)
                                            && before.part(slot).id().equals(part.id())
                                            && before.pieces(slot) == after.pieces(slot);
                            if (!same) {
                                changes.add(change(slot, bench, after));
                            }
                        });
        before.filled()
                .forEach(
                        (slot, part) -> {
                            if (!after.has(slot)) {
                                changes.add(part.name() + bench.say("next.out"));
                            }
                        });
        return changes;
    }

    private static String change(Slot slot, Bench bench, Build after) {
        Build before = bench.build();
        String name =
                (after.pieces(slot) > 1 ? after.pieces(slot) + " x " : "")
                        + after.part(slot).name();
        return before.has(slot)
                ? bench.say("next.place", name, before.part(slot).name())
                : bench.say("next.added", name);
    }
}
