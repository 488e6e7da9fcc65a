package rigbrief.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.Assessed.assessed;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;

import org.junit.jupiter.api.Test;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;

class QuietGoalTest {
    @Test
    void silence_is_bounded_by_the_room() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().noiseMustDba(20).noiseWishDba(10);

        int utility = new QuietGoal().utility(assessed(build, brief));

        // The room alone is 20 dB(A) (common practice).
        assertThat(utility).isZero();
    }

    @Test
    void the_curve_is_straight_from_the_must_down_to_the_wish() {
        Brief brief = aBrief().noiseMustDba(38).noiseWishDba(32).make();

        assertThat(QuietGoal.share(38, brief)).isZero();
        assertThat(QuietGoal.share(35, brief)).isEqualTo(0.5);
        assertThat(QuietGoal.share(32, brief)).isEqualTo(1);
    }

    @Test
    void without_limits_it_runs_from_45_to_22() {
        Brief brief = aBrief().make();

        assertThat(QuietGoal.share(45, brief)).isZero();
        assertThat(QuietGoal.share(33.5, brief)).isEqualTo(0.5);
        assertThat(QuietGoal.share(22, brief)).isEqualTo(1);
    }

    @Test
    void a_wish_above_the_must_still_leaves_a_slope() {
        Brief brief = aBrief().noiseMustDba(30).noiseWishDba(34).make();

        assertThat(QuietGoal.share(29, brief)).isEqualTo(1);
        assertThat(QuietGoal.share(30, brief)).isZero();
    }

    @Test
    void the_reason_gives_the_level() {
        Assessment it = assessed(aBuild());

        assertThat(new QuietGoal().because(it)).contains("dB(A) at the seat");
    }
}
