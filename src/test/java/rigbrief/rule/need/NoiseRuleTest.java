package rigbrief.rule.need;

import static rigbrief.fixture.Assessed.assessed;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.assess.Assessment;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class NoiseRuleTest {
    private static final int LOUD_DBA = 60;

    @Test
    void no_limit_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new NoiseRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_level_under_the_limit_is_met_with_its_margin() {
        Assessment it = assessed(aBuild(), aBrief().noiseMustDba(LOUD_DBA));

        Finding finding = new NoiseRule().check(it);

        assertThat(finding)
                .isMet()
                .hasMargin(6_000, Math.round(it.load().levelDba() * 100), Unit.CENTIDECIBEL);
    }

    @Test
    void a_limit_of_the_level_itself_rounded_up_is_met() {
        int limit = (int) Math.ceil(level());

        Finding finding = check(new NoiseRule(), aBuild(), aBrief().noiseMustDba(limit));

        assertThat(finding).isMet();
    }

    @Test
    void a_limit_under_the_level_is_a_breach_in_hundredths() {
        int limit = (int) Math.ceil(level()) - 1;

        Finding finding = check(new NoiseRule(), aBuild(), aBrief().noiseMustDba(limit));

        assertThat(finding)
                .isBreachOf(Math.round(level() * 100) - limit * 100L)
                .saying("at 0.8 m under the heaviest workload");
    }

    @Test
    void nothing_is_quieter_than_the_room() {
        // The room's own level is 20 dB(A) (common practice), so no machine meets 19.
        Finding finding = check(new NoiseRule(), aBuild(), aBrief().noiseMustDba(19));

        assertThat(finding).isBreach();
    }

    @Test
    void a_build_without_a_cooler_is_told_elsewhere() {
        BuildFixture build = aBuild().without(Slot.COOLER);

        Finding finding = check(new NoiseRule(), build, aBrief().noiseMustDba(10));

        assertThat(finding).isMet();
    }

    private static double level() {
        return assessed(aBuild()).load().levelDba();
    }
}
