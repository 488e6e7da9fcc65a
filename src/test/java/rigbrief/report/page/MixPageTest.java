package rigbrief.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigbrief.audit.Audit;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.build.Build;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.proposal.Clash;
import rigbrief.proposal.Mix;
import rigbrief.proposal.Proposals;

class MixPageTest {
    private static final Build ONE = aBuild().make();
    private static final Build OTHER = aBuild().with(aMemoryKit().id("other"), 2).make();
    private static final Brief FORTY = aBrief().quantity(40).ceiling("90000.00").make();
    private static final Catalogue CATALOGUE = aCatalogue().offering(OTHER).offering(ONE).make();

    private static Mix.Share share(Build build, int machines) {
        Brief brief = new BriefDraft(FORTY).quantity(machines).toBrief();
        Audit audit = new Auditor(brief, CATALOGUE).audit(build);
        BuildRecord record =
                new BuildRecord(
                        Optional.of(brief),
                        Optional.empty(),
                        CATALOGUE.name(),
                        CATALOGUE.digest(),
                        List.of());
        return new Mix.Share(machines, audit, record);
    }

    private static String page(Locale locale) {
        Proposals answer =
                new Proposals(
                        FORTY,
                        CATALOGUE,
                        1,
                        List.of(),
                        List.of(),
                        Optional.of(new Clash(List.of(), false, List.of())),
                        List.of(),
                        Optional.of(new Mix(share(ONE, 26), share(OTHER, 14), 3_340_000, 1, true)));
        Words words = Words.of(locale);
        return PageWriter.html(ProposalPage.of(answer, words), words);
    }

    @Test
    void both_variants_stand_there_with_their_machines_and_what_they_cost_together() {
        String page = page(Locale.UK);

        assertThat(page)
                .contains("26 and 14 machines", "EUR\u00a033,400.00", "for all 26 machines")
                .contains("for all 14 machines", "First variant", "Second variant")
                .contains(ONE.memory().name(), OTHER.memory().name())
                .doesNotContain("No build meets every must");
    }

    @Test
    void it_speaks_german_too() {
        assertThat(page(Locale.GERMANY)).contains("26 und 14 Geräte", "33.400,00");
    }
}
