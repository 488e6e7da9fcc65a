package rigbrief.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.DriveFixture.aDrive;
import static rigbrief.fixture.SupplyFixture.aSupply;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rigbrief.assess.Cost;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.part.Part;
import rigbrief.part.Slot;

class VariantProposerTest {
    private static final Build BUILD = aBuild().make();
    private static final String SUPPLY = BUILD.supply().id();

    /** Nothing in the brief needs the card, so that the least money buys none. */
    private static final int NEEDED = BUILD.filled().size() - 1;

    private static final Brief FORTY = brief("90000.00");

    private static Optional<Mix> propose(Brief brief, Catalogue catalogue) {
        return new VariantProposer(SearchLimits.usual()).propose(brief, catalogue);
    }

    private static Brief brief(String ceiling) {
        Brief plain = aBrief().quantity(40).ceiling(ceiling).make();
        return new BriefDraft(plain).buying(plain.buying().with(true)).toBrief();
    }

    /** 26 supplies of the first kind: 14 machines have the cheapest other that fits. */
    @Test
    void the_cheapest_other_part_covers_the_rest() {
        Catalogue catalogue =
                shortOfSupplies(26)
                        .part(aSupply().id("supply-dear"))
                        .offer("supply-dear", KESTREL, "120.00")
                        .part(aSupply().id("supply-next"))
                        .offer("supply-next", KESTREL, "110.00")
                        .part(aSupply().id("supply-few"))
                        .offer("supply-few", KESTREL, "101.00", 13, 3)
                        .make();

        Mix mix = propose(FORTY, catalogue).orElseThrow();

        assertThat(mix.first().machines()).isEqualTo(26);
        assertThat(mix.second().machines()).isEqualTo(14);
        assertThat(mix.changed()).containsExactly(Slot.SUPPLY);
        assertThat(mix.second().audit().build().supply().id()).isEqualTo("supply-next");
        assertThat(mix.first().audit().fits()).isTrue();
        assertThat(mix.second().audit().fits()).isTrue();
        // Hand calculation: 40 of every part at 100.00, and 14 supplies at 10.00 more; deliveries
        // of the fixture are free.
        long each = 10_000L * NEEDED;
        long fees = FORTY.fees().assembly().minorUnits() * 40;
        assertThat(mix.totalMinor()).isEqualTo(40 * each + 14 * 1_000 + fees);
        assertThat(mix.proven()).isTrue();
    }

    @Test
    void a_mix_over_the_ceiling_is_none() {
        Catalogue catalogue =
                shortOfSupplies(26)
                        .part(aSupply().id("supply-next"))
                        .offer("supply-next", KESTREL, "110.00")
                        .make();
        long total = propose(FORTY, catalogue).orElseThrow().totalMinor();

        assertThat(finds(total, catalogue)).isTrue();
        assertThat(finds(total - 1, catalogue)).isFalse();
    }

    private static boolean finds(long ceilingMinor, Catalogue catalogue) {
        String ceiling = "%d.%02d".formatted(ceilingMinor / 100, ceilingMinor % 100);
        return propose(brief(ceiling), catalogue).isPresent();
    }

    @Test
    void none_of_a_part_is_no_first_variant() {
        assertThat(propose(FORTY, shortOfSupplies(0).make())).isEmpty();
    }

    @Test
    void no_other_part_that_fits_is_no_mix() {
        assertThat(propose(FORTY, shortOfSupplies(26).make())).isEmpty();
    }

    @Test
    void a_brief_that_allows_no_variants_gets_none() {
        Brief alike = aBrief().quantity(40).ceiling("90000.00").make();
        Catalogue catalogue =
                shortOfSupplies(26)
                        .part(aSupply().id("supply-next"))
                        .offer("supply-next", KESTREL, "110.00", 20, 3)
                        .make();

        assertThat(new VariantProposer(SearchLimits.usual()).propose(alike, catalogue)).isEmpty();
        assertThat(new Proposer(SearchLimits.usual()).propose(alike, catalogue).clash())
                .isPresent();
    }

    /** Whatever the mix: nobody is asked for more than he has. */
    @Test
    void the_two_variants_together_take_no_more_than_there_is() {
        Catalogue catalogue =
                shortOfSupplies(26)
                        .part(aSupply().id("supply-next"))
                        .offer("supply-next", KESTREL, "110.00", 20, 3)
                        .make();

        var answer = new Proposer(SearchLimits.usual()).propose(FORTY, catalogue);

        Mix mix = answer.mix().orElseThrow();
        assertThat(answer.impossible()).isFalse();
        Map<String, Integer> taken = new TreeMap<>();
        add(taken, mix.first());
        add(taken, mix.second());
        taken.forEach(
                (key, units) ->
                        assertThat(units).as(key).isLessThanOrEqualTo(stock(catalogue, key)));
    }

    private static final int MACHINES = 7;
    private static final List<String> SHOPS = List.of("shop-a", "shop-b", "shop-c");

    /**
     * Check: every pair of builds, every way to share seven machines out, every set of suppliers
     * and every choice of offers tried, on seeded catalogues that are short of something.
     */
    @Test
    void trying_every_pair_of_builds_finds_no_cheaper_order() {
        int mixes = 0;
        for (int seed = 1; seed <= 60; seed++) {
            Random random = new Random(seed);
            CatalogueFixture fixture = aCatalogue();
            SHOPS.forEach(shop -> fixture.supplier(shop, random.nextInt(30) + ".50"));
            List<Part> supplies = new ArrayList<>();
            List<Part> drives = new ArrayList<>();
            List<Part> cases = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                supplies.add(aSupply().id("supply-" + i).make());
                drives.add(aDrive().id("drive-" + i).make());
                cases.add(aCase().id("case-" + i).make());
            }
            List<List<Part>> choices = List.of(supplies, drives, cases);
            choices.forEach(parts -> parts.forEach(part -> offered(part, fixture, random)));
            BUILD.filled()
                    .forEach(
                            (slot, part) -> {
                                boolean fixed =
                                        slot != Slot.SUPPLY
                                                && slot != Slot.DRIVE
                                                && slot != Slot.CASE;
                                if (fixed) {
                                    fixture.part(part).offer(part.id(), SHOPS.get(0), "50.00");
                                }
                            });
            Catalogue catalogue = fixture.make();
            Brief plain = aBrief().quantity(MACHINES).ceiling("90000.00").make();
            Brief brief = new BriefDraft(plain).buying(plain.buying().with(true)).toBrief();

            Optional<Mix> mix = propose(brief, catalogue);

            Optional<Long> least = new EveryPair(catalogue, choices).least();
            long fixed = 5_000L * MACHINES * (NEEDED - choices.size());
            long fees = brief.fees().assembly().minorUnits() * MACHINES;
            assertThat(mix.map(Mix::totalMinor))
                    .as("seed %d", seed)
                    .isEqualTo(least.map(minor -> minor + fixed + fees));
            assertThat(mix.map(Mix::proven).orElse(true)).isTrue();
            mixes += mix.isPresent() ? 1 : 0;
        }
        assertThat(mixes).isBetween(20, 59);
    }

    private static void offered(Part part, CatalogueFixture fixture, Random random) {
        fixture.part(part);
        for (String shop : SHOPS) {
            if (random.nextInt(3) > 0) {
                String price = "%d.%02d".formatted(60 + random.nextInt(9), random.nextInt(100));
                fixture.offer(part.id(), shop, price, random.nextInt(MACHINES + 2), 3);
            }
        }
    }

    /** Tries everything. Parts of one kind are alike, so every choice of them is sound. */
    private static final class EveryPair {
        private final Catalogue catalogue;
        private final List<List<Part>> choices;

        EveryPair(Catalogue catalogue, List<List<Part>> choices) {
            this.catalogue = catalogue;
            this.choices = choices;
        }

        Optional<Long> least() {
            Long least = null;
            for (int first = 1; first < MACHINES; first++) {
                for (int set = 1; set < 1 << SHOPS.size(); set += 2) {
                    // The first shop alone has the parts that are not short.
                    long minor = deliveries(set);
                    for (List<Part> parts : choices) {
                        Long pair = pair(parts, first, set);
                        minor = pair == null || minor < 0 ? -1 : minor + pair;
                    }
                    if (minor >= 0 && (least == null || minor < least)) {
                        least = minor;
                    }
                }
            }
            return Optional.ofNullable(least);
        }

        private long deliveries(int set) {
            long minor = 0;
            for (int i = 0; i < SHOPS.size(); i++) {
                minor +=
                        (set >> i & 1) == 1
                                ? catalogue.suppliers().get(index(i)).delivery().minorUnits()
                                : 0;
            }
            return minor;
        }

        private int index(int shop) {
            for (int i = 0; i < catalogue.suppliers().size(); i++) {
                if (catalogue.suppliers().get(i).id().equals(SHOPS.get(shop))) {
                    return i;
                }
            }
            throw new IllegalStateException(SHOPS.get(shop));
        }

        /** The cheapest two offers of a kind, of one part or two, that last; null for none. */
        private Long pair(List<Part> parts, int first, int set) {
            List<Offer> offers = new ArrayList<>();
            for (Part part : parts) {
                for (Offer offer : catalogue.offers(part.id())) {
                    if ((set >> SHOPS.indexOf(offer.supplier()) & 1) == 1) {
                        offers.add(offer);
                    }
                }
            }
            Long least = null;
            for (Offer one : offers) {
                for (Offer other : offers) {
                    int others = MACHINES - first;
                    boolean lasts =
                            one == other
                                    ? one.stock() >= MACHINES
                                    : one.stock() >= first && other.stock() >= others;
                    long minor =
                            one.price().minorUnits() * first + other.price().minorUnits() * others;
                    if (lasts && (least == null || minor < least)) {
                        least = minor;
                    }
                }
            }
            return least;
        }
    }

    private static void add(Map<String, Integer> taken, Mix.Share share) {
        for (Cost.Line line : share.audit().cost().lines()) {
            String part = share.audit().build().part(line.slot()).id();
            taken.merge(
                    part + " " + line.supplier(), line.pieces() * share.machines(), Integer::sum);
        }
    }

    private static int stock(Catalogue catalogue, String key) {
        return catalogue.offers(key.split(" ")[0]).stream()
                .filter(offer -> offer.supplier().equals(key.split(" ")[1]))
                .mapToInt(Offer::stock)
                .sum();
    }

    private static CatalogueFixture shortOfSupplies(int supplies) {
        return aCatalogue()
                .offering(BUILD)
                .noOffer(SUPPLY)
                .offer(SUPPLY, KESTREL, "100.00", supplies, 3);
    }
}
