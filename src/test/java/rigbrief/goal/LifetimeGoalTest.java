package rigbrief.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.Assessed.assessed;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.DriveFixture.aDrive;
import static rigbrief.fixture.SupplyFixture.aSupply;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;

class LifetimeGoalTest {
    @Test
    void five_years_throughout_are_six_tenths() {
        BuildFixture build = aBuild();

        int utility = new LifetimeGoal().utility(assessed(build));

        // By hand: eight parts at 5 / 10, no fans 1, endurance 600 TB of 73 TB 1; 6 / 10.
        assertThat(utility).isEqualTo(6_000);
    }

    @Test
    void ten_years_are_full_for_a_part() {
        BuildFixture build = aBuild().with(aSupply().warrantyYears(10));

        int utility = new LifetimeGoal().utility(assessed(build));

        assertThat(utility).isEqualTo(6_500);
    }

    @Test
    void more_than_ten_years_count_as_ten() {
        BuildFixture build = aBuild().with(aSupply().warrantyYears(12));

        int utility = new LifetimeGoal().utility(assessed(build));

        assertThat(utility).isEqualTo(6_500);
    }

    @Test
    void an_unknown_guarantee_counts_nothing() {
        BuildFixture build = aBuild().with(aSupply().noWarranty());

        int utility = new LifetimeGoal().utility(assessed(build));

        assertThat(utility).isEqualTo(5_500);
    }

    @Test
    void endurance_counts_in_proportion() {
        BuildFixture build = aBuild().with(aDrive().enduranceTbw(36));

        int utility = new LifetimeGoal().utility(assessed(build));

        // By hand: 36 / 73 = 0.49315 instead of 1; 20 GB a day for ten years are 73 TB.
        assertThat(utility).isEqualTo(5_493);
    }

    @Test
    void unknown_endurance_counts_nothing() {
        BuildFixture build = aBuild().with(aDrive().unknown("endurance_tbw"));

        int utility = new LifetimeGoal().utility(assessed(build));

        assertThat(utility).isEqualTo(5_000);
    }
}
