package rigbrief.rule.fit;

import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.ProcessorFixture.aProcessor;
import static rigbrief.fixture.SystemFixture.aLicence;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.rule.Finding;

class SystemRuleTest {
    @Test
    void no_licence_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new SystemRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void features_of_board_and_processor_together_are_met() {
        BuildFixture build = aBuild().with(aLicence());

        Finding finding = check(new SystemRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void one_feature_short_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aLicence()).with(aBoard().features());

        Finding finding = check(new SystemRule(), build);

        assertThat(finding).isBreachOf(1).saying("requires secure-boot, which is not there");
    }

    @Test
    void two_features_short_are_a_breach_of_two() {
        BuildFixture build =
                aBuild().with(aLicence()).with(aBoard().features()).with(aProcessor().features());

        Finding finding = check(new SystemRule(), build);

        assertThat(finding).isBreachOf(2).saying("tpm2, secure-boot");
    }
}
