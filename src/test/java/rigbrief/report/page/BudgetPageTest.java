package rigbrief.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import rigbrief.proposal.budget.Budget;
import rigbrief.report.Budgets;
import rigbrief.wording.Untold;

class BudgetPageTest {
    private static String html(Budget budget) {
        return html(budget, Words.of(Locale.UK));
    }

    private static String html(Budget budget, Words words) {
        return PageWriter.html(BudgetPage.of(budget, words), words);
    }

    @Test
    void the_chart_is_an_image_with_a_title_and_a_description() throws Exception {
        String html = html(Budgets.answered());

        Document page =
                DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new InputSource(new StringReader(html)));

        Element root = (Element) page.getElementsByTagName("svg").item(0);
        assertThat(root.getAttribute("role")).isEqualTo("img");
        assertThat(root.getAttribute("aria-labelledby")).isEqualTo("front-title front-words");
        assertThat(root.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("Money against how well the wishes are met");
        assertThat(root.getElementsByTagName("desc").item(0).getTextContent())
                .contains("EUR\u00a0926.90");
        assertThat(root.getElementsByTagName("text").getLength()).isGreaterThan(4);
    }

    @Test
    void two_pages_of_one_answer_are_the_same_bytes() {
        Budget budget = Budgets.answered();

        assertThat(html(budget)).isEqualTo(html(budget));
    }

    @Test
    void a_name_is_only_ever_letters() {
        assertThat(html(Budgets.client("<script>alert(1)</script>")))
                .doesNotContain("<script>")
                .contains("&lt;script&gt;");
    }

    @Test
    void the_page_needs_nothing_from_elsewhere() {
        assertThat(html(Budgets.answered()))
                .doesNotContain("src=")
                .doesNotContain("href=\"http")
                .doesNotContain("url(http");
    }

    @Test
    void an_impossible_brief_has_a_page_too() {
        assertThat(html(Budgets.impossible()))
                .contains("No build meets every must")
                .contains("noise at most 5 dB(A)");
    }

    /** What the JSON of the same answer says, as a reader of each language writes it. */
    @Test
    void the_amounts_are_those_of_the_answer_in_either_language() {
        Budget budget = Budgets.answered();
        Words german = Words.of(Locale.GERMANY);
        String told = html(budget, german);

        assertThat(told)
                .contains("lang=\"de\"")
                .contains(german.money(budget.musts().totalMinor(), budget.brief().currency()));
        assertThat(budget.front())
                .isNotEmpty()
                .allSatisfy(
                        step ->
                                assertThat(told)
                                        .contains(
                                                german.amount(
                                                        step.totalMinor(),
                                                        budget.brief().currency())));
    }

    @Test
    void in_german_it_says_nothing_that_is_in_no_bundle() throws IOException {
        Words words = Words.of(Untold.marking());
        for (Budget budget :
                List.of(Budgets.answered(), Budgets.overCeiling(), Budgets.impossible())) {
            assertThat(
                            new Untold(budget.catalogue())
                                    .inPage(
                                            html(budget, words),
                                            List.of(
                                                    budget.brief().name(),
                                                    budget.brief().client())))
                    .isEmpty();
        }
    }
}
