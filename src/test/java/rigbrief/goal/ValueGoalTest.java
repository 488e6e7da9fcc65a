package rigbrief.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.Assessed.assessed;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;

class ValueGoalTest {
    @Test
    void nothing_else_weighed_leaves_money_alone() {
        BuildFixture build = aBuild();

        int utility = new ValueGoal().utility(assessed(build));

        // By hand: 800 of 2,000; 1 / 1.4.
        assertThat(utility).isEqualTo(7_143);
    }

    @Test
    void others_are_weighed_against_money() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().wish("look", 2);

        int utility = new ValueGoal().utility(assessed(build, brief));

        // By hand: 0.9286 / (0.9286 + 0.4).
        assertThat(utility).isEqualTo(6_989);
    }

    @Test
    void weights_make_a_mean() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().wish("look", 1).wish("lifetime", 3);

        int utility = new ValueGoal().utility(assessed(build, brief));

        // By hand: (0.9286 + 3 x 0.6) / 4 = 0.68215; / (0.68215 + 0.4).
        assertThat(utility).isEqualTo(6_304);
    }

    @Test
    void less_money_is_better() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().ceiling("4000.00");

        int utility = new ValueGoal().utility(assessed(build, brief));

        // By hand: 1 / 1.2.
        assertThat(utility).isEqualTo(8_333);
    }
}
