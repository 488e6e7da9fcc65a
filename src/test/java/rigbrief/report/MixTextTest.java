package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.SupplyFixture.aSupply;

import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.Proposer;
import rigbrief.proposal.SearchLimits;

/** An order of forty in two variants, 26 and 14, since a supply runs short. */
class MixTextTest {

    @Test
    void the_two_variants_are_told_with_what_they_differ_in() {
        String text = new ProposalsText().write(answer(), Style.PLAIN);

        assertThat(text)
                .contains("an order in two variants", "TWO VARIANTS")
                .contains("They\ndiffer in the supply: 26 with ")
                .contains("First variant: 26 machines", "Second variant: 14 machines");
        assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void the_two_variants_in_json_keep_the_contract() {
        String json = new ProposalsJson().write(answer(), Style.PLAIN);

        assertThat(Contract.of("proposals").broken(json)).isEmpty();
        assertThat(json).contains("\"result\" : \"proposed\"", "\"machines\" : 14");
    }

    private static Proposals answer() {
        Build build = aBuild().make();
        String supply = build.supply().id();
        Catalogue catalogue =
                aCatalogue()
                        .offering(build)
                        .noOffer(supply)
                        .offer(supply, KESTREL, "100.00", 26, 3)
                        .part(aSupply().id("supply-next"))
                        .offer("supply-next", KESTREL, "110.00", 20, 3)
                        .make();
        Brief plain = aBrief().quantity(40).ceiling("90000.00").make();
        Brief brief = new BriefDraft(plain).buying(plain.buying().with(true)).toBrief();
        return new Proposer(SearchLimits.usual()).propose(brief, catalogue);
    }
}
