package rigbrief.presolve;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.CoolerFixture.aCooler;
import static rigbrief.fixture.SupplyFixture.aSupply;

import org.junit.jupiter.api.Test;
import rigbrief.assess.Assessor;
import rigbrief.brief.Brief.Strength;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.PartFixture;
import rigbrief.part.Colour;
import rigbrief.part.SidePanel;
import rigbrief.part.Slot;

/** Directions that were declared wrongly once; random trials met them seldom. */
class TraitReaderTest {
    private static final BriefFixture BLACK = aBrief().colour(Colour.BLACK, Strength.MUST);

    @Test
    void where_a_colour_must_show_a_clear_side_does_not_stand_in_for_a_solid_one() {
        PartFixture<?, ?> solid = aCase().side(SidePanel.SOLID);
        PartFixture<?, ?> clear = aCase().side(SidePanel.CLEAR);

        assertThat(covers(BLACK, Slot.CASE, clear, solid)).isFalse();
        assertThat(covers(BLACK, Slot.CASE, solid, clear)).isTrue();
        assertThat(covers(aBrief(), Slot.CASE, clear, solid)).isTrue();
    }

    @Test
    void a_thinner_radiator_may_go_elsewhere_so_it_does_not_stand_in() {
        PartFixture<?, ?> thin = aCooler().liquid(360).thicknessMm(27);
        PartFixture<?, ?> thick = aCooler().liquid(360).thicknessMm(38);

        assertThat(covers(aBrief(), Slot.COOLER, thin, thick)).isFalse();
        assertThat(covers(aBrief(), Slot.COOLER, thick, thin)).isFalse();
    }

    @Test
    void more_watts_are_quieter_only_where_load_is_heard() {
        assertThat(coversByWatts(16, 20, 30)).isTrue();
        assertThat(coversByWatts(24, 20, 30)).isFalse();
    }

    private static boolean coversByWatts(double at20, double at50, double at100) {
        return covers(
                aBrief(),
                Slot.SUPPLY,
                aSupply().watts(850).dba(at20, at50, at100),
                aSupply().watts(750).dba(at20, at50, at100));
    }

    private static boolean covers(
            BriefFixture brief, Slot slot, PartFixture<?, ?> one, PartFixture<?, ?> other) {
        TraitReader reader = new TraitReader(new Assessor(brief.make(), aCatalogue().make()));
        Traits first = reader.read(new Candidate(slot, 0, one.make(), 1, new long[1]));
        Traits second = reader.read(new Candidate(slot, 1, other.make(), 1, new long[1]));
        return first.group().equals(second.group()) && first.coversRules(second);
    }
}
