package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** The page in a real browser, as in a meeting: levers in the picture, the line beside another, what it is worth, what is kept. */
class PageInMeetingTest extends BrowsedPage {
    private static final String SPEED = "#quick-rated-speed";
    private static final String CAPACITY = "#quick-usable-capacity";
    private static final String MARK = "#line=";
    /** A browser takes no more than 200 addresses in a row. */
    private static final int A_FEW = 150;

    private static final String DAMAGED =
            "The link is damaged: the line behind its # cannot be read. Ask for it again.";
    private static final List<String> SLIPS = List.of(
            "", "A", "-", "_", "=", "+", "/", "%", "%00", "%F0%9F", "#", "\u00e9", "\uD83D\uDE00", " ", "\"", "zzzz");

    @BeforeEach
    void visit() {
        browser.screen(1440, 1000, false);
        openPage();
    }

    private static void awaitValue(String field, String value) {
        browser.await(field + " = " + value, () -> browser.value(field).equals(value));
        browser.awaitSettled();
    }

    private static WebElement grip(String name) {
        return browser.find("#drawing [role=slider][aria-label^='" + name + "']");
    }

    /** How far along the first picture and the second something stands, in px of their own. */
    private static double number(String script) {
        return ((Number) Objects.requireNonNull(browser.driver().executeScript("return " + script))).doubleValue();
    }

    private static String link(byte[] text) {
        Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION, true);
        deflater.setInput(text);
        deflater.finish();
        byte[] packed = new byte[10_000];
        int length = deflater.deflate(packed);
        return MARK + Base64.getUrlEncoder().withoutPadding().encodeToString(Arrays.copyOf(packed, length));
    }

    /** What the page says of each link: that it is read, or why not. */
    private static List<?> saidOf(List<String> links) {
        return (List<?>) Objects.requireNonNull(browser.driver().executeAsyncScript("""
                        const [links, done] = arguments;
                        const said = [];
                        import('/handover.js').then(async (module) => {
                          for (const link of links) {
                            history.replaceState(null, '', link);
                            said.push(await module.linkedLine().then(() => 'read', (e) => e.message));
                          }
                          history.replaceState(null, '', '/');
                        }).then(() => done(said), (e) => done([String(e)]));
                        """, links));
    }

    /** 5 MB of nothing are 5 kB of link. */
    @Test
    void aLinkThatUnpacksToMoreThanALineIsRefused() {
        assertThat(saidOf(List.of(link(new byte[5_000_000])))).hasToString("[" + DAMAGED + "]");
    }

    /** Letters of a link replaced, left out or put in, or its end cut off: another text is read, or it is said to be damaged. */
    @Test
    void slipsInALinkAreReadOrSaidToBeDamaged() throws IOException {
        String whole = link(Files.readAllBytes(Path.of("scenarios/roll-former.yaml")));
        Random random = new Random(18);
        List<String> links =
                Stream.generate(() -> slipped(whole, random)).limit(A_FEW).toList();

        assertThat(saidOf(List.of(whole))).hasToString("[read]");
        assertThat(saidOf(links).stream().map(String::valueOf))
                .hasSize(A_FEW)
                .contains(DAMAGED)
                .isSubsetOf(DAMAGED, "read");
    }

    private static String slipped(String link, Random random) {
        StringBuilder slipped = new StringBuilder(link);
        for (int slips = 1 + random.nextInt(3); slips > 0; slips--) {
            int from = MARK.length() + random.nextInt(slipped.length() - MARK.length());
            int to = random.nextInt(8) == 0 ? slipped.length() : Math.min(slipped.length(), from + random.nextInt(3));
            slipped.replace(from, to, SLIPS.get(random.nextInt(SLIPS.size())));
            slipped.append('A');
        }
        return slipped.toString();
    }

    /** Whatever line a link carries: the page says what is wrong with it, and takes another. */
    @Test
    void aLinkWithoutALineLeavesThePageInUse() {
        for (String text :
                List.of("", "null", "[".repeat(10_000), "a: &a [*a, *a]", "\u0000", "title: 1\nrun: {time: 1e300 h}")) {
            browser.visit("about:blank");
            browser.visit(page.address().resolve("/") + link(text.getBytes(StandardCharsets.UTF_8)));
            browser.await(
                    "what is wrong with " + text,
                    () -> !browser.text("#fault-list").isBlank());
        }
        browser.choose("#shipped", "roll-former");
        browser.awaitSettled();

        assertThat(browser.text("#title")).contains("roll former");
    }

    /**
     * Held at its present place the carriage stands for the capacity; the way from empty to full is 290 px of the picture, so half
     * of these further it is 1.5 times as much.
     */
    @Test
    void theCarriageIsDraggedToAnotherCapacity() {
        double scale = number("document.querySelector('#drawing svg').getScreenCTM().a");

        new Actions(browser.driver())
                .clickAndHold(grip("Accumulator capacity"))
                .moveByOffset((int) Math.round(145 * scale / 2), 0)
                .moveByOffset((int) Math.round(145 * scale / 2), 0)
                .release()
                .perform();

        browser.await("the capacity", () -> browser.value(CAPACITY).startsWith("108"));
        assertThat(browser.value("#text")).contains("stroke: 13.5 m");
    }

    /** Of 45 m/min the dial goes to twice that: a step of the keyboard is a hundredth of the way from half to twice. */
    @Test
    void theSpeedIsSetAtItsDialByMouseAndByKeyboard() {
        WebElement dial = grip("Process speed");
        assertThat(dial.getDomAttribute("aria-valuetext")).isEqualTo("45 m/min");
        dial.sendKeys(Keys.ARROW_UP);
        awaitValue(SPEED, "45.7 m/min");
        grip("Process speed").sendKeys(Keys.HOME);
        awaitValue(SPEED, "22.5 m/min");
        browser.await("the verdict to turn", () -> browser.text("#word").equals("RUNS THROUGH"));

        // From the middle of the upper half of the dial to straight up: 45 of 90 m/min.
        new Actions(browser.driver())
                .clickAndHold(grip("Process speed"))
                .moveByOffset(3, 3)
                .moveByOffset(-3, -10)
                .release()
                .perform();
        browser.await("a speed near the middle", () -> browser.value(SPEED).matches("4[3-7].*"));
    }

    /** 45 m/min and 22.5 m/min meet the same joint: after 50 s of it the second accumulator has given half as much. */
    @Test
    void aPinnedLineRunsInStepThroughTheSameCoilChange() throws IOException {
        browser.click("#pin");
        browser.type(SPEED, "22.5 m/min");
        awaitValue(SPEED, "22.5 m/min");
        browser.await(
                "the second picture", () -> browser.text("#beside-drawing").contains("stored"));
        browser.await("what is pinned", () -> browser.text("#beside-title").contains("Process speed 45 m/min. STOPS"));
        browser.awaitSettled();

        browser.click("#next");
        double start = number("Number(document.getElementById('time').value)");
        browser.slide("#time", start + 50);

        assertThat(browser.text("#beside-race")).contains("Joint left");
        assertThat(lane("#race", ".joint")).isEqualTo(lane("#beside-race", ".joint"));
        assertThat(72 - level("#beside-drawing")).isCloseTo(2 * (72 - level("#drawing")), within(1.5));
        browser.picture("in-step");
    }

    /** An alternative of the file is one choice away from running beside the line. */
    @Test
    void anAlternativeOfTheFileRunsBesideTheLine() {
        browser.choose("#shipped", "roll-former");
        browser.await("its line", () -> browser.text("#title").startsWith("Harrow Lane"));
        browser.awaitSettled();

        browser.choose("#alternatives", "0");

        browser.await("the alternative", () -> browser.text("#beside-title").contains("second uncoiler. RUNS THROUGH"));
        browser.await(
                "its picture",
                () -> browser.text("#beside-race").contains("ran through")
                        || browser.text("#beside-race").contains("enough strip"));
        assertThat(browser.text("#word")).isEqualTo("STOPS");

        browser.visit(page.address().toString());
        browser.await(
                "the alternative by its name after a reload",
                () -> browser.text("#beside-title").startsWith("Pinned line: second uncoiler."));
    }

    /** The line itself has its answer, whatever is wrong with an alternative. */
    @Test
    void anAlternativeThatCannotBeRunIsSaidBesideTheChoice() {
        browser.choose("#shipped", "roll-former");
        browser.await("its line", () -> browser.text("#title").startsWith("Harrow Lane"));
        String text = String.valueOf(browser.find("#text").getDomProperty("value"))
                .replace("second uncoiler: {entry.uncoilers: 2}", "second uncoiler: {entry.uncoilrs: 2}");
        browser.part("text");
        browser.driver().executeScript("arguments[0].value = arguments[1]", browser.find("#text"), text);
        browser.click("#take-text");
        browser.await("the warning", () -> browser.text(".warnings").contains("second uncoiler"));
        browser.awaitSettled();

        browser.choose("#alternatives", "0");

        browser.await(
                "the reason",
                () -> browser.text("#beside-note").contains("cannot be run")
                        && browser.text("#beside-note").contains("entry.uncoilrs = 2; is not a part of this scenario"));
        assertThat(browser.text("#word")).isEqualTo("STOPS");
        assertThat(browser.find("#drawing").isDisplayed()).isTrue();
    }

    private static String lane(String race, String lane) {
        return browser.text(race + " " + lane + " .value");
    }

    private static double level(String drawing) {
        String words = browser.text(drawing);
        return Double.parseDouble(words.replaceFirst("(?s).*Accumulator: ([0-9.]+) m of .*", "$1"));
    }

    /** What the document says: cost, gain, net present value and payback, for the line as it is changed. */
    @Test
    void whatItIsWorthMovesWithTheLevers() {
        browser.await("what it is worth", () -> browser.text("#worth-line").contains("Simple payback"));
        String before = browser.text("#worth-line");
        assertThat(before).contains("Net present value", "EUR", "cost");

        browser.type(SPEED, "40 m/min");

        browser.await(
                "what it is worth then",
                () -> !browser.text("#worth-line").equals(before)
                        && browser.text("#worth-line").contains("Simple payback"));
        browser.part("worth");
        assertThat(browser.text("#worth")).contains("quicker weld", "join without accumulator", "Discounted payback");
    }

    @Test
    void severalProjectsAreKeptByName() {
        browser.type(SPEED, "50 m/min");
        awaitValue(SPEED, "50 m/min");
        keepAs("faster");
        browser.choose("#shipped", "coating-line");
        awaitValue(SPEED, "120 m/min");
        keepAs("coating");

        browser.visit(page.address().toString());
        browser.awaitSettled();
        browser.click("#projects-menu summary");
        assertThat(browser.all("#projects li")).hasSize(2);
        browser.find("#projects").findElement(By.xpath(".//button[.='faster']")).click();
        awaitValue(SPEED, "50 m/min");
        browser.click("#undo");
        awaitValue(SPEED, "45 m/min");

        // What becomes of it is kept, too.
        assertThat(browser.driver()
                        .executeScript("return JSON.parse(localStorage.getItem('runthrough.projects')).faster.at"))
                .isEqualTo(0L);
        browser.click("#projects-menu summary");
        browser.click("#projects [aria-label='Remove faster']");
        assertThat(browser.all("#projects li")).hasSize(1);
    }

    private static void keepAs(String name) {
        browser.click("#projects-menu summary");
        browser.type("#project-name", name);
        browser.click("#keep-project");
        browser.await("a project", () -> browser.text("#project-note").contains(name));
        browser.click("#projects-menu summary");
    }

    @Test
    void aPresentationGoesByKeysAlone() throws IOException {
        browser.click("#present");
        WebElement body = browser.find("body");
        assertThat(browser.find("#shipped").isDisplayed()).isFalse();
        assertThat(browser.find("#part-why").isDisplayed()).isFalse();

        body.sendKeys("2");
        body.sendKeys(Keys.ARROW_DOWN);
        browser.await("a slower process", () -> browser.value(SPEED).equals("43.3 m/min"));
        browser.awaitSettled();
        browser.picture("presentation");
        body.sendKeys(" ");
        browser.await(
                "the line to move", () -> "true".equals(browser.find("#play").getDomAttribute("aria-pressed")));
        body.sendKeys(" ");
        body.sendKeys(Keys.ESCAPE);

        browser.await("the page", () -> browser.find("#shipped").isDisplayed());
    }

    /** On paper stand the verdict, the picture, why, what it is worth and the numbers; no buttons, and dark letters. */
    @Test
    void aPrintShowsTheAnswer() {
        browser.choose("#theme", "dark");
        browser.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
        try {
            assertThat(List.of("#mark", "#drawing", "#limiting-factor", "#cause-table", "#figures", CAPACITY))
                    .allMatch(one -> browser.find(one).isDisplayed());
            assertThat(List.of("#play", "#shipped", "#fix", "#undo"))
                    .noneMatch(one -> browser.find(one).isDisplayed());
            assertThat(browser.find("body").getCssValue("color")).isEqualTo("rgba(0, 0, 0, 1)");
        } finally {
            browser.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
        }
    }
}
