package rigbrief.rule.fit;

import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.ProcessorFixture.aProcessor;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class BoardPowerRuleTest {
    @Test
    void a_stronger_board_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new BoardPowerRule(), build);

        assertThat(finding).isMet().hasMargin(150, 88, Unit.WATT);
    }

    @Test
    void a_board_exactly_strong_enough_is_met() {
        BuildFixture build = aBuild().with(aProcessor().sustainedPowerW(150));

        Finding finding = check(new BoardPowerRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void one_watt_too_much_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aProcessor().sustainedPowerW(151));

        Finding finding = check(new BoardPowerRule(), build);

        assertThat(finding).isBreachOf(1).saying("draws 151 W for good, board sustains 150 W");
    }

    @Test
    void an_empty_cell_is_a_caution() {
        BuildFixture build = aBuild().with(aBoard().unknown("processor_power_w"));

        Finding finding = check(new BoardPowerRule(), build);

        assertThat(finding).isUnknown("board-1", "processor_power_w");
    }
}
