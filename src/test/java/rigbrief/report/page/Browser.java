package rigbrief.report.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A browser without a window, showing pages from disk. Needs chromium and its driver. */
final class Browser implements AutoCloseable {
    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    /** Opens one; skips the test, saying why, where there is none. */
    static Browser open(Path profile) {
        Assumptions.assumeTrue(
                Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER),
                "found no " + CHROMIUM + " with " + DRIVER + ", which this test looks through");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(CHROMIUM.toFile());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--disable-dev-shm-usage",
                "--user-data-dir=" + profile);
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        // Named, so that nothing looks for another driver on the network.
        ChromeDriverService service =
                new ChromeDriverService.Builder().usingDriverExecutable(DRIVER.toFile()).build();
        return new Browser(new ChromeDriver(service, options));
    }

    ChromeDriver driver() {
        return driver;
    }

    /** Shows a page from disk, in a window of that width and in light or dark. */
    void show(Path page, int widthPx, boolean dark) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", widthPx, "height", 900, "deviceScaleFactor", 1, "mobile", false));
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "features",
                        List.of(
                                Map.of(
                                        "name",
                                        "prefers-color-scheme",
                                        "value",
                                        dark ? "dark" : "light"))));
        driver.get(page.toUri().toString());
    }

    /** What a script gives. */
    Object run(String script, Object... arguments) {
        return driver.executeScript(script, arguments);
    }

    /** Addresses that were asked for since the page before. */
    List<String> requests() {
        List<String> requests = new ArrayList<>();
        for (LogEntry entry : driver.manage().logs().get(LogType.PERFORMANCE)) {
            String message = entry.getMessage();
            if (message.contains("\"Network.requestWillBeSent\"")) {
                requests.add(
                        message.replaceAll("(?s).*?\"request\":\\{.*?\"url\":\"(.*?)\".*", "$1"));
            }
        }
        return requests;
    }

    /** What the browser complained of. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    /** The page printed, A4, as a PDF. */
    byte[] printed() {
        Map<String, Object> answer =
                driver.executeCdpCommand(
                        "Page.printToPDF",
                        Map.of("preferCSSPageSize", true, "printBackground", false));
        return Base64.getDecoder()
                .decode(answer.get("data").toString().getBytes(StandardCharsets.US_ASCII));
    }

    /** A picture of the whole page. */
    void picture(Path file) throws IOException {
        long height = (Long) run("return document.documentElement.scrollHeight");
        long width = (Long) run("return innerWidth");
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
    }

    @Override
    public void close() {
        driver.quit();
    }
}
