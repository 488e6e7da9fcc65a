package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import rigbrief.proposal.budget.Budget;

class BudgetHtmlTest {
    private static String html(Budget budget) {
        return new BudgetHtml().write(budget, Style.PLAIN);
    }

    @Test
    void the_chart_is_an_image_with_a_title_and_a_description() throws Exception {
        String html = html(Budgets.answered());
        String svg =
                html.substring(html.indexOf("<svg"), html.indexOf('>', html.indexOf("</svg")) + 1);

        Document drawing =
                DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new InputSource(new StringReader(svg)));

        Element root = drawing.getDocumentElement();
        assertThat(root.getAttribute("role")).isEqualTo("img");
        assertThat(root.getAttribute("aria-labelledby")).isEqualTo("front-title front-words");
        assertThat(drawing.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("The front of money and utility");
        assertThat(drawing.getElementsByTagName("desc").item(0).getTextContent())
                .contains("EUR 926.90");
        assertThat(drawing.getElementsByTagName("text").getLength()).isGreaterThan(4);
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
                .contains("No build meets its musts at any price")
                .contains("noise at most 5 dB(A)");
    }
}
