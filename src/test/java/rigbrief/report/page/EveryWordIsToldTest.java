package rigbrief.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.assembly.ScenarioBuilds;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.brief.Kept;
import rigbrief.catalogue.Catalogue;
import rigbrief.file.BriefReader;
import rigbrief.file.CatalogueReader;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.Proposer;
import rigbrief.proposal.SearchLimits;
import rigbrief.wording.Untold;

/**
 * No document says anything that is not in the bundles, but for data: every text of the German
 * bundles is marked before its places are filled, and whatever words stand outside of the marks and
 * are no name of the catalogue or the brief, no unit and no standard came from nowhere.
 */
class EveryWordIsToldTest {
    private static Catalogue catalogue;
    private static Untold untold;

    @BeforeAll
    static void read() throws Exception {
        catalogue = CatalogueReader.read(Path.of("catalog-sample"));
        untold = new Untold(catalogue);
    }

    static List<Arguments> sheets() {
        List<Arguments> sheets = new ArrayList<>();
        for (var filed : ScenarioBuilds.all()) {
            if (!filed.name().endsWith(", full") && !filed.name().equals("forty-desks, lean")) {
                continue;
            }
            for (Document document : Documents.ALL) {
                sheets.add(Arguments.of(filed.name() + ", " + document.word(), filed, document));
            }
        }
        return sheets;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sheets")
    void a_document_says_nothing_that_is_in_no_bundle(
            String name, ScenarioBuilds.Filed filed, Document document) {
        DocumentSubject subject =
                new DocumentSubject(
                        "file",
                        filed.record(),
                        filed.brief(),
                        filed.catalogue(),
                        new Auditor(filed.brief(), filed.catalogue()).audit(filed.record()));
        Words words = marking();

        assertThat(untold(PageWriter.html(document.page(subject, words), words), filed.brief()))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"potter", "impossible", "writer"})
    void a_proposal_says_nothing_that_is_in_no_bundle(String scenario) throws Exception {
        Brief brief = BriefReader.read(Path.of("scenarios", scenario + ".yaml"), catalogue);
        Proposals answer =
                new Proposer(new SearchLimits(1, 500, 4_000, Optional.empty()))
                        .propose(brief, catalogue);
        Words words = marking();

        assertThat(untold(PageWriter.html(ProposalPage.of(answer, words), words), brief)).isEmpty();
    }

    @Test
    void the_form_says_nothing_that_is_in_no_bundle() {
        // What a field holds is the brief's vocabulary, and not shown.
        String shown =
                FormPage.write(catalogue, marking())
                        .replaceAll(" (?:value|data-[a-z]+)=\"[a-z0-9./-]*\"", "");

        assertThat(untold.inPage(shown, List.of())).isEmpty();
    }

    @Test
    void a_word_from_nowhere_would_be_found() throws Exception {
        Brief brief = BriefReader.read(Path.of("scenarios", "potter.yaml"), catalogue);

        assertThat(untold("<p>" + Untold.mark("ja") + " 3.2 GB cooler</p>", brief))
                .containsExactly("cooler");
    }

    private static Words marking() {
        return Words.of(Untold.marking());
    }

    private static Set<String> untold(String html, Brief brief) {
        List<String> data = new ArrayList<>(List.of(brief.client(), brief.name()));
        for (Kept kept : brief.keep()) {
            data.add(kept.part().name());
            data.add(kept.part().listing().model());
        }
        return untold.inPage(html, data);
    }
}
