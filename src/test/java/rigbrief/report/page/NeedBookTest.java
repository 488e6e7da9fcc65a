package rigbrief.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import rigbrief.audit.Audit;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.fixture.BriefFixture;

class NeedBookTest {
    private static List<NeedView> views(BriefFixture wanted, Words words) {
        Brief brief = wanted.make();
        Catalogue catalogue = aCatalogue().offering(aBuild().make()).make();
        Audit audit = new Auditor(brief, catalogue).audit(aBuild().make());
        return new NeedBook(brief, List.of(audit), words).views(audit);
    }

    @Test
    void a_capacity_that_is_met_is_exact_and_kept() {
        int memoryGb = aBuild().make().memoryGb();

        NeedView memory = views(aBrief().memory(memoryGb, false), Words.of(Locale.UK)).get(0);

        assertThat(memory.promised()).isEqualTo(memoryGb + "\u00a0GB");
        assertThat(memory.range()).isEqualTo("exact");
        assertThat(memory.verdict()).isEqualTo("kept");
        assertThat(memory.bar().at()).isEqualTo(memory.bar().asked());
    }

    @Test
    void half_of_what_was_asked_stands_at_half_its_place_on_the_bar() {
        int memoryGb = aBuild().make().memoryGb();

        NeedView memory = views(aBrief().memory(2 * memoryGb, false), Words.of(Locale.UK)).get(0);

        assertThat(memory.met()).isFalse();
        assertThat(memory.verdict()).isEqualTo("not kept");
        assertThat(memory.bar().asked()).isBetween(180, NeedView.Bar.FULL);
        assertThat(memory.bar().at() * 2)
                .isBetween(memory.bar().asked() - 1, memory.bar().asked() + 1);
    }

    @Test
    void the_bar_says_in_words_what_it_draws() {
        NeedView memory = views(aBrief().memory(16, false), Words.of(Locale.GERMANY)).get(0);

        assertThat(memory.bar().words()).contains("Arbeitsspeicher", "verlangt 16\u00a0GB");
    }
}
