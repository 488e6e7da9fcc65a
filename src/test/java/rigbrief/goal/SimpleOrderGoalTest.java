package rigbrief.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.Assessed.assessed;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.BuildFixture.anEmptyBuild;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.QUAY;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.fixture.CatalogueFixture;

class SimpleOrderGoalTest {
    @Test
    void one_supplier_with_single_offers_only() {
        BuildFixture build = aBuild();

        int utility = new SimpleOrderGoal().utility(assessed(build));

        // By hand: (1 + 18 / 21 + 0) / 3; eight parts have a single offer.
        assertThat(utility).isEqualTo(6_190);
    }

    @Test
    void a_second_source_for_every_part_fills_a_third() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief();
        CatalogueFixture catalogue =
                aCatalogue()
                        .offering(aBuild().make())
                        .offer("processor-1", QUAY, "110.00")
                        .offer("board-1", QUAY, "110.00")
                        .offer("memory-1", QUAY, "110.00")
                        .offer("graphics-1", QUAY, "110.00")
                        .offer("drive-1", QUAY, "110.00")
                        .offer("supply-1", QUAY, "110.00")
                        .offer("cooler-1", QUAY, "110.00")
                        .offer("case-1", QUAY, "110.00");

        int utility = new SimpleOrderGoal().utility(assessed(build, brief, catalogue));

        // By hand: (1 + 18 / 21 + 1) / 3.
        assertThat(utility).isEqualTo(9_524);
    }

    @Test
    void a_second_supplier_takes_a_ninth() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief();
        CatalogueFixture catalogue =
                aCatalogue()
                        .offering(aBuild().make())
                        .noOffer("graphics-1")
                        .offer("graphics-1", QUAY, "90.00");

        int utility = new SimpleOrderGoal().utility(assessed(build, brief, catalogue));

        // By hand: (2 / 3 + 18 / 21 + 0) / 3.
        assertThat(utility).isEqualTo(5_079);
    }

    @Test
    void three_weeks_of_waiting_take_a_third() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief();
        CatalogueFixture catalogue =
                aCatalogue()
                        .offering(aBuild().make())
                        .noOffer("graphics-1")
                        .offer("graphics-1", KESTREL, "90.00", 100, 21);

        int utility = new SimpleOrderGoal().utility(assessed(build, brief, catalogue));

        assertThat(utility).isEqualTo(3_333);
    }

    @Test
    void an_order_of_nothing_is_full() {
        BuildFixture build = anEmptyBuild();

        int utility = new SimpleOrderGoal().utility(assessed(build));

        assertThat(utility).isEqualTo(10_000);
    }
}
