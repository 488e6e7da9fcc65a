package rigbrief.rule.need;

import static rigbrief.fixture.Assessed.assessed;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.NeedFixture.aNeed;
import static rigbrief.fixture.ProcessorFixture.aProcessor;
import static rigbrief.fixture.WorkloadFixture.KILN;
import static rigbrief.fixture.WorkloadFixture.MARSH;
import static rigbrief.fixture.WorkloadFixture.aWorkload;

import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import rigbrief.assess.Assessment;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class PromiseRuleTest {
    @Test
    void nothing_asked_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief();

        Finding finding = check(new PromiseRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_rate_that_holds_is_met() {
        // By hand: 200 GFLOP on 24 TFLOP/s are 8.333 ms a frame; with 1 ms of processor time,
        // fourth-power norm: 120.0 a second.
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().use(aNeed(MARSH).mustAverage(119));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().frames());

        Finding finding = check(new PromiseRule(), build, brief, catalogue);

        assertThat(finding).isMet();
    }

    @Test
    void a_task_that_takes_as_long_as_it_may_is_met() {
        // By hand: 1,000 units at 100 a second are 10 s.
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().use(aNeed(KILN).mustFinishS(10));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().task());

        Finding finding = check(new PromiseRule(), build, brief, catalogue);

        assertThat(finding).isMet().hasMargin(1_000, 1_000, Unit.CENTISECOND);
    }

    @Test
    void a_task_a_hundredth_of_a_second_too_long_is_a_breach_of_one() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().use(aNeed(KILN).mustFinishS(9.99));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().task());

        Finding finding = check(new PromiseRule(), build, brief, catalogue);

        assertThat(finding)
                .isBreachOf(1)
                .saying(
                        "kiln-drafting, finished within: 10.00 s with 80 % confidence, 9.99 s must hold");
    }

    @Test
    void a_wish_is_no_must() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().use(aNeed(KILN).wishFinishS(1));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().task());

        Finding finding = check(new PromiseRule(), build, brief, catalogue);

        assertThat(finding).isMet();
    }

    @Test
    void the_spread_counts_at_the_brief_s_confidence() {
        // By hand: 10 s x exp(1.2816 x 0.1) = 11.37 s (quantile of the normal distribution, 90 %).
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().confidencePercent(90).use(aNeed(KILN).mustFinishS(10));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().sigma(0.1).task());

        Finding finding = check(new PromiseRule(), build, brief, catalogue);

        assertThat(finding).isBreachOf(137);
    }

    @Test
    void misses_add_up() {
        // By hand: 10 s against 9 s, 20 s against 19 s.
        BuildFixture build = aBuild();
        BriefFixture brief =
                aBrief().use(aNeed(KILN).mustFinishS(9)).use(aNeed("second").mustFinishS(19));
        CatalogueFixture catalogue =
                aCatalogue()
                        .offering(aBuild().make())
                        .workload(aWorkload().task())
                        .workload(aWorkload().id("second").taskSerial(2_000).task());

        Finding finding = check(new PromiseRule(), build, brief, catalogue);

        assertThat(finding).isBreachOf(200);
    }

    @Test
    void the_margin_is_that_of_the_tightest_must() {
        BuildFixture build = aBuild();
        BriefFixture brief =
                aBrief().use(aNeed(KILN).mustFinishS(12)).use(aNeed("second").mustFinishS(21));
        CatalogueFixture catalogue =
                aCatalogue()
                        .offering(aBuild().make())
                        .workload(aWorkload().task())
                        .workload(aWorkload().id("second").taskSerial(2_000).task());

        Finding finding = check(new PromiseRule(), build, brief, catalogue);

        assertThat(finding).isMet().hasMargin(2_100, 2_000, Unit.CENTISECOND);
    }

    @Test
    void no_graphics_at_all_miss_the_whole_rate() {
        BuildFixture build = aBuild().without(Slot.GRAPHICS).with(aProcessor().integratedTflops(0));
        BriefFixture brief = aBrief().use(aNeed(MARSH).mustAverage(60).preset("low"));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().frames());

        Finding finding = check(new PromiseRule(), build, brief, catalogue);

        assertThat(finding).isBreachOf(6_000);
    }

    @Test
    void a_task_that_never_ends_has_a_finite_excess() {
        BuildFixture build = aBuild().without(Slot.GRAPHICS).with(aProcessor().integratedTflops(0));
        BriefFixture brief =
                aBrief().use(aNeed(KILN).mustFinishS(10)).use(aNeed("second").mustFinishS(10));
        CatalogueFixture catalogue =
                aCatalogue()
                        .offering(aBuild().make())
                        .workload(aWorkload().taskGflop(1).task())
                        .workload(aWorkload().id("second").taskGflop(1).task());

        Finding finding = check(new PromiseRule(), build, brief, catalogue);

        assertThat(finding).isBreachOf(2_000_000_000);
    }

    @Test
    void a_rate_that_does_not_hold_is_a_breach_in_hundredths() {
        Assessment it =
                assessed(
                        aBuild(),
                        aBrief().use(aNeed(MARSH).mustAverage(121)),
                        aCatalogue().offering(aBuild().make()).workload(aWorkload().frames()));

        Finding finding = new PromiseRule().check(it);

        // By hand: 121 less 119.99 sure frames per second, as above.
        assertThat(finding).isBreach().saying("lantern-marsh, average: 119.9");
        assertThat(finding).hasExcessBetween(100, 104);
    }

    @Test
    void a_low_is_asked_as_well() {
        Assessment it =
                assessed(
                        aBuild(),
                        aBrief().use(aNeed(MARSH).mustLow(300)),
                        aCatalogue().offering(aBuild().make()).workload(aWorkload().frames()));

        Finding finding = new PromiseRule().check(it);

        assertThat(finding).isBreach().saying("1 % low");
    }

    @Test
    void a_later_must_with_more_to_spare_leaves_the_margin_alone() {
        BuildFixture build = aBuild();
        BriefFixture brief =
                aBrief().use(aNeed(KILN).mustFinishS(10.5)).use(aNeed("second").mustFinishS(40));
        CatalogueFixture catalogue =
                aCatalogue()
                        .offering(aBuild().make())
                        .workload(aWorkload().task())
                        .workload(aWorkload().id("second").taskSerial(2_000).task());

        Finding finding = check(new PromiseRule(), build, brief, catalogue);

        assertThat(finding).isMet().hasMargin(1_050, 1_000, Unit.CENTISECOND);
    }

    @Test
    void of_musts_equally_tight_the_brief_s_first_is_told() {
        // By hand: 10 s of 8 s and 20 s of 16 s both take a quarter too long.
        BriefFixture brief =
                aBrief().use(aNeed(KILN).mustFinishS(8)).use(aNeed("second").mustFinishS(16));
        CatalogueFixture catalogue =
                aCatalogue()
                        .offering(aBuild().make())
                        .workload(aWorkload().task())
                        .workload(aWorkload().id("second").taskSerial(2_000).task());

        Finding finding = check(new PromiseRule(), aBuild(), brief, catalogue);

        assertThat(finding).isBreachOf(600).hasMargin(800, 1_000, Unit.CENTISECOND);
        Assertions.assertThat(PromiseRule.tightest(assessed(aBuild(), brief, catalogue)))
                .get()
                .satisfies(must -> Assertions.assertThat(must.use()).isEqualTo(KILN))
                .satisfies(must -> Assertions.assertThat(must.required()).isEqualTo(8));
    }

    @Test
    void a_wish_is_never_the_tightest_must() {
        BriefFixture brief =
                aBrief().use(aNeed(KILN).wishFinishS(1)).use(aNeed("second").mustFinishS(30));
        CatalogueFixture catalogue =
                aCatalogue()
                        .offering(aBuild().make())
                        .workload(aWorkload().task())
                        .workload(aWorkload().id("second").taskSerial(2_000).task());

        Assertions.assertThat(PromiseRule.tightest(assessed(aBuild(), brief, catalogue)))
                .get()
                .satisfies(must -> Assertions.assertThat(must.use()).isEqualTo("second"));
        Assertions.assertThat(PromiseRule.tightest(assessed(aBuild(), aBrief()))).isEmpty();
    }
}
