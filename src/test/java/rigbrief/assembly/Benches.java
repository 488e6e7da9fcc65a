package rigbrief.assembly;

import rigbrief.build.Build;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.fixture.CatalogueFixture;

/** Builds of fixtures on the bench. */
public final class Benches {
    private Benches() {}

    /** A build under the modest brief, every part on offer. */
    public static Bench bench(BuildFixture build) {
        return bench(build, BriefFixture.aBrief());
    }

    /** A build under a brief, every part on offer. */
    public static Bench bench(BuildFixture build, BriefFixture brief) {
        Build made = build.make();
        return Bench.of(brief.make(), CatalogueFixture.aCatalogue().offering(made).make(), made);
    }

    /** The plan for a build under the modest brief. */
    static AssemblyPlan plan(BuildFixture build) {
        return AssemblyPlan.of(bench(build));
    }

    /** The plan for a build under a brief. */
    static AssemblyPlan plan(BuildFixture build, BriefFixture brief) {
        return AssemblyPlan.of(bench(build, brief));
    }

    /** Ids of a plan's steps, in order. */
    static java.util.List<String> steps(AssemblyPlan plan) {
        return plan.steps().stream().map(Step::id).toList();
    }
}
