package rigbrief.rule.need;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief.SizeNeed;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.quantity.Length;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class SizeRuleTest {
    @Test
    void nothing_asked_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief();

        Finding finding = check(new SizeRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_volume_exactly_at_the_limit_is_met() {
        // By hand: 215 x 450 x 430 mm = 41.6 l.
        BuildFixture build = aBuild();
        BriefFixture brief =
                aBrief().size(
                                new SizeNeed(
                                        OptionalInt.of(416),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty()));

        Finding finding = check(new SizeRule(), build, brief);

        assertThat(finding).isMet().hasMargin(416, 416, Unit.DECILITRE);
    }

    @Test
    void a_tenth_of_a_litre_over_is_a_breach_of_one() {
        BuildFixture build = aBuild();
        BriefFixture brief =
                aBrief().size(
                                new SizeNeed(
                                        OptionalInt.of(415),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty()));

        Finding finding = check(new SizeRule(), build, brief);

        assertThat(finding)
                .isBreachOf(1)
                .hasMargin(415, 416, Unit.DECILITRE)
                .saying("volume 41.6 l, 41.5 l allowed");
    }

    @Test
    void dimensions_exactly_at_their_limits_are_met() {
        BuildFixture build = aBuild();
        BriefFixture brief =
                aBrief().size(
                                new SizeNeed(
                                        OptionalInt.empty(),
                                        Optional.of(Length.mm(450)),
                                        Optional.of(Length.mm(215)),
                                        Optional.of(Length.mm(430)),
                                        Optional.empty()));

        Finding finding = check(new SizeRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void one_millimetre_too_high_is_a_breach_of_one() {
        BuildFixture build = aBuild();
        BriefFixture brief =
                aBrief().size(
                                new SizeNeed(
                                        OptionalInt.empty(),
                                        Optional.of(Length.mm(449)),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty()));

        Finding finding = check(new SizeRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("height 450 mm, 449 mm allowed");
    }

    @Test
    void one_millimetre_too_wide_is_a_breach_of_one() {
        BuildFixture build = aBuild();
        BriefFixture brief =
                aBrief().size(
                                new SizeNeed(
                                        OptionalInt.empty(),
                                        Optional.empty(),
                                        Optional.of(Length.mm(214)),
                                        Optional.empty(),
                                        Optional.empty()));

        Finding finding = check(new SizeRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("width 215 mm");
    }

    @Test
    void one_millimetre_too_deep_is_a_breach_of_one() {
        BuildFixture build = aBuild();
        BriefFixture brief =
                aBrief().size(
                                new SizeNeed(
                                        OptionalInt.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.of(Length.mm(429)),
                                        Optional.empty()));

        Finding finding = check(new SizeRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("depth 430 mm");
    }

    @Test
    void what_is_over_adds_up() {
        BuildFixture build = aBuild();
        BriefFixture brief =
                aBrief().size(
                                new SizeNeed(
                                        OptionalInt.of(415),
                                        Optional.of(Length.mm(448)),
                                        Optional.of(Length.mm(215)),
                                        Optional.of(Length.mm(427)),
                                        Optional.empty()));

        Finding finding = check(new SizeRule(), build, brief);

        assertThat(finding).isBreachOf(6);
    }
}
