package rigbrief.rule.fit;

import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.CoolerFixture.aCooler;
import static rigbrief.fixture.FindingAssert.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Slot;
import rigbrief.rule.Finding;

class CoolerSocketRuleTest {
    @Test
    void a_listed_socket_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new CoolerSocketRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_socket_without_a_bracket_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aCooler().sockets("k3"));

        Finding finding = check(new CoolerSocketRule(), build);

        assertThat(finding).isBreachOf(1).saying("no bracket for socket k4");
    }

    @Test
    void a_boxed_cooler_is_met() {
        BuildFixture build = aBuild().without(Slot.COOLER);

        Finding finding = check(new CoolerSocketRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void an_empty_cell_is_a_caution() {
        BuildFixture build = aBuild().with(aCooler().unknown("sockets"));

        Finding finding = check(new CoolerSocketRule(), build);

        assertThat(finding).isUnknown("cooler-1", "sockets");
    }
}
