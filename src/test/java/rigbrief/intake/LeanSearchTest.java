package rigbrief.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief;
import rigbrief.brief.Brief.SizeNeed;
import rigbrief.brief.BriefDraft;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BriefReader;
import rigbrief.file.CatalogueReader;
import rigbrief.proposal.Proposer;
import rigbrief.proposal.SearchLimits;
import rigbrief.proposal.Tier;
import rigbrief.quantity.Money;

/** The least money shown while asking is the total of the lean build that is proposed later. */
class LeanSearchTest {
    private final Catalogue catalogue;

    LeanSearchTest() throws BadInput {
        catalogue = CatalogueReader.read(Path.of("catalog-sample"));
    }

    private Brief scenario(String name) throws BadInput {
        return BriefReader.read(Path.of("scenarios", name + ".yaml"), catalogue);
    }

    @Test
    void it_is_the_lean_total_whatever_the_ceiling_says() throws BadInput {
        Brief brief = scenario("forty-desks");
        Brief mean = new BriefDraft(brief).ceiling(Money.ofMinor(1, brief.currency())).toBrief();

        Least least = new LeanSearch(catalogue, LeanSearch.USUAL_STEPS).of(mean);

        var lean = new Proposer(SearchLimits.usual()).propose(brief, catalogue).proposals().get(0);
        assertThat(lean.tier()).isEqualTo(Tier.LEAN);
        assertThat(lean.proof().proven()).isTrue();
        assertThat(least)
                .isEqualTo(
                        new Least.Known(
                                Money.ofMinor(lean.audit().cost().totalMinor(), brief.currency())));
    }

    @Test
    void what_no_case_is_small_enough_for_is_impossible_at_any_price() throws BadInput {
        Brief brief = scenario("writer");
        SizeNeed tiny =
                new SizeNeed(
                        java.util.OptionalInt.of(10),
                        brief.size().height(),
                        brief.size().width(),
                        brief.size().depth(),
                        brief.size().mass());

        Least least =
                new LeanSearch(catalogue, LeanSearch.USUAL_STEPS)
                        .of(new BriefDraft(brief).size(tiny).toBrief());

        assertThat(least).isEqualTo(new Least.Impossible());
    }

    @Test
    void a_search_that_may_take_no_steps_owns_that_it_does_not_know() throws BadInput {
        Least least = new LeanSearch(catalogue, 1).of(scenario("writer"));

        assertThat(least).isEqualTo(new Least.Unknown());
    }

    @Test
    void a_search_cut_short_brackets_what_a_whole_one_proves() throws BadInput {
        Brief brief = scenario("writer");
        Least whole = new LeanSearch(catalogue, 200_000).of(brief);

        for (long steps : new long[] {50, 200, 1_000, 5_000}) {
            Least cut = new LeanSearch(catalogue, steps).of(brief);
            if (cut instanceof Least.Between between && whole instanceof Least.Known known) {
                assertThat(known.total()).isBetween(between.low(), between.high());
            } else {
                assertThat(cut).isIn(whole, new Least.Unknown());
            }
        }
    }
}
