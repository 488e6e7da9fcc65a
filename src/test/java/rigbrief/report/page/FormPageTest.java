package rigbrief.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.Select;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Capacity;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Workload.Fitted;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BriefReader;
import rigbrief.file.CatalogueReader;
import rigbrief.fixture.CaseFixture;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.intake.Interview;
import rigbrief.intake.Least;

/** The form as clients meet it: opened from a disk in a browser. */
class FormPageTest {
    private static final Path BROWSER = Path.of("/usr/bin/chromium");
    private static final Path BROWSER_DRIVER = Path.of("/usr/bin/chromedriver");
    private static final String SCREENS = System.getProperty("rigbrief.screens", "");

    @TempDir static Path folder;

    private static Catalogue catalogue;
    private static Path page;
    private static ChromeDriver browser;

    @BeforeAll
    static void open() throws IOException, BadInput {
        assumeTrue(
                Files.exists(BROWSER) && Files.exists(BROWSER_DRIVER),
                "needs chromium and chromedriver in /usr/bin");
        catalogue = CatalogueReader.read(Path.of("catalog-sample"));
        page =
                Files.writeString(
                        folder.resolve("form.html"),
                        FormPage.write(catalogue, Words.of(Locale.ENGLISH)));
        System.setProperty("webdriver.chrome.driver", BROWSER_DRIVER.toString());
        browser = new ChromeDriver(options());
    }

    private static ChromeOptions options() {
        ChromeOptions options = new ChromeOptions();
        options.setBinary(BROWSER.toFile());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + folder.resolve("profile"));
        return options;
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.quit();
        }
    }

    @BeforeEach
    void load() {
        size(1440, 1000);
        scheme("light");
        browser.get(page.toUri().toString());
    }

    /** Still scrolling as well, so that what is to be pressed has come to rest. */
    private static void scheme(String scheme) {
        browser.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "features",
                        List.of(
                                Map.of("name", "prefers-color-scheme", "value", scheme),
                                Map.of("name", "prefers-reduced-motion", "value", "reduce"))));
    }

    private static void size(int width, int height) {
        browser.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    private static WebElement by(String id) {
        return browser.findElement(By.id(id));
    }

    private static void tick(String name, String value) {
        browser.findElement(By.cssSelector("input[name='%s'][value='%s']".formatted(name, value)))
                .click();
    }

    private static void type(String id, String text) {
        by(id).clear();
        by(id).sendKeys(text);
    }

    private static void choose(String id, String value) {
        new Select(by(id)).selectByValue(value);
    }

    private static Brief written() throws BadInput {
        by("make").click();
        assertThat(by("faults").isDisplayed()).as(by("faults").getText()).isFalse();
        String text = by("text").getDomProperty("value");
        return BriefReader.read(
                new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "form", catalogue);
    }

    private static Brief interviewed(Map<String, String> answers) {
        Interview interview =
                new Interview(BriefReader.STREAM_NAME, catalogue, brief -> new Least.Unknown());
        interview.resume(answers);
        assertThat(interview.question().map(question -> question.id())).contains("write");
        return interview.brief();
    }

    private static Map<String, String> usual(Map<String, String> told) {
        Interview interview =
                new Interview(BriefReader.STREAM_NAME, catalogue, brief -> new Least.Unknown());
        Map<String, String> answers = new LinkedHashMap<>();
        while (!interview.question().orElseThrow().id().equals("write")) {
            var question = interview.question().orElseThrow();
            answers.put(question.id(), told.getOrDefault(question.id(), question.usual()));
            int before = interview.answers().size();
            interview.resume(answers);
            assertThat(interview.answers()).as(question.id()).hasSizeGreaterThan(before);
        }
        assertThat(interview.answers().keySet()).containsAll(told.keySet());
        return interview.answers();
    }

    @Test
    void left_as_it_stands_it_writes_the_brief_that_the_interview_writes_for_empty_lines()
            throws BadInput {
        type("client", "Marsh Lane Pottery");
        type("ceiling", "900");

        Brief brief = written();

        assertThat(brief)
                .isEqualTo(
                        interviewed(
                                usual(Map.of("client", "Marsh Lane Pottery", "ceiling", "900"))));
    }

    @Test
    void filled_in_it_writes_the_brief_that_the_interview_writes_for_the_same_answers()
            throws BadInput {
        type("client", "O’Hara \"quoted\" \\ café 漢字 #: -");
        type("quantity", "3");
        tick("use", "harbour-of-glass");
        choose("smooth-harbour-of-glass", "fluid");
        browser.findElement(By.cssSelector("#more-harbour-of-glass summary")).click();
        choose("preset-harbour-of-glass", "ultra");
        choose("rays-harbour-of-glass", "high");
        choose("upscaling-harbour-of-glass", "quality");
        tick("use", "kiln-drafting");
        type("time-kiln-drafting", "1,5 min");
        tick("use", "glaze-archive");
        tick("open", "kiln-drafting");
        type("picture", "3440 x 1440");
        type("refresh", "100");
        tick("sockets", "hdmi2.0");
        tick("sockets", "dp1.4");
        type("screens", "2");
        tick("noise", "quiet");
        tick("noise-strength", "wish");
        tick("place", "on");
        tick("size", "middle");
        tick("lights", "none");
        tick("side", "tinted");
        choose("colour", "white");
        tick("colour-strength", "must");
        type("storage", "2000");
        tick("wireless", "must");
        tick("front", "usb-c");
        tick("system", "must");
        keep("glimmerhythe-pane-24");
        browser.findElement(By.xpath("//summary[.='Makers you do not want']")).click();
        tick("makers", "Ostrel");
        type("days", "10");
        type("shops", "2");
        choose("goal-0", "quiet");
        choose("goal-1", "look");
        type("ceiling", "8.400,50 €");
        type("overrun", "3%");

        Brief brief = written();

        Map<String, String> told = new LinkedHashMap<>();
        told.put("client", "O’Hara \"quoted\" \\ café 漢字 #: -");
        told.put("quantity", "3");
        told.put("workloads", "harbour-of-glass, kiln-drafting, glaze-archive");
        told.put("picture-settings", "each");
        told.put("smoothness harbour-of-glass", "fluid");
        told.put("detail harbour-of-glass", "ultra");
        told.put("rays harbour-of-glass", "high");
        told.put("upscaling harbour-of-glass", "quality");
        told.put("time kiln-drafting", "1.5m");
        told.put("open-at-once", "kiln-drafting");
        told.put("picture", "3440x1440");
        told.put("refresh", "100");
        told.put("sockets", "hdmi2.0, dp1.4");
        told.put("screens", "2");
        told.put("noise", "quiet");
        told.put("noise-is-a-must", "wish");
        told.put("place", "on");
        told.put("size", "middle");
        told.put("lights", "none");
        told.put("side", "tinted");
        told.put("colour", "white");
        told.put("colour-is-a-must", "must");
        told.put("storage", "2000");
        told.put("wireless", "must");
        told.put("front-sockets", "usb-c");
        told.put("system", "must");
        told.put("parts-kept", "glimmerhythe-pane-24");
        told.put("makers-avoided", "Ostrel");
        told.put("days-to-wait", "10");
        told.put("shops", "2");
        told.put("wishes", "quiet, look");
        told.put("ceiling", "8400.5");
        told.put("overrun", "3");
        assertThat(brief).isEqualTo(interviewed(usual(told)));
    }

    private static void keep(String part) {
        choose("kept", part);
        by("keep").click();
    }

    /** What is typed and ticked is the same, so the brief is the same to the byte. */
    @Test
    void in_german_it_says_so_and_writes_the_brief_of_the_english_page() throws Exception {
        String english = filledIn();
        browser.get(german().toUri().toString());

        by("make").click();
        assertThat(by("faults-head").getText())
                .isEqualTo("2 Antworten brauchen einen zweiten Blick");
        assertThat(by("client-wrong").getText()).isEqualTo("Schreiben Sie Ihren Namen.");
        assertThat(by("days").getDomProperty("value")).isEqualTo("egal");
        String german = filledIn();

        assertThat(german).isEqualTo(english);
        assertThat(browser.findElement(By.tagName("html")).getDomAttribute("lang")).isEqualTo("de");
        assertThat(serious()).isEmpty();
    }

    private static Path german() throws IOException {
        return Files.writeString(
                folder.resolve("formular.html"),
                FormPage.write(catalogue, Words.of(Locale.GERMAN)));
    }

    private static String filledIn() throws BadInput {
        type("client", "Fenwick");
        type("ceiling", "1200");
        tick("use", "kiln-drafting");
        type("time-kiln-drafting", "2 Stunden");
        tick("noise", "quiet");
        choose("colour", "white");
        keep("glimmerhythe-pane-24");
        written();
        return by("text").getDomProperty("value");
    }

    @Test
    void a_screen_to_be_bought_has_no_sockets_to_tell() throws BadInput {
        type("client", "Fenwick");
        type("ceiling", "1200");
        tick("screen", "buy");

        Brief brief = written();

        assertThat(by("sockets").isDisplayed()).isFalse();
        assertThat(brief.screen().orElseThrow().buy()).isTrue();
    }

    @Test
    void a_part_kept_twice_is_two_pieces_and_can_be_taken_off_again() throws BadInput {
        type("client", "Fenwick");
        type("ceiling", "1200");
        String memory = catalogue.parts(rigbrief.part.Kind.MEMORY).get(0).id();
        keep(memory);
        keep(memory);
        keep("glimmerhythe-pane-24");
        browser.findElement(By.xpath("//li[contains(., 'Pane 24')]/button")).click();

        Brief brief = written();

        assertThat(brief.keep()).singleElement().matches(kept -> kept.pieces() == 2);
    }

    @Test
    void what_is_wrong_is_said_all_at_once_beside_its_field_and_in_a_list_that_leads_there() {
        tick("use", "kiln-drafting");
        type("time-kiln-drafting", "soon");
        type("quantity", "0");
        type("ceiling", "1.250");

        by("make").click();

        assertThat(by("brief").isDisplayed()).isFalse();
        assertThat(by("faults-head").getText()).isEqualTo("4 answers need another look");
        assertThat(browser.switchTo().activeElement()).isEqualTo(by("faults"));
        assertThat(by("client-wrong").getText()).isEqualTo("Write your name.");
        assertThat(by("ceiling").getDomAttribute("aria-invalid")).isEqualTo("true");
        browser.findElement(
                        By.xpath(
                                "//ul[@id='faults-list']//a[contains(., 'another') or"
                                        + " contains(., 'time')]"))
                .click();
        assertThat(browser.switchTo().activeElement()).isEqualTo(by("time-kiln-drafting"));
    }

    @Test
    void a_control_character_in_a_name_is_refused_in_plain_words() {
        browser.executeScript("document.getElementById('client').value = 'a\\u202eb'");
        type("ceiling", "900");

        by("make").click();

        assertThat(by("client-wrong").getText())
                .isEqualTo("Write letters, digits and signs alone.");
    }

    @Test
    void the_brief_is_put_away_when_an_answer_changes_after_it_was_written() throws BadInput {
        type("client", "Fenwick");
        type("ceiling", "1200");
        written();

        tick("wireless", "must");

        assertThat(by("brief").isDisplayed()).isFalse();
    }

    @Test
    void the_brief_can_be_saved_as_a_file_of_its_own_name() throws BadInput {
        type("client", "Fenwick");
        type("ceiling", "1200");
        written();

        assertThat(by("save").getDomProperty("href")).startsWith("blob:");
        assertThat(by("save").getDomAttribute("download")).isEqualTo("brief.yaml");
    }

    @Test
    void nothing_is_loaded_and_nothing_was_refused_by_the_page_s_own_policy() throws BadInput {
        type("client", "Fenwick");
        type("ceiling", "1200");
        written();

        assertThat(browser.executeScript("return performance.getEntriesByType('resource').length"))
                .isEqualTo(0L);
        assertThat(browser.manage().logs().get("browser").getAll()).isEmpty();
        assertThat(browser.getPageSource()).doesNotContain("http:").doesNotContain("https:");
    }

    @Test
    void the_keyboard_alone_reaches_every_field_and_writes_the_brief() {
        StringBuilder met = new StringBuilder();
        WebElement focused = browser.switchTo().activeElement();
        int steps = 0;
        while (!"make".equals(focused.getDomAttribute("id")) && steps++ < 300) {
            focused.sendKeys(Keys.TAB);
            focused = browser.switchTo().activeElement();
            met.append(focused.getDomAttribute("id"))
                    .append(' ')
                    .append(focused.getDomAttribute("name"))
                    .append(' ');
            if ("client".equals(focused.getDomAttribute("id"))) {
                focused.sendKeys("Fenwick");
            }
            if ("ceiling".equals(focused.getDomAttribute("id"))) {
                focused.sendKeys("1200");
            }
        }
        focused.sendKeys(Keys.ENTER);

        assertThat(met.toString())
                .contains(
                        "client",
                        "quantity",
                        "use",
                        "picture",
                        "sockets",
                        "noise",
                        "kept",
                        "goal-2",
                        "ceiling",
                        "make");
        assertThat(browser.switchTo().activeElement()).isEqualTo(by("brief-head"));
    }

    @Test
    void a_title_or_a_maker_that_would_act_stays_text() {
        String hostile = "</option><script>alert(1)</script><img src=x onerror=alert(1)>";
        Catalogue odd =
                CatalogueFixture.aCatalogue()
                        .part(CaseFixture.aCase().id("odd-case").maker(hostile))
                        .workload(new Capacity("odd", hostile, 1, 0, 1, 0, new Fitted(0, 0)))
                        .make();

        String written = FormPage.write(odd, Words.of(Locale.ENGLISH));

        assertThat(written)
                .contains("&lt;script&gt;alert(1)")
                .doesNotContain("<script>alert")
                .doesNotContain("<img");
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void axe_core_finds_nothing_serious_however_much_is_open(String scheme) throws BadInput {
        scheme(scheme);
        type("ceiling", "x");
        by("make").click();
        assertThat(serious()).isEmpty();

        type("client", "Fenwick");
        type("ceiling", "1200");
        tick("use", "harbour-of-glass");
        tick("use", "kiln-drafting");
        browser.executeScript("document.querySelectorAll('details').forEach(d => d.open = true)");
        tick("noise", "quiet");
        choose("colour", "white");
        written();

        assertThat(serious()).isEmpty();
    }

    private static List<String> serious() {
        return new AxeBuilder()
                        .withTags(
                                List.of(
                                        "wcag2a",
                                        "wcag2aa",
                                        "wcag21a",
                                        "wcag21aa",
                                        "wcag22aa",
                                        "best-practice"))
                        .analyze(browser)
                        .getViolations()
                        .stream()
                        .filter(rule -> !"minor".equals(rule.getImpact()))
                        .map(FormPageTest::told)
                        .toList();
    }

    private static String told(Rule rule) {
        return rule.getId()
                + " "
                + rule.getImpact()
                + ": "
                + rule.getHelp()
                + " "
                + rule.getNodes();
    }

    @ParameterizedTest
    @ValueSource(ints = {390, 768, 1440})
    void nothing_runs_out_at_the_side_of_a_phone_a_tablet_or_a_desk_screen(int width)
            throws IOException {
        size(width, 900);
        tick("use", "harbour-of-glass");
        tick("use", "ledger-sheets");
        by("make").click();

        Object wide = browser.executeScript("return document.documentElement.scrollWidth");

        assertThat((Long) wide).isLessThanOrEqualTo(width);
        shoot("form-" + width + ".png", width);
        browser.get(german().toUri().toString());
        tick("use", "harbour-of-glass");
        tick("use", "ledger-sheets");
        by("make").click();
        assertThat((Long) browser.executeScript("return document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(width);
        shoot("form-de-" + width + ".png", width);
    }

    /** Keeps a picture to look at, where a folder for such is named. */
    private static void shoot(String name, int width) throws IOException {
        if (!SCREENS.isEmpty()) {
            Long height =
                    (Long) browser.executeScript("return document.documentElement.scrollHeight");
            size(width, height.intValue());
            Files.write(Path.of(SCREENS, name), browser.getScreenshotAs(OutputType.BYTES));
        }
    }
}
