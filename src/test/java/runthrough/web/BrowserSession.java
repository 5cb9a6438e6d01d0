package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.remote.http.ClientConfig;
import org.openqa.selenium.support.ui.Select;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A real browser that has the page open. It is looked for where Debian puts it; nothing is downloaded. */
public final class BrowserSession implements AutoCloseable {
    private static final Path BROWSER = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    /** Each look costs the machine more than the page itself does in as long. */
    private static final Duration POLL = Duration.ofMillis(100);

    private final Path profile;
    private final Path downloads;
    private final ChromeDriver driver;

    /** Why it answers nothing any more; null while it does. */
    private @Nullable String lost;

    private BrowserSession(Path profile, Path downloads, ChromeDriver driver) {
        this.profile = profile;
        this.downloads = downloads;
        this.driver = driver;
    }

    /** What is missing for a session; empty where everything is there. */
    public static Optional<String> missing() {
        return Stream.of(BROWSER, DRIVER)
                .filter(path -> !Files.isExecutable(path))
                .findFirst()
                .map(path -> "SKIPPED: the page is not tried in a browser, since there is no " + path
                        + " (Debian: chromium, chromium-driver)");
    }

    /** Opens a browser with a window of {@code width} by {@code height} pixels. */
    public static BrowserSession open(int width, int height) throws IOException {
        Path profile = Files.createTempDirectory("page-profile");
        Path downloads = Files.createTempDirectory("page-downloads");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(BROWSER.toFile());
        options.addArguments(
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--disable-dev-shm-usage",
                "--hide-scrollbars",
                "--window-size=" + width + "," + height,
                "--user-data-dir=" + profile);
        options.setExperimentalOption("prefs", Map.of("download.default_directory", downloads.toString()));
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(DRIVER.toFile())
                .build();
        return new BrowserSession(
                profile,
                downloads,
                new ChromeDriver(service, options, ClientConfig.defaultConfig().readTimeout(PATIENCE)));
    }

    /** A browser that is lost holds up one test, not each that comes after it. */
    void assertAnswers() {
        if (lost == null) {
            try {
                driver.executeScript("return 1");
            } catch (WebDriverException e) {
                lost = e.getMessage();
            }
        }
        assertThat(lost).as("why the browser answers nothing").isNull();
    }

    public ChromeDriver driver() {
        return driver;
    }

    /** What the page is seen on: so many pixels, and whether it is a phone. */
    public void screen(int width, int height, boolean phone) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", phone));
    }

    public void visit(String address) {
        driver.get(address);
    }

    /** Visits {@code address} as somebody who was never there. */
    public void visitAnew(String address) {
        driver.get("about:blank");
        driver.executeCdpCommand(
                "Storage.clearDataForOrigin",
                Map.of(
                        "origin",
                        address.substring(0, address.length() - 1),
                        "storageTypes",
                        "local_storage,service_workers,cache_storage"));
        driver.get(address);
    }

    /** What a field, a list or the file on the page says. */
    String value(String selector) {
        return String.valueOf(find(selector).getDomProperty("value"));
    }

    WebElement find(String selector) {
        return driver.findElement(By.cssSelector(selector));
    }

    List<WebElement> all(String selector) {
        return driver.findElements(By.cssSelector(selector));
    }

    public String text(String selector) {
        return find(selector).getText();
    }

    public void click(String selector) {
        WebElement element = find(selector);
        driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", element);
        element.click();
    }

    /** Shows the part of the page behind the tab {@code name}. */
    void part(String name) {
        click("#tab-" + name);
    }

    /** Stops the line that moves on arrival. */
    public void pause() {
        if ("true".equals(find("#play").getDomAttribute("aria-pressed"))) {
            click("#play");
        }
    }

    /** Writes {@code value} into a field and leaves it, as a person would. */
    void type(String selector, String value) {
        WebElement field = find(selector);
        driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", field);
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), value, Keys.TAB);
    }

    /** Moves a slider to {@code value}, as dragging it does. */
    void slide(String selector, double value) {
        driver.executeScript(
                "arguments[0].value = arguments[1]; arguments[0].dispatchEvent(new Event('input', {bubbles: true}))",
                find(selector),
                String.valueOf(value));
    }

    void choose(String selector, String value) {
        new Select(find(selector)).selectByValue(value);
    }

    public void await(String what, BooleanSupplier condition) {
        new WebDriverWait(driver, PATIENCE, POLL)
                .ignoring(org.openqa.selenium.StaleElementReferenceException.class)
                .withMessage(() -> "waited in vain for: " + what + "; the page says "
                        + all("#word, #sentence").stream()
                                .map(WebElement::getText)
                                .toList() + " " + errors())
                .until(any -> condition.getAsBoolean());
    }

    /** Number of answers that the page has shown. */
    int answers() {
        String shown = find("body").getDomAttribute("data-answers");
        return shown == null ? 0 : Integer.parseInt(shown);
    }

    /** Waits until the answer is as sure as it will get. */
    public void awaitSettled() {
        await(
                "a settled answer",
                () -> !all("body[data-settled=true] #answer:not(.waiting)").isEmpty());
    }

    /** The one file that was downloaded under a name that ends so. */
    Path download(String ending) {
        await("a download " + ending, () -> downloaded(ending).isPresent());
        return downloaded(ending).orElseThrow();
    }

    private Optional<Path> downloaded(String ending) {
        try (Stream<Path> files = Files.list(downloads)) {
            // The browser makes the file before it has anything to put into it.
            return files.filter(file ->
                            file.toString().endsWith(ending) && file.toFile().length() > 0)
                    .findFirst();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Messages of the browser's console that are errors or warnings. */
    List<String> errors() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
                .map(LogEntry::getMessage)
                .toList();
    }

    /** Keeps a picture of the page for people to look at. */
    void picture(String name) throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "page"));
        Files.write(folder.resolve(name + ".png"), driver.getScreenshotAs(OutputType.BYTES));
    }

    /** Rules of accessibility that the page breaks as it is shown, with parts that do. */
    List<String> violations() {
        return new AxeBuilder()
                        .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"))
                        .analyze(driver)
                        .getViolations()
                        .stream()
                        .map(rule -> rule.getId() + ": "
                                + rule.getNodes().stream()
                                        .map(node -> node.getHtml())
                                        .limit(3)
                                        .toList())
                        .toList();
    }

    void assertAccessible() {
        assertThat(violations()).isEmpty();
    }

    void assertNoErrors() {
        assertThat(errors()).isEmpty();
    }

    @Override
    public void close() {
        driver.quit();
        for (Path folder : List.of(profile, downloads)) {
            try (Stream<Path> files = Files.walk(folder)) {
                files.sorted(Comparator.reverseOrder())
                        .forEach(file -> file.toFile().delete());
            } catch (IOException e) {
                folder.toFile().deleteOnExit();
            }
        }
    }
}
