package rigbrief.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.fixture.Assessed.assessed;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;

import org.junit.jupiter.api.Test;
import rigbrief.assess.Assessment;

class EnergyGoalTest {

    @Test
    void the_reference_is_a_600_watt_machine_at_the_brief_s_hours() {
        double kwh = EnergyGoal.referenceKwh(aBrief().make());

        // By hand, ENERGY STAR version 8 weights (from memory): 8.76 x (0.15 x 0.5 + 0.45 x 2 + 0.4
        // x 100)
        // = 358.941 kWh; 4 h x 0.3 x 365 days x 500 W = 219 kWh.
        assertThat(kwh).isCloseTo(577.941, within(0.001));
    }

    @Test
    void the_utility_is_what_is_saved_of_the_reference() {
        Assessment it = assessed(aBuild());

        int utility = new EnergyGoal().utility(it);

        double saved = 1 - it.power().kwhPerYear() / 577.941;
        assertThat(utility).isCloseTo((int) Math.round(saved * 10_000), within(1));
    }

    @Test
    void a_thirstier_card_is_never_better() {
        int modest = new EnergyGoal().utility(assessed(aBuild()));
        int thirsty =
                new EnergyGoal().utility(assessed(aBuild().with(aGraphicsCard().boardPowerW(400))));

        assertThat(thirsty).isLessThan(modest);
    }
}
