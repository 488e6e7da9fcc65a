package rigbrief.rule.need;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.BuildFixture.anEmptyBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.CoolerFixture.aCooler;
import static rigbrief.fixture.DisplayFixture.aDisplay;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;
import static rigbrief.fixture.SystemFixture.aLicence;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief.SizeNeed;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.quantity.Mass;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class MassRuleTest {
    @Test
    void nothing_asked_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief();

        Finding finding = check(new MassRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_mass_exactly_at_the_limit_is_met() {
        // By hand: 40 + 900 + 80 + 1100 + 8 + 1600 + 750 + 7000 g.
        BuildFixture build = aBuild();
        BriefFixture brief =
                aBrief().size(
                                new SizeNeed(
                                        OptionalInt.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.of(Mass.g(11_478))));

        Finding finding = check(new MassRule(), build, brief);

        assertThat(finding).isMet().hasMargin(11_478, 11_478, Unit.GRAM);
    }

    @Test
    void one_gram_over_is_a_breach_of_one() {
        BuildFixture build = aBuild();
        BriefFixture brief =
                aBrief().size(
                                new SizeNeed(
                                        OptionalInt.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.of(Mass.g(11_477))));

        Finding finding = check(new MassRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("weigh 11478 g together, 11477 g allowed");
    }

    @Test
    void packs_count_each() {
        BuildFixture build = aBuild().with(aMemoryKit(), 2);
        BriefFixture brief =
                aBrief().size(
                                new SizeNeed(
                                        OptionalInt.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.of(Mass.g(11_557))));

        Finding finding = check(new MassRule(), build, brief);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void display_and_licence_stay_out() {
        BuildFixture build = aBuild().with(aDisplay()).with(aLicence());
        BriefFixture brief =
                aBrief().size(
                                new SizeNeed(
                                        OptionalInt.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.of(Mass.g(11_478))));

        Finding finding = check(new MassRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void an_empty_mass_is_a_caution() {
        BuildFixture build = aBuild().with(aCooler().unknown("mass_g"));
        BriefFixture brief =
                aBrief().size(
                                new SizeNeed(
                                        OptionalInt.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.of(Mass.g(20_000))));

        Finding finding = check(new MassRule(), build, brief);

        assertThat(finding).isUnknown("cooler-1", "mass_g");
    }

    @Test
    void an_empty_mass_does_not_hide_a_known_excess() {
        BuildFixture build = aBuild().with(aCooler().unknown("mass_g"));
        BriefFixture brief =
                aBrief().size(
                                new SizeNeed(
                                        OptionalInt.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.of(Mass.g(10_000))));

        Finding finding = check(new MassRule(), build, brief);

        assertThat(finding).isBreachOf(728);
    }

    @Test
    void a_case_alone_can_break_it() {
        BuildFixture build = anEmptyBuild().with(aCase());
        BriefFixture brief =
                aBrief().size(
                                new SizeNeed(
                                        OptionalInt.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.of(Mass.g(6_999))));

        Finding finding = check(new MassRule(), build, brief);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void an_empty_mass_leaves_the_limit_itself_open() {
        BuildFixture build = aBuild().with(aCooler().unknown("mass_g"));
        BriefFixture brief =
                aBrief().size(
                                new SizeNeed(
                                        OptionalInt.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.of(Mass.g(10_728))));

        Finding finding = check(new MassRule(), build, brief);

        assertThat(finding).isUnknown("cooler-1", "mass_g");
    }
}
