package rigbrief.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigbrief.audit.Audit;
import rigbrief.build.Build;
import rigbrief.proposal.FrontPoint;
import rigbrief.proposal.Proposal;
import rigbrief.proposal.Proposals;

class FrontStepsTest {
    private static final Build LEAN = aBuild().make();
    private static final Build FULL = aBuild().with(aMemoryKit().id("other"), 2).make();

    /** Two tiers 100.00 apart, and whatever lies on the front. */
    private static Proposals answer(FrontPoint... front) {
        Proposals answer =
                Offered.of(aBrief(), aCatalogue().offering(FULL).offering(LEAN), LEAN, FULL);
        List<Proposal> rising =
                List.of(
                        worth(3_000, answer.proposals().get(0)),
                        worth(8_000, answer.proposals().get(1)));
        return new Proposals(
                answer.brief(),
                answer.catalogue(),
                answer.seed(),
                rising,
                List.of(front),
                answer.clash(),
                answer.remarks());
    }

    private static Proposal worth(long points, Proposal proposal) {
        Audit audit = proposal.audit();
        Audit worth =
                new Audit(
                        audit.build(),
                        audit.findings(),
                        audit.margins(),
                        audit.goals(),
                        points,
                        10_000,
                        audit.predictions(),
                        audit.cost(),
                        audit.figures());
        return new Proposal(
                proposal.tier(),
                proposal.record(),
                worth,
                proposal.reasons(),
                proposal.proof(),
                proposal.remarks());
    }

    private static FrontPoint between(int percent, Proposals tiers) {
        List<FrontPoint> ends = FrontSteps.of(tiers);
        long span = ends.get(1).totalMinor() - ends.get(0).totalMinor();
        double rise = ends.get(1).utility() - ends.get(0).utility();
        return new FrontPoint(
                ends.get(0).totalMinor() + span * percent / 100,
                ends.get(0).utility() + rise * percent / 100,
                LEAN);
    }

    @Test
    void every_proposal_is_a_step_whatever_the_front_says() {
        List<FrontPoint> steps = FrontSteps.of(answer());

        assertThat(steps).extracting(FrontPoint::build).containsExactly(LEAN, FULL);
    }

    @Test
    void points_between_the_proposals_stand_in_order_of_money() {
        Proposals tiers = answer();

        List<FrontPoint> steps = FrontSteps.of(answer(between(70, tiers), between(30, tiers)));

        assertThat(steps).hasSize(4).extracting(FrontPoint::totalMinor).isSorted();
    }

    @Test
    void a_point_that_is_dearer_and_no_better_is_no_step() {
        Proposals tiers = answer();
        FrontPoint good = between(30, tiers);
        FrontPoint idle = new FrontPoint(between(60, tiers).totalMinor(), good.utility(), LEAN);

        assertThat(FrontSteps.of(answer(good, idle))).hasSize(3).doesNotContain(idle);
    }

    @Test
    void no_more_steps_than_a_hand_can_tell_apart() {
        Proposals tiers = answer();
        List<FrontPoint> many = new ArrayList<>();
        for (int percent = 1; percent < 100; percent++) {
            many.add(between(percent, tiers));
        }

        List<FrontPoint> steps = FrontSteps.of(answer(many.toArray(FrontPoint[]::new)));

        assertThat(steps).hasSizeBetween(10, 24);
        assertThat(steps.get(steps.size() - 1).build()).isEqualTo(FULL);
    }
}
