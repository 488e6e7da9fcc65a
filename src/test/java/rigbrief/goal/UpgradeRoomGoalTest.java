package rigbrief.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.Assessed.assessed;
import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;
import static rigbrief.fixture.SupplyFixture.aSupply;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.FamilySupport;

class UpgradeRoomGoalTest {
    @Test
    void the_ordinary_build_has_seven_tenths() {
        BuildFixture build = aBuild();

        int utility = new UpgradeRoomGoal().utility(assessed(build));

        // By hand: 2 free memory slots 1, 1 free M.2 slot 0.5, 750 - 344 / 0.8 = 320 W 1, no other
        // family 0, a card of
        // 297 mm and 280 W fits 1; 3.5 / 5.
        assertThat(utility).isEqualTo(7_000);
    }

    @Test
    void another_family_counts_a_fifth() {
        BuildFixture build =
                aBuild().with(
                                aBoard().families(
                                                new FamilySupport("heron", "1.00"),
                                                new FamilySupport("egret", "1.10")));

        int utility = new UpgradeRoomGoal().utility(assessed(build));

        assertThat(utility).isEqualTo(9_000);
    }

    @Test
    void full_memory_slots_take_a_fifth() {
        BuildFixture build = aBuild().with(aMemoryKit(), 2);

        int utility = new UpgradeRoomGoal().utility(assessed(build));

        // By hand: 352 / 0.8 = 440 W leave 310 W, still full; memory 0.
        assertThat(utility).isEqualTo(5_000);
    }

    @Test
    void spare_watts_count_in_proportion() {
        BuildFixture build = aBuild().with(aSupply().watts(580));

        int utility = new UpgradeRoomGoal().utility(assessed(build));

        // By hand: 580 - 430 = 150 W of 300 W; the next card needs 530 W and still fits.
        assertThat(utility).isEqualTo(6_000);
    }

    @Test
    void a_supply_too_small_for_the_next_card_loses_two_shares() {
        BuildFixture build = aBuild().with(aSupply().watts(490));

        int utility = new UpgradeRoomGoal().utility(assessed(build));

        // By hand: 1 + 0.5 + 60 / 300 + 0 + 0 = 1.7; / 5.
        assertThat(utility).isEqualTo(3_400);
    }

    @Test
    void a_case_too_short_for_the_next_card_loses_a_fifth() {
        BuildFixture build = aBuild().with(aGraphicsCard().lengthMm(311));

        int utility = new UpgradeRoomGoal().utility(assessed(build));

        assertThat(utility).isEqualTo(5_000);
    }

    @Test
    void a_case_just_long_enough_does_not() {
        BuildFixture build = aBuild().with(aGraphicsCard().lengthMm(310));

        int utility = new UpgradeRoomGoal().utility(assessed(build));

        assertThat(utility).isEqualTo(7_000);
    }
}
