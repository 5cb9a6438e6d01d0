package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The page in a real browser: what a person at it does, and sees. */
class PageInBrowserTest extends BrowsedPage {
    private static final String QUICK_SPEED = "#quick input[type=text][id*=rated-speed]";
    private static final String QUICK_SPEED_SLIDER = "#quick-rated-speed ~ input[type=range]";

    @BeforeEach
    void visit() {
        browser.screen(1440, 1000, false);
        openPage();
    }

    @Test
    void theFirstLineIsThereWithItsVerdict() throws IOException {
        assertThat(browser.text("#title")).contains("Kestrel Road");
        assertThat(browser.text("#word")).isEqualTo("STOPS");
        assertThat(browser.text("#limiting-factor")).isNotEmpty();
        assertThat(browser.all("#figures details").size()).isGreaterThan(6);
        browser.picture("tube-line");
    }

    /** Without any click, a stranger sees the worst coil change of the run, moving, and the four levers; all else is behind a step. */
    @Test
    void onArrivalTheLineMovesAtTheWorstCoilChange() {
        browser.visitAnew(page.address().toString());
        browser.awaitSettled();

        assertThat(browser.text("#play")).isEqualTo("Pause");
        browser.await(
                "a joint that runs short of strip",
                () -> browser.text("#race").contains("the strip runs out")
                        && browser.text("#drawing").contains("of joint"));
        browser.await("its stop", () -> browser.text("#drawing").contains("STARVED, stopped"));
        assertThat(browser.text("#what")).contains("Strip is stored in the accumulator, 72 m when full");
        assertThat(browser.all("#quick .field label"))
                .extracting(WebElement::getText)
                .containsExactly(
                        "Accumulator holds",
                        "Process speed",
                        "Joint cycle time, mean without waiting",
                        "Reject, chance");
        assertThat(browser.find("#figures").isDisplayed()).isFalse();
        assertThat(browser.find("#groups").isDisplayed()).isFalse();
    }

    /** At 25 m/min a joint draws little more than half of what is held, and even a joint made twice is made good. */
    /** Nothing moves of itself, and the joint is seen half made. */
    @Test
    void withLessMotionTheLineWaitsInTheMiddleOfTheJoint() {
        Map<String, String> less = Map.of("name", "prefers-reduced-motion", "value", "reduce");
        browser.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", List.of(less)));
        try {
            browser.visitAnew(page.address().toString());
            browser.awaitSettled();

            assertThat(browser.text("#play")).isEqualTo("Play");
            assertThat(browser.text("#race")).contains("Joint left", "the strip runs out");
        } finally {
            browser.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", List.of()));
        }
    }

    @Test
    void aSlowerProcessTurnsTheVerdictAndBackAgain() throws IOException {
        browser.slide(QUICK_SPEED_SLIDER, 25 / 60.0);
        browser.await("the verdict to turn", () -> browser.text("#word").equals("RUNS THROUGH"));
        assertThat(browser.find("#quick-rated-speed").getDomProperty("value")).startsWith("25");
        browser.awaitSettled();
        browser.picture("runs-through");

        browser.click("#reset");
        browser.await("the verdict to turn back", () -> browser.text("#word").equals("STOPS"));
    }

    /** The question of the meeting: 20 % faster, and what would fix it. */
    @Test
    void twentyPercentFasterAndWhatWouldFixIt() throws IOException {
        browser.type(QUICK_SPEED, "54 m/min");
        browser.await("the change in percent", () -> browser.text("#quick").contains("+20 %"));
        browser.awaitSettled();
        assertThat(browser.text("#word")).isEqualTo("STOPS");

        browser.click("#fix");
        browser.await("fixes", () -> !browser.all("#fixes button").isEmpty());
        browser.picture("what-would-fix-it");
        browser.click("#fixes button");
        browser.await("the fix to be made", () -> !browser.text("#word").equals("STOPS"));
    }

    /** The numbers of those behind it change with the first, so that the second is not taken for another. */
    @Test
    void ofTwoQuickRemovalsTheFirstIsMade() {
        List<String> names = browser.all("#work .element input[aria-label^=Name]").stream()
                .map(box -> String.valueOf(box.getDomProperty("value")))
                .toList();
        browser.driver()
                .executeScript("document.querySelector('#work [aria-label=\"Remove fit up\"]').click();"
                        + " document.querySelector('#work [aria-label=\"Remove weld\"]').click();");
        browser.await(
                "the removal",
                () -> browser.all("#work [aria-label='Remove fit up']").isEmpty());
        browser.awaitSettled();

        assertThat(browser.all("#work .element input[aria-label^=Name]"))
                .extracting(box -> box.getDomProperty("value"))
                .containsExactlyElementsOf(
                        names.stream().filter(name -> !name.equals("fit up")).toList());
        browser.await(
                "the list to be used again", () -> browser.all("#work[inert]").isEmpty());
        browser.click("#reset");
        browser.await(
                "all of them",
                () -> !browser.all("#work [aria-label='Remove fit up']").isEmpty());
    }

    @Test
    void playingMovesTheLine() {
        String before = browser.text("#clock");
        browser.choose("#pace", "10");
        browser.click("#play");
        browser.await("the clock to move", () -> !browser.text("#clock").equals(before));
        browser.await(
                "a joint that drains the accumulator",
                () -> browser.text("#telling").startsWith("Strip stands")
                        && browser.text("#drawing").contains("draining"));
        browser.click("#play");
        String stopped = browser.text("#clock");
        assertThat(browser.text("#play")).isEqualTo("Play");
        assertThat(browser.text("#clock")).isEqualTo(stopped);
    }

    /** The level that the drawing shows is that of the engine: 72 m while matched. */
    @Test
    void theDrawingShowsTheEnginesLevel() throws IOException {
        browser.click("#next");
        assertThat(browser.text("#drawing")).contains("72 m of 72 m");
        assertThat(browser.text("#telling")).contains("comes into the joiner");
        browser.picture("at-a-coil-change");
    }

    @Test
    void badInputIsSaidAtItsFieldAndTheLastAnswerStays() throws IOException {
        browser.part("inputs");
        browser.type("#full-accumulator-stroke", "-9 m");
        browser.await(
                "the fault",
                () -> browser.find("#full-accumulator-stroke ~ .fault").isDisplayed());
        assertThat(browser.text("#full-accumulator-stroke ~ .fault")).contains("must be more than 0 m");
        assertThat(browser.find("#full-accumulator-stroke").getDomAttribute("aria-invalid"))
                .isEqualTo("true");
        assertThat(browser.text("#word")).isEqualTo("STOPS");
        browser.picture("bad-input");

        browser.type("#full-accumulator-stroke", "9 m");
        browser.await("the fault to go", () -> !browser.find("#faults").isDisplayed());
    }

    @Test
    void unitsAreSwitched() {
        browser.choose("#units", "us");
        browser.await(
                "feet",
                () -> String.valueOf(browser.find("#quick-rated-speed").getDomProperty("value"))
                        .contains("ft/min"));
        browser.awaitSettled();
        browser.part("numbers");
        assertThat(browser.text("#figures")).contains("ft");
        assertThat(browser.find("#text").getDomProperty("value")).contains("speed: 45 m/min");
        browser.choose("#units", "metric");
        browser.await(
                "metres",
                () -> String.valueOf(browser.find("#quick-rated-speed").getDomProperty("value"))
                        .equals("45 m/min"));
    }

    @Test
    void aPinnedLineStandsBesideTheChangedOne() throws IOException {
        browser.click("#pin");
        browser.part("pinned");
        browser.type(QUICK_SPEED, "30 m/min");
        browser.await("the pinned speed", () -> browser.text("#pinned-table").contains("30 m/min"));
        browser.awaitSettled();
        assertThat(browser.text("#pinned-table")).contains("45 m/min", "STOPS");
        browser.picture("pinned");
    }

    @Test
    void aMapIsDrawnOnDemand() throws IOException {
        browser.part("charts");
        browser.click("#map-start");
        browser.await("the map", () -> !browser.all("#map-picture img").isEmpty());
        assertThat(browser.text("#map-note")).contains("The target of 99.5 %");
        browser.driver().executeScript("arguments[0].scrollIntoView()", browser.find("#map-title"));
        browser.picture("map");
    }

    @Test
    void aNumberOpensToShowWhereItComesFrom() throws IOException {
        browser.part("numbers");
        List<WebElement> figures = browser.all("#figures details");
        figures.get(0).findElement(By.tagName("summary")).click();
        // The browser says that it was opened a moment after the click.
        browser.await("the replications", () -> figures.get(0).getText().contains("independent replications"));
        WebElement capacity = figures.stream()
                .filter(figure -> figure.getText().contains("accumulator capacity"))
                .findFirst()
                .orElseThrow();
        capacity.findElement(By.tagName("summary")).click();
        browser.await("the calculation", () -> capacity.getText().contains("with numbers"));
        assertThat(capacity.getText()).contains("hand calculation", "with numbers");
        browser.driver().executeScript("arguments[0].scrollIntoView()", capacity);
        browser.picture("explained");
    }

    @Test
    void everythingCanBeTakenAway() throws IOException {
        browser.type(QUICK_SPEED, "47 m/min");
        browser.awaitSettled();
        browser.click("#handover summary");
        browser.click("#get-scenario");
        assertThat(Files.readString(browser.download("tube-line.yaml"))).contains("speed: 47 m/min", "# START HERE");
        browser.click("#handover summary");
        browser.click("#get-report");
        assertThat(Files.readString(browser.download("report.html"))).contains("Kestrel Road", "47\u00a0m/min");
        browser.click("#handover summary");
        browser.click("#get-csv");
        assertThat(Files.size(browser.download("tables.zip"))).isGreaterThan(1000);
    }

    @Test
    void aLinkRestoresTheLine() {
        browser.type(QUICK_SPEED, "41 m/min");
        browser.awaitSettled();
        browser.click("#handover summary");
        browser.click("#get-link");
        browser.await("the link", () -> browser.driver().getCurrentUrl().contains("#line="));
        String link = browser.driver().getCurrentUrl();

        browser.visit("about:blank");
        browser.visit(link);
        browser.awaitSettled();

        assertThat(browser.find("#quick-rated-speed").getDomProperty("value")).isEqualTo("41 m/min");
    }

    /** The address holds a link then, and the work goes on. */
    @Test
    void aReloadAfterALinkWasMadeKeepsTheWork() {
        browser.type(QUICK_SPEED, "41 m/min");
        browser.awaitSettled();
        browser.click("#handover summary");
        browser.click("#get-link");
        browser.await("the link", () -> browser.driver().getCurrentUrl().contains("#line="));

        browser.driver().navigate().refresh();
        browser.await("the line of the link", () -> browser.value(QUICK_SPEED).equals("41 m/min"));
        browser.awaitSettled();
        browser.pause();
        assertThat(browser.driver().getCurrentUrl()).contains("#line=");
        browser.type(QUICK_SPEED, "42 m/min");
        browser.await("no link", () -> !browser.driver().getCurrentUrl().contains("#line="));
        browser.awaitSettled();
        browser.driver().navigate().refresh();

        browser.await("the work", () -> browser.value(QUICK_SPEED).equals("42 m/min"));
        browser.awaitSettled();
        browser.click("#undo");
        browser.await("the speed before", () -> browser.value(QUICK_SPEED).equals("41 m/min"));
    }

    @Test
    void hostileTextIsShownAsText() {
        String title = "<img src=x onerror=document.body.remove()> & \\\"co\\\"";
        String text = String.valueOf(browser.find("#text").getDomProperty("value"))
                .replaceFirst("title: .*", java.util.regex.Matcher.quoteReplacement("title: \"" + title + "\""));
        browser.part("text");
        browser.driver().executeScript("arguments[0].value = arguments[1]", browser.find("#text"), text);
        browser.click("#take-text");
        browser.await("the title", () -> browser.text("#title").startsWith("<img src=x"));
        assertThat(browser.all("#title img")).isEmpty();
    }

    @Test
    void workIsEditedAsAList() {
        browser.part("inputs");
        int before = browser.all("#work .element").size();
        browser.driver().executeScript("arguments[0].scrollIntoView({block: 'center'})", browser.find("#work"));
        browser.all("#work > button").get(2).click();
        browser.await("a new element", () -> browser.all("#work .element").size() == before + 1);
        browser.await(
                "its text",
                () -> String.valueOf(browser.find("#text").getDomProperty("value"))
                        .contains("{new element: 10 s}"));
        browser.awaitSettled();
        List<WebElement> elements = browser.all("#work .element");
        elements.get(elements.size() - 1).findElement(By.tagName("button")).click();
        browser.await("one fewer", () -> browser.all("#work .element").size() == before);
    }

    @Test
    void everythingCanBeReachedFromTheKeyboard() {
        browser.part("text");
        browser.visit(page.address().toString());
        browser.awaitSettled();
        browser.part("text");
        browser.driver()
                .executeScript(
                        "document.activeElement.blur(); window.getSelection().removeAllRanges(); window.scrollTo(0, 0); document.querySelector('.skip').focus()");
        assertThat(browser.driver().switchTo().activeElement().getText()).isEqualTo("Skip to the answer");
        for (int i = 0; i < 400; i++) {
            browser.driver().switchTo().activeElement().sendKeys(Keys.TAB);
            if ("take-text".equals(browser.driver().switchTo().activeElement().getDomAttribute("id"))) {
                return;
            }
        }
        throw new AssertionError("the end of the page is not reached by Tab");
    }

    @ParameterizedTest
    @CsvSource({"light, 390", "dark, 1024", "light, 1440", "dark, 1920"})
    void nothingBreaksTheRulesOfAccessibility(String look, int width) throws IOException {
        browser.screen(width, 1000, width < 500);
        browser.choose("#theme", look);
        browser.click("#pin");
        browser.awaitSettled();
        for (String part : List.of("numbers", "worth", "charts", "inputs", "text", "pinned", "why")) {
            browser.part(part);
            if (part.equals("numbers")) {
                browser.click("#figures summary");
            }
            assertThat(browser.violations()).as(part).isEmpty();
        }
        browser.picture(look);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "stamping-rethread",
                "stamping-joiner",
                "tube-spiral",
                "roll-former",
                "coating-line",
                "slitter",
                "perforating-line",
                "galvanising-line",
                "slitter-widths"
            })
    void everyShippedLineCanBeOpened(String name) throws IOException {
        browser.choose("#shipped", name);
        browser.await("another line", () -> !browser.text("#title").contains("Kestrel Road"));
        browser.awaitSettled();
        assertThat(browser.all("#drawing svg")).hasSize(1);
        browser.pause();
        browser.click("#next");
        browser.picture(name);
    }

    /** Measured in the page, from the change to the words on the screen; generous, since other work may share the machine. */
    @Test
    void anAnswerComesAtOnce() {
        browser.slide(QUICK_SPEED_SLIDER, 0.7);
        browser.awaitSettled();
        double fastest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 5; i++) {
            Object millis = browser.driver()
                    .executeAsyncScript(
                            "const done = arguments[arguments.length - 1]; const before = document.body.dataset.answers;"
                                    + "const slider = document.querySelector(arguments[0]); const start = performance.now();"
                                    + "new MutationObserver((_, o) => { if (document.body.dataset.answers !== before) { o.disconnect();"
                                    + " done(performance.now() - start); } }).observe(document.body, {attributes: true});"
                                    + "slider.value = arguments[1]; slider.dispatchEvent(new Event('input', {bubbles: true}));",
                            QUICK_SPEED_SLIDER,
                            String.valueOf(0.6 + 0.01 * i));
            fastest = Math.min(fastest, ((Number) Objects.requireNonNull(millis)).doubleValue());
        }
        assertThat(fastest).isLessThan(200);
    }
}
