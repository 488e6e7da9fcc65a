package rigbrief.proposal.replace;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;

import org.junit.jupiter.api.Test;
import rigbrief.assess.Settled;
import rigbrief.audit.Audit;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.build.BuildRecord;
import rigbrief.build.PartState;
import rigbrief.catalogue.Catalogue;

class OrderedTest {
    private static final Build BUILD = aBuild().make();
    private static final Brief BRIEF = aBrief().ceiling("2000.00").make();

    private static Catalogue shop() {
        return aCatalogue().supplier(KESTREL, "6.90").offering(BUILD).make();
    }

    /** The shop once it has no board any more. */
    private static Catalogue soldOut(BuildRecord filed) {
        return OffersLeft.of(shop(), Trouble.without(BUILD.board().id()), filed);
    }

    @Test
    void a_received_part_that_sold_out_since_is_judged_at_what_was_paid() {
        BuildRecord filed = Filed.of(BUILD).all(PartState.RECEIVED).record(BRIEF, shop());
        Catalogue left = soldOut(filed);

        Audit audit = new Auditor(BRIEF, left, Ordered.of(filed, left)).audit(filed);

        assertThat(audit.findings()).noneMatch(finding -> finding.rule().equals("in-stock"));
        // By hand: every part at 100.00 and one delivery.
        assertThat(audit.cost().totalMinor()).isEqualTo(BUILD.filled().size() * 10_000L + 690);
    }

    @Test
    void a_wanted_part_that_sold_out_is_still_out_of_stock() {
        BuildRecord filed = Filed.of(BUILD).record(BRIEF, shop());
        Catalogue left = soldOut(filed);

        Audit audit = new Auditor(BRIEF, left, Ordered.of(filed, left)).audit(filed);

        assertThat(audit.findings()).anyMatch(finding -> finding.rule().equals("in-stock"));
    }

    @Test
    void nothing_is_settled_while_all_is_wanted() {
        BuildRecord filed = Filed.of(BUILD).record(BRIEF, shop());

        assertThat(Ordered.of(filed, shop())).isEqualTo(Settled.NOTHING);
    }
}
