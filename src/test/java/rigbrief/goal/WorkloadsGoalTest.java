package rigbrief.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.Assessed.assessed;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.NeedFixture.aNeed;
import static rigbrief.fixture.ScreenFixture.aScreen;
import static rigbrief.fixture.WorkloadFixture.KILN;
import static rigbrief.fixture.WorkloadFixture.MARSH;
import static rigbrief.fixture.WorkloadFixture.aWorkload;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.fixture.CatalogueFixture;

class WorkloadsGoalTest {
    @Test
    void no_workload_is_full() {
        BuildFixture build = aBuild();

        int utility = new WorkloadsGoal().utility(assessed(build));

        assertThat(utility).isEqualTo(10_000);
    }

    @Test
    void a_task_half_way_between_must_and_wish_in_ratio_is_half() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().use(aNeed(KILN).mustFinishS(20).wishFinishS(5));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().task());

        int utility = new WorkloadsGoal().utility(assessed(build, brief, catalogue));

        // By hand: 10 s between 20 s and 5 s, ln 2 / ln 4.
        assertThat(utility).isEqualTo(5_000);
    }

    @Test
    void a_task_at_its_must_is_nothing() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().use(aNeed(KILN).mustFinishS(10));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().task());

        int utility = new WorkloadsGoal().utility(assessed(build, brief, catalogue));

        assertThat(utility).isZero();
    }

    @Test
    void a_task_at_its_wish_is_full() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().use(aNeed(KILN).wishFinishS(10));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().task());

        int utility = new WorkloadsGoal().utility(assessed(build, brief, catalogue));

        assertThat(utility).isEqualTo(10_000);
    }

    @Test
    void a_must_alone_is_full_at_half_of_its_time() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().use(aNeed(KILN).mustFinishS(20));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().task());

        int utility = new WorkloadsGoal().utility(assessed(build, brief, catalogue));

        assertThat(utility).isEqualTo(10_000);
    }

    @Test
    void a_task_of_which_nothing_is_asked_does_not_count() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().use(aNeed(KILN));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().task());

        int utility = new WorkloadsGoal().utility(assessed(build, brief, catalogue));

        assertThat(utility).isEqualTo(10_000);
    }

    @Test
    void a_rate_half_way_between_must_and_wish_in_ratio_is_half() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().use(aNeed(MARSH).mustAverage(60).wishAverage(240));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().frames());

        int utility = new WorkloadsGoal().utility(assessed(build, brief, catalogue));

        // By hand: 119.99 a second between 60 and 240.
        assertThat(utility).isBetween(4_998, 5_000);
    }

    @Test
    void a_rate_beyond_the_screen_is_full() {
        BuildFixture build = aBuild();
        BriefFixture brief =
                aBrief().screen(aScreen().mode(1920, 1080, 100)).use(aNeed(MARSH).mustAverage(60));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().frames());

        int utility = new WorkloadsGoal().utility(assessed(build, brief, catalogue));

        assertThat(utility).isEqualTo(10_000);
    }

    @Test
    void without_a_must_thirty_frames_are_the_base() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().use(aNeed(MARSH).wishAverage(480));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().frames());

        int utility = new WorkloadsGoal().utility(assessed(build, brief, catalogue));

        // By hand: 119.99 a second between 30 and 480.
        assertThat(utility).isBetween(4_998, 5_000);
    }

    @Test
    void workloads_are_weighted() {
        BuildFixture build = aBuild();
        BriefFixture brief =
                aBrief().use(aNeed(KILN).mustFinishS(20).wishFinishS(5).weight(1))
                        .use(aNeed(MARSH).mustAverage(30).wishAverage(60).weight(3));
        CatalogueFixture catalogue =
                aCatalogue()
                        .offering(aBuild().make())
                        .workload(aWorkload().frames())
                        .workload(aWorkload().task());

        int utility = new WorkloadsGoal().utility(assessed(build, brief, catalogue));

        // By hand: (1 x 0.5 + 3 x 1) / 4.
        assertThat(utility).isEqualTo(8_750);
    }
}
