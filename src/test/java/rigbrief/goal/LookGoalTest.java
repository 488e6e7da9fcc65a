package rigbrief.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.Assessed.assessed;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CablesFixture.someCables;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;

import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief.LightingNeed;
import rigbrief.brief.Brief.Strength;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Colour;
import rigbrief.part.Lighting;

class LookGoalTest {
    @Test
    void one_colour_without_cables_is_thirteen_fourteenths() {
        BuildFixture build = aBuild();

        int utility = new LookGoal().utility(assessed(build));

        // By hand: (6 + 0.5) / 7.
        assertThat(utility).isEqualTo(9_286);
    }

    @Test
    void matched_cables_make_it_full() {
        BuildFixture build = aBuild().with(someCables());

        int utility = new LookGoal().utility(assessed(build));

        assertThat(utility).isEqualTo(10_000);
    }

    @Test
    void another_colour_than_the_brief_s_counts_nothing() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().colour(Colour.WHITE, Strength.WISH);

        int utility = new LookGoal().utility(assessed(build, brief));

        // By hand: no fans 1, no cables 0.5; 1.5 / 7.
        assertThat(utility).isEqualTo(2_143);
    }

    @Test
    void a_part_in_another_colour_takes_a_seventh() {
        BuildFixture build = aBuild().with(aMemoryKit().colour(Colour.RED));

        int utility = new LookGoal().utility(assessed(build));

        // By hand: 5.5 / 7.
        assertThat(utility).isEqualTo(7_857);
    }

    @Test
    void a_lit_part_counts_half_where_no_light_is_wanted() {
        BuildFixture build = aBuild().with(aMemoryKit().lighting(Lighting.SWITCHABLE));
        BriefFixture brief = aBrief().lighting(LightingNeed.NONE);

        int utility = new LookGoal().utility(assessed(build, brief));

        // By hand: 6 / 7.
        assertThat(utility).isEqualTo(8_571);
    }

    @Test
    void a_lit_part_is_fine_where_light_does_not_matter() {
        BuildFixture build = aBuild().with(aMemoryKit().lighting(Lighting.FIXED));

        int utility = new LookGoal().utility(assessed(build));

        assertThat(utility).isEqualTo(9_286);
    }

    @Test
    void a_part_without_a_colour_does_not_disturb() {
        BuildFixture build = aBuild().with(aMemoryKit().noColour());

        int utility = new LookGoal().utility(assessed(build));

        assertThat(utility).isEqualTo(9_286);
    }
}
