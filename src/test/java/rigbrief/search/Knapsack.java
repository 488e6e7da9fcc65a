package rigbrief.search;

import static rigbrief.fixture.BraceFixture.aBrace;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.CablesFixture.someCables;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.brief.Wishes;
import rigbrief.fixture.BoardFixture;
import rigbrief.fixture.CaseFixture;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.fixture.CoolerFixture;
import rigbrief.fixture.DriveFixture;
import rigbrief.fixture.FanFixture;
import rigbrief.fixture.GraphicsFixture;
import rigbrief.fixture.MemoryFixture;
import rigbrief.fixture.PartFixture;
import rigbrief.fixture.ProcessorFixture;
import rigbrief.fixture.SupplyFixture;
import rigbrief.fixture.SystemFixture;
import rigbrief.fixture.WirelessFixture;
import rigbrief.goal.Goal;
import rigbrief.goal.GoalInfo;
import rigbrief.part.Colour;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.presolve.CandidateFinder;
import rigbrief.presolve.Candidates;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;

/**
 * A knapsack problem dressed as a catalogue: a class is a slot, an item is a part, weight is price,
 * the capacity is the limit on money, other limits are rules, and profit is the one goal.
 *
 * <p>All parts of a slot are alike but for their colour, so that nothing but price, profit and the
 * rules decides.
 */
final class Knapsack {
    /**
     * An item.
     *
     * @param profit what it brings
     * @param weight its weight in cents
     * @param uses what it takes of the other limits
     */
    record Item(int profit, int weight, int... uses) {}

    private final CatalogueFixture catalogue = aCatalogue();
    private final Map<String, Item> items = new HashMap<>();
    private final Set<Slot> slots = EnumSet.noneOf(Slot.class);
    private final Set<Slot> required = EnumSet.noneOf(Slot.class);
    private final List<Rule> rules = new ArrayList<>();

    /** A class of which exactly one item is taken. */
    Knapsack oneOf(Slot slot, List<Item> choice) {
        slots.add(slot);
        required.add(slot);
        for (int i = 0; i < choice.size(); i++) {
            add(slot, "item-" + i, Colour.values()[i], choice.get(i));
        }
        return this;
    }

    /** An item that is taken or not. */
    Knapsack maybe(Slot slot, Item item) {
        slots.add(slot);
        if (slot.required()) {
            add(slot, "without", Colour.values()[0], new Item(0, 0, new int[item.uses().length]));
        }
        add(slot, "with", Colour.values()[1], item);
        return this;
    }

    /** Limits on what the items take together. */
    Knapsack limits(int... limits) {
        for (int i = 0; i < limits.length; i++) {
            rules.add(new Limit(i, limits[i]));
        }
        return this;
    }

    private void add(Slot slot, String name, Colour colour, Item item) {
        String id = slot.word() + "-" + name;
        Part part = fixture(slot).id(id).colour(colour).make();
        items.put(id, item);
        catalogue
                .part(part)
                .offer(id, KESTREL, BigDecimal.valueOf(item.weight(), 2).toPlainString());
    }

    /** A part for a slot. */
    static PartFixture<?, ?> fixture(Slot slot) {
        return switch (slot) {
            case PROCESSOR -> ProcessorFixture.aProcessor();
            case BOARD -> BoardFixture.aBoard();
            case MEMORY -> MemoryFixture.aMemoryKit();
            case GRAPHICS -> GraphicsFixture.aGraphicsCard();
            case DRIVE -> DriveFixture.aDrive();
            case SUPPLY -> SupplyFixture.aSupply();
            case COOLER -> CoolerFixture.aCooler();
            case CASE -> CaseFixture.aCase();
            case FANS -> FanFixture.aFan();
            case WIRELESS -> WirelessFixture.aWirelessCard();
            case BRACE -> aBrace();
            case CABLES -> someCables();
            case SYSTEM -> SystemFixture.aLicence();
            case SECOND_DRIVE, DISPLAY ->
                    throw new IllegalArgumentException("no place for " + slot + " in a knapsack");
        };
    }

    /** The problem with a capacity. */
    Problem within(int capacity) {
        for (Slot slot : Slot.values()) {
            if (slot.required() && !slots.contains(slot)) {
                add(slot, "free", Colour.values()[0], new Item(0, 0, new int[rules.size()]));
            }
        }
        // A processor is kept cool by something, or no build counts.
        if (!slots.contains(Slot.COOLER)) {
            add(Slot.COOLER, "free", Colour.values()[0], new Item(0, 0, new int[rules.size()]));
        }
        Brief brief =
                new BriefDraft(aBrief().ceiling("100000.00").make())
                        .wishes(new Wishes(new LinkedHashMap<>(Map.of("profit", 1))))
                        .toBrief();
        Assessor assessor = new Assessor(brief, catalogue.make());
        List<Rule> all = new ArrayList<>(rules);
        all.add(new Taken());
        return new Problem(
                assessor,
                single(new CandidateFinder(assessor, all).find()),
                all,
                List.of(new Profit()),
                capacity,
                new SharedTables());
    }

    /** One pack at most: a knapsack has one of each item. */
    private static Candidates single(Candidates candidates) {
        Map<Slot, List<Candidate>> bySlot = new EnumMap<>(Slot.class);
        for (Slot slot : Slot.values()) {
            List<Candidate> kept = new ArrayList<>();
            for (Candidate candidate : candidates.of(slot)) {
                if (candidate.pieces() <= 1 && candidate.index() == kept.size()) {
                    kept.add(candidate);
                }
            }
            bySlot.put(slot, kept);
        }
        return new Candidates(bySlot, Map.of());
    }

    /** The items taken, by slot. */
    static Map<Slot, String> taken(Standing standing) {
        Map<Slot, String> taken = new EnumMap<>(Slot.class);
        standing.build().filled().forEach((slot, part) -> taken.put(slot, part.id()));
        return taken;
    }

    private final class Profit implements Goal {
        @Override
        public GoalInfo info() {
            return new GoalInfo("profit", "It brings much", "the sum of the items' profits");
        }

        @Override
        public Set<Slot> reads() {
            return EnumSet.allOf(Slot.class);
        }

        @Override
        public int utility(Assessment it) {
            int[] profit = {0};
            it.build()
                    .filled()
                    .forEach(
                            (slot, part) ->
                                    profit[0] +=
                                            Optional.ofNullable(items.get(part.id()))
                                                    .map(Item::profit)
                                                    .orElse(0));
            return profit[0];
        }

        @Override
        public String because(Assessment it) {
            return utility(it) + " in all";
        }
    }

    /** What the items take of one limit; more items only make it worse. */
    private final class Limit implements Rule {
        private final int index;
        private final int limit;

        Limit(int index, int limit) {
            this.index = index;
            this.limit = limit;
        }

        @Override
        public RuleInfo info() {
            return new RuleInfo(
                    "limit-" + index, "The limit is kept", Unit.PIECE, Source.brief("limits"));
        }

        @Override
        public Set<Slot> reads() {
            return EnumSet.copyOf(slots);
        }

        @Override
        public Finding check(Assessment it) {
            long[] used = {0};
            it.build()
                    .filled()
                    .forEach(
                            (slot, part) -> {
                                Item item = items.get(part.id());
                                used[0] += item == null ? 0 : item.uses()[index];
                            });
            return Finding.atMost(used[0], limit, Unit.PIECE, () -> "too much");
        }
    }

    /** A class of which one item has to be taken has one. */
    private final class Taken implements Rule {
        @Override
        public RuleInfo info() {
            return new RuleInfo(
                    "taken", "One of each class", Unit.CONDITION, Source.brief("classes"));
        }

        @Override
        public Set<Slot> reads() {
            return EnumSet.of(Slot.GRAPHICS);
        }

        @Override
        public Finding check(Assessment it) {
            boolean missing = required.contains(Slot.GRAPHICS) && !it.build().has(Slot.GRAPHICS);
            return Finding.require(!missing, () -> "nothing of class graphics");
        }
    }
}
