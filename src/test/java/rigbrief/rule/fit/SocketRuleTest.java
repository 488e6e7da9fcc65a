package rigbrief.rule.fit;

import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.ProcessorFixture.aProcessor;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.rule.Finding;

class SocketRuleTest {
    @Test
    void the_same_socket_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new SocketRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void another_socket_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aProcessor().socket("k5"));

        Finding finding = check(new SocketRule(), build);

        assertThat(finding).isBreachOf(1).saying("k5").saying("k4");
    }
}
