package rigbrief.report;

import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;

import java.util.function.UnaryOperator;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.catalogue.Catalogue;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.proposal.budget.Budget;
import rigbrief.proposal.budget.BudgetFinder;
import rigbrief.proposal.budget.BudgetLimits;
import rigbrief.proposal.budget.Progress;

/** Budgets of the fixtures' brief and a few builds, really solved. */
public final class Budgets {
    private Budgets() {}

    /** The fixtures' brief as it is. */
    public static Budget answered() {
        return of(it -> it);
    }

    /** No build is under the ceiling, but there are some. */
    public static Budget overCeiling() {
        return of(it -> new BriefDraft(it).ceiling(CatalogueFixture.euro("300.00")).toBrief());
    }

    /** No build is quiet enough at any price. */
    public static Budget impossible() {
        return of(
                it ->
                        new BriefDraft(it)
                                .noise(
                                        new Brief.Noise(
                                                java.util.OptionalInt.of(5),
                                                it.noise().wishDba(),
                                                it.noise().seatDistanceM()))
                                .toBrief());
    }

    /** A client with another name. */
    public static Budget client(String name) {
        return of(it -> new BriefDraft(it).client(name).toBrief());
    }

    private static Budget of(UnaryOperator<Brief> change) {
        Brief brief = change.apply(Answers.brief().make());
        Catalogue catalogue =
                Answers.catalogue()
                        .part(aGraphicsCard().id("faster-card").tflops(45))
                        .offer("faster-card", CatalogueFixture.KESTREL, "260.00")
                        .part(aGraphicsCard().id("fastest-card").tflops(60))
                        .offer("fastest-card", CatalogueFixture.KESTREL, "410.00")
                        .make();
        return new BudgetFinder(new BudgetLimits(20_000, 20_000), () -> false, Progress.NONE)
                .find(brief, catalogue, brief.ceiling().minorUnits(), need -> true);
    }
}
