package rigbrief.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;
import rigbrief.assembly.ScenarioBuilds;
import rigbrief.audit.Auditor;
import rigbrief.proposal.budget.Budget;
import rigbrief.report.Budgets;

/** Order list, assembly plan, handover sheet and budget in a real browser, in both languages. */
class BenchPagesIT {
    private static final List<String> TAGS =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");

    @TempDir static Path folder;

    private static Browser browser;
    private static final Map<String, Path> PAGES = new LinkedHashMap<>();

    @BeforeAll
    static void write() throws Exception {
        browser = Browser.open(folder.resolve("profile"));
        var filed =
                ScenarioBuilds.all().stream()
                        .filter(each -> each.name().equals("potter, full"))
                        .findFirst()
                        .orElseThrow();
        var subject =
                new DocumentSubject(
                        "potter.build.yaml",
                        filed.record(),
                        filed.brief(),
                        filed.catalogue(),
                        new Auditor(filed.brief(), filed.catalogue()).audit(filed.record()));
        for (Document document : Documents.ALL) {
            for (Locale locale : List.of(Locale.UK, Locale.GERMANY)) {
                Words words = Words.of(locale);
                String name = document.word() + "-" + locale.getLanguage();
                Path page = folder.resolve(name + ".html");
                Files.writeString(page, PageWriter.html(document.page(subject, words), words));
                PAGES.put(name, page);
            }
        }
        Budget budget = Budgets.answered();
        for (Locale locale : List.of(Locale.UK, Locale.GERMANY)) {
            Words words = Words.of(locale);
            String name = "budget-" + locale.getLanguage();
            Path page = folder.resolve(name + ".html");
            Files.writeString(page, PageWriter.html(BudgetPage.of(budget, words), words));
            PAGES.put(name, page);
        }
        // What the browser shows of its own at its start is forgotten.
        browser.show(PAGES.values().iterator().next(), 1440, false);
        browser.requests();
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    /** Every page in each setting, all that is amiss at once. */
    @ParameterizedTest
    @CsvSource({"1440,false", "1440,true", "768,false", "390,false", "390,true"})
    void axe_finds_nothing_amiss(int widthPx, boolean dark) {
        List<String> amiss = new ArrayList<>();
        PAGES.forEach(
                (name, page) -> {
                    browser.show(page, widthPx, dark);
                    for (Rule rule :
                            new AxeBuilder()
                                    .withTags(TAGS)
                                    .analyze(browser.driver())
                                    .getViolations()) {
                        amiss.add(name + ": " + rule.getId() + " " + rule.getNodes());
                    }
                });

        assertThat(amiss).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1440", "768", "390"})
    void a_page_is_no_wider_than_its_window_and_asks_for_nothing(int widthPx) throws Exception {
        List<String> wide = new ArrayList<>();
        for (Map.Entry<String, Path> each : PAGES.entrySet()) {
            browser.show(each.getValue(), widthPx, false);
            long page = (Long) browser.run("return document.documentElement.scrollWidth");
            if (page > widthPx) {
                wide.add(each.getKey() + ": " + page);
            }
            assertThat(browser.requests()).allMatch(url -> url.startsWith("file:"));
            String pictures = System.getProperty("rigbrief.pictures");
            if (pictures != null) {
                browser.picture(Path.of(pictures, each.getKey() + "-" + widthPx + ".png"));
            }
        }

        assertThat(wide).isEmpty();
    }

    /** Whatever can be reached by hand is reached by the Tab key. */
    @Test
    void the_keyboard_reaches_everything() {
        PAGES.forEach(
                (name, page) -> {
                    browser.show(page, 1440, false);
                    String all =
                            "return [...document.querySelectorAll("
                                    + "'a[href],button,input,select,summary,[tabindex=\"0\"]')]"
                                    + ".filter(e => e.getClientRects().length > 0).length";
                    long wanted = (Long) browser.run(all);
                    Set<Object> reached = new LinkedHashSet<>();
                    for (int i = 0; i < wanted + 3; i++) {
                        browser.driver().switchTo().activeElement().sendKeys(Keys.TAB);
                        reached.add(
                                browser.run(
                                        "const e = document.activeElement;"
                                                + "return e === document.body ? -1 :"
                                                + " [...document.querySelectorAll('*')].indexOf(e)"));
                    }
                    reached.remove(-1L);

                    assertThat(reached).as(name).hasSizeGreaterThanOrEqualTo((int) wanted);
                });
    }
}
