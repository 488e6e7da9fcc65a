package rigbrief.rule.fit;

import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.CoolerFixture.aCooler;
import static rigbrief.fixture.FanFixture.aFan;
import static rigbrief.fixture.FindingAssert.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.rule.Finding;

class FanPlaceRuleTest {
    @Test
    void no_added_fan_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new FanPlaceRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void as_many_fans_as_places_are_met() {
        // By hand: one place left in front, two on top, none behind.
        BuildFixture build = aBuild().with(aFan(), 3);

        Finding finding = check(new FanPlaceRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void one_fan_too_many_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aFan(), 4);

        Finding finding = check(new FanPlaceRule(), build);

        assertThat(finding).isBreachOf(1).saying("1 of 4 added fans of 120 mm finds no place");
    }

    @Test
    void a_size_no_side_takes_is_a_breach_of_all() {
        BuildFixture build = aBuild().with(aFan().sizeMm(92), 2);

        Finding finding = check(new FanPlaceRule(), build);

        assertThat(finding).isBreachOf(2);
    }

    @Test
    void a_side_taken_by_the_radiator_takes_no_fan() {
        BuildFixture build = aBuild().with(aCooler().liquid(240)).with(aFan(), 2);

        Finding finding = check(new FanPlaceRule(), build);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void packs_are_opened() {
        BuildFixture build = aBuild().with(aFan().pack(4));

        Finding finding = check(new FanPlaceRule(), build);

        assertThat(finding).isBreachOf(1);
    }
}
