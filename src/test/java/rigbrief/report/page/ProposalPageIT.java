package rigbrief.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;

import com.deque.html.axecore.results.Results;
import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import rigbrief.proposal.FrontPoint;
import rigbrief.proposal.Proposals;

/** The proposal as a browser shows it. Pictures go to the folder named by rigbrief.pictures. */
class ProposalPageIT {
    private static final int DESKTOP_PX = 1440;

    @TempDir static Path folder;

    private static Browser browser;
    private static Proposals potter;
    private static Path page;

    @BeforeAll
    static void open() throws Exception {
        browser = Browser.open(folder.resolve("profile"));
        potter = Offered.scenario("potter");
        page = write("potter.html", potter, Locale.UK);
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    private static Path write(String name, Proposals answer, Locale locale) throws IOException {
        Words words = Words.of(locale);
        return Files.writeString(
                folder.resolve(name), PageWriter.html(ProposalPage.of(answer, words), words));
    }

    @Test
    void it_opens_from_disk_and_asks_for_nothing_else() {
        browser.requests();
        browser.complaints();

        browser.show(page, DESKTOP_PX, false);

        assertThat(browser.requests()).containsExactly(page.toUri().toString());
        assertThat(browser.run("return performance.getEntriesByType('resource').length"))
                .isEqualTo(0L);
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void the_slider_swaps_build_total_promises_and_place_on_the_chart() {
        browser.show(page, DESKTOP_PX, false);
        WebElement slider = browser.driver().findElement(By.id("money"));

        slider.sendKeys(Keys.HOME);
        List<String> cheapest = shown();
        slider.sendKeys(Keys.END);
        List<String> dearest = shown();

        List<FrontPoint> steps = FrontSteps.of(potter);
        String least = total(steps.get(0));
        String most = total(steps.get(steps.size() - 1));
        assertThat(cheapest.get(0)).contains(least).doesNotContain(most);
        assertThat(dearest.get(0)).contains(most);
        for (int i = 0; i < cheapest.size(); i++) {
            assertThat(dearest.get(i)).as("part %d of the page", i).isNotEqualTo(cheapest.get(i));
        }
        assertThat(slider.getDomAttribute("aria-valuetext")).contains(most);
    }

    private static String total(FrontPoint point) {
        return Words.of(Locale.UK).money(point.totalMinor(), potter.brief().currency());
    }

    /** The browser tells spaces that do not break as plain ones. */
    private static String inOneLine(String text) {
        return text.replace("EUR ", "EUR\u00a0");
    }

    private static List<String> shown() {
        List<String> shown = new ArrayList<>();
        for (String id : List.of("step-shown", "step-parts", "step-needs", "step-figures")) {
            shown.add(inOneLine(browser.driver().findElement(By.id(id)).getText()));
        }
        shown.add(browser.driver().findElement(By.id("here")).getDomAttribute("cx"));
        return shown;
    }

    @Test
    void an_arrow_key_moves_the_slider_by_one_step() {
        browser.show(page, DESKTOP_PX, false);
        WebElement slider = browser.driver().findElement(By.id("money"));
        slider.sendKeys(Keys.HOME);

        slider.sendKeys(Keys.ARROW_RIGHT);

        assertThat(slider.getDomProperty("value")).isEqualTo("1");
        assertThat(slider.getDomAttribute("aria-valuetext")).contains("step 2 of");
    }

    @Test
    void the_keyboard_alone_reaches_everything_that_can_be_used() {
        browser.show(page, DESKTOP_PX, false);
        browser.run(
                "document.querySelectorAll('a[href],input,summary,[tabindex=\"0\"]')"
                        + ".forEach((each, i) => {"
                        + " if (each.checkVisibility()) { each.dataset.use = i; } })");
        long all = (Long) browser.run("return document.querySelectorAll('[data-use]').length");
        Set<Object> reached = new LinkedHashSet<>();

        firstStop();
        reached.add(browser.run("return document.activeElement.dataset.use"));
        for (int i = 1; i < all; i++) {
            new Actions(browser.driver()).sendKeys(Keys.TAB).perform();
            reached.add(browser.run("return document.activeElement.dataset.use"));
        }

        assertThat(reached).doesNotContainNull().hasSize((int) all);
        assertThat(all).isGreaterThan(20);
    }

    @Test
    void the_first_tab_stop_leads_past_the_head_and_is_seen_when_it_is_reached() {
        browser.show(page, DESKTOP_PX, false);

        WebElement skip = firstStop();

        assertThat(skip.getDomAttribute("href")).isEqualTo("#content");
        assertThat(skip.getLocation().getX()).isNotNegative();
    }

    /** The first stop within the page: the browser's own frame may take a key before it. */
    private static WebElement firstStop() {
        for (int i = 0; i < 3; i++) {
            new Actions(browser.driver()).sendKeys(Keys.TAB).perform();
            if (!(Boolean) browser.run("return document.activeElement === document.body")) {
                break;
            }
        }
        return browser.driver().switchTo().activeElement();
    }

    @Test
    void a_term_opens_its_explanation_by_key() {
        browser.show(page, DESKTOP_PX, false);
        WebElement term = browser.driver().findElement(By.cssSelector("#build-lean summary"));
        WebElement gloss = browser.driver().findElement(By.cssSelector("#build-lean .gloss"));
        boolean before = gloss.isDisplayed();

        term.sendKeys(Keys.ENTER);

        assertThat(before).isFalse();
        assertThat(gloss.isDisplayed()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"1440,false", "1440,true", "768,false", "390,false", "390,true"})
    void axe_finds_nothing_amiss(int widthPx, boolean dark) {
        browser.show(page, widthPx, dark);

        Results results =
                new AxeBuilder()
                        .withTags(
                                List.of(
                                        "wcag2a",
                                        "wcag2aa",
                                        "wcag21a",
                                        "wcag21aa",
                                        "wcag22aa",
                                        "best-practice"))
                        .analyze(browser.driver());

        assertThat(results.getPasses()).isNotEmpty();
        assertThat(results.getViolations())
                .extracting(Rule::getId, rule -> rule.getNodes().get(0).getHtml())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"390,false", "390,true", "768,false", "768,true", "1440,false", "1440,true"})
    void nothing_is_wider_than_the_window(int widthPx, boolean dark) throws IOException {
        browser.show(page, widthPx, dark);

        long wide = (Long) browser.run("return document.documentElement.scrollWidth");

        assertThat(wide).isLessThanOrEqualTo(widthPx);
        String pictures = System.getProperty("rigbrief.pictures", "");
        if (!pictures.isEmpty()) {
            browser.picture(
                    Path.of(pictures, "proposal-" + widthPx + (dark ? "-dark" : "") + ".png"));
        }
    }

    @Test
    void it_prints_on_a4_with_every_part_and_price_and_without_the_slider() throws IOException {
        browser.show(page, DESKTOP_PX, false);

        byte[] printed = browser.printed();

        try (PDDocument document = Loader.loadPDF(printed)) {
            String text = new PDFTextStripper().getText(document);
            // ISO 216: 210 mm x 297 mm, in points of 1/72 inch.
            assertThat(document.getPage(0).getMediaBox().getWidth()).isBetween(594f, 596f);
            assertThat(document.getPage(0).getMediaBox().getHeight()).isBetween(841f, 843f);
            // Two for the comparison, two for the steps, two or three a build, one of terms.
            assertThat(document.getNumberOfPages()).isBetween(8, 14);
            PaperText.of(text).holdsAll(potter);
            assertThat(text).doesNotContain("Money for the whole order");
        }
    }

    @Test
    void a_part_named_like_a_script_stays_text() throws IOException {
        String name = "<script>alert(1)</script>";
        Proposals answer =
                Offered.of(
                        aBrief(),
                        aCatalogue()
                                .offering(aBuild().make())
                                .offering(
                                        aBuild().with(aMemoryKit().id("other").maker(name), 2)
                                                .make()),
                        aBuild().make(),
                        aBuild().with(aMemoryKit().id("other").maker(name), 2).make());
        Path hostile = write("hostile.html", answer, Locale.UK);
        browser.show(hostile, DESKTOP_PX, false);

        browser.driver().findElement(By.id("money")).sendKeys(Keys.END);

        assertThat(browser.driver().findElement(By.id("step-parts")).getText()).contains(name);
        assertThat(browser.run("return document.scripts.length")).isEqualTo(2L);
        assertThat(Files.readString(hostile)).doesNotContain("<script>alert(1)");
        assertThat(browser.complaints()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"forty-desks", "keeper", "streamer"})
    void other_scenarios_are_as_clean_in_german(String scenario) throws Exception {
        Path german = write(scenario + ".html", Offered.scenario(scenario), Locale.GERMANY);
        browser.complaints();
        browser.show(german, 390, false);

        Results results = new AxeBuilder().analyze(browser.driver());

        assertThat(results.getViolations())
                .extracting(Rule::getId, rule -> rule.getNodes().get(0).getHtml())
                .isEmpty();
        assertThat(browser.complaints()).isEmpty();
        assertThat((Long) browser.run("return document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(390);
        assertThat(browser.run("return document.documentElement.lang")).isEqualTo("de");
    }
}
