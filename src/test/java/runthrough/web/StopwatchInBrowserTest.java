package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import runthrough.scenario.times.TimeSheetReader;
import runthrough.scenario.times.TimeSheetReading;
import runthrough.timestudy.Observation;

/** The stopwatch at the line, on a phone, in a real browser. */
class StopwatchInBrowserTest extends BrowsedPage {
    @TempDir
    Path folder;

    @BeforeEach
    void visit() {
        browser.screen(390, 844, true);
        browser.visitAnew(page.address() + "stopwatch");
        stopTheClock();
    }

    /** So that seconds pass when the test says so. */
    private static void stopTheClock() {
        browser.driver()
                .executeScript("const kept = JSON.parse(localStorage.getItem('runthrough.stopwatch'));"
                        + "const taps = kept?.changes.flatMap((change) => change.taps.map((tap) => tap.at)) ?? [];"
                        + "window.clock = Math.max(Date.now(), ...taps); Date.now = () => window.clock;");
    }

    private static void tapAfter(double seconds) {
        browser.driver().executeScript("window.clock += 1000 * arguments[0];", seconds);
        browser.click("#tap");
    }

    /** All elements of a coil change, the first beginning now. */
    private static void timed(double... seconds) {
        tapAfter(0);
        for (double time : seconds) {
            tapAfter(time);
        }
    }

    private TimeSheetReading.Accepted sheet() throws IOException {
        Object text = browser.driver()
                .executeAsyncScript("const done = arguments[0];"
                        + "import('/taps.js').then((module) => done(new module.Taps().sheet()));");
        Path file = Files.writeString(folder.resolve("stopwatch.csv"), String.valueOf(text));
        return (TimeSheetReading.Accepted) TimeSheetReader.read(file, "stopwatch.csv");
    }

    /** Tapped through in order, one tap taken back, one element left out, with a note; all of it through a reload. */
    @Test
    void tapsGiveASheetThatTheProgramReads() throws IOException {
        timed(90, 8, 22.5, 31, 9);
        timed(120, 7);
        tapAfter(40);
        browser.click("#undo");
        tapAfter(5);
        browser.type("#note", "hook slipped, \"again\"");
        browser.visit(page.address() + "stopwatch");
        stopTheClock();
        assertThat(browser.text("#now")).isEqualTo("Now: weld");
        assertThat(browser.value("#note")).contains("hook slipped");
        browser.driver().executeScript("window.clock += 30000;");
        browser.click("#finish");

        List<Observation> rows = sheet().sheet().rows();

        assertThat(sheet().warnings()).isEmpty();
        assertThat(sheet().sheet().elements())
                .extracting(element -> element.label())
                .containsExactly(
                        "prepare: prepare the next coil",
                        "tail: shear the tail",
                        "join: fit up",
                        "join: weld",
                        "join: inspect and release");
        assertThat(rows.get(0).times()).containsExactly(90.0, 8.0, 22.5, 31.0, 9.0);
        assertThat(rows.get(1).times().subList(0, 3)).containsExactly(120.0, 7.0, 45.0);
        assertThat(rows.get(1).times().get(3)).isEqualTo(30);
        assertThat(rows.get(1).times().get(4)).isNaN();
        assertThat(rows.get(1).remark()).isEqualTo("hook slipped, \"again\"");
    }

    /** The columns of a sheet are known by their names. */
    @Test
    void noTwoElementsHaveOneName() {
        for (int i = 0; i < 2; i++) {
            browser.driver().executeScript("document.getElementById('add').click()");
        }
        browser.driver()
                .executeScript("const all = document.querySelectorAll('#setup [aria-label^=Remove]');"
                        + " all[all.length - 2].click(); document.getElementById('add').click();");

        assertThat(browser.all("#setup input[type=text]"))
                .extracting(box -> box.getDomProperty("value"))
                .doesNotHaveDuplicates()
                .hasSizeGreaterThan(2);
    }

    private static List<String> names() {
        return browser.all("#setup input[type=text]").stream()
                .map(box -> String.valueOf(box.getDomProperty("value")))
                .toList();
    }

    /** With the button or the box still in focus, and two quick clicks for one. */
    @Test
    void whatIsTimedIsAsTheListSays() {
        browser.click("#setup li:nth-child(2) button");
        assertThat(names()).containsExactly("prepare the next coil", "fit up", "weld", "inspect and release");
        browser.driver()
                .executeScript("document.querySelector('#setup button')"
                        + ".dispatchEvent(new MouseEvent('click', {detail: 2, bubbles: true}));");
        assertThat(names()).hasSize(4);

        browser.type("#setup li:nth-child(3) input", " Fit   up\u00a0" + Keys.ENTER);

        assertThat(names()).containsExactly("prepare the next coil", "fit up", "Fit up 2", "inspect and release");
        assertThat(browser.all("#elements button"))
                .extracting(button -> button.getText())
                .containsExactly("prepare the next coil", "fit up", "Fit up 2", "inspect and release");
    }

    /** A note of a coil change that was not begun goes with the tap that is taken back, and not away. */
    @Test
    void aNoteIsKeptWhereACoilChangeIsTakenUpAgain() throws IOException {
        timed(90, 8, 22.5, 31, 9);
        browser.type("#note", "crane away");

        browser.click("#undo");

        assertThat(browser.text("#which")).isEqualTo("Coil change 1");
        assertThat(browser.value("#note")).isEqualTo("crane away");
    }

    /** Of the same coil changes: a note belongs to the one it was typed for, and what is half typed stays. */
    @Test
    void tapsInAnotherTabAreFollowed() {
        timed(90, 8);
        browser.find("#note").sendKeys("hook slipped");
        browser.driver()
                .executeScript("const kept = JSON.parse(localStorage.getItem('runthrough.stopwatch'));"
                        + "kept.changes.push({taps: [], note: ''});"
                        + "localStorage.setItem('runthrough.stopwatch', JSON.stringify(kept));"
                        + "window.dispatchEvent(new StorageEvent('storage', {key: 'runthrough.stopwatch'}));");

        assertThat(browser.text("#which")).isEqualTo("Coil change 2");
        assertThat(browser.value("#note")).isEmpty();
        browser.click("#undo");
        assertThat(browser.value("#note")).isEqualTo("hook slipped");

        browser.click("#clear");
        browser.click("#clear-yes");
        browser.find("#setup li:nth-child(3) input").sendKeys(" twice");
        browser.driver().executeScript("window.dispatchEvent(new StorageEvent('storage', {key: 'other'}));");
        assertThat(names()).contains("fit up twice");
    }

    /** The times of one line stay while another is on the page; once they are cleared, its elements are timed, and no fits of the old stay. */
    @Test
    void anotherLineIsTimedOnceTheTimesAreCleared() {
        timed(90, 8, 22.5, 31, 9);
        browser.click("#fit");
        browser.await("the fits", () -> browser.text("#fits").contains("1 coil change was timed"));
        browser.driver()
                .executeScript(
                        "localStorage.setItem('runthrough.elements', JSON.stringify([{part: 'join', name: 'butt weld'}]));");
        browser.visit(page.address() + "stopwatch");
        assertThat(names()).contains("prepare the next coil");

        browser.click("#clear");
        browser.click("#clear-yes");

        assertThat(names()).containsExactly("butt weld");
        assertThat(browser.text("#fits")).isEmpty();
    }

    /** What is timed comes from the line on the page, and the fits from the program. */
    @Test
    void theElementsAreThoseOfTheLineAndTheFitsComeAtOnce() {
        openPage();
        browser.visit(page.address() + "stopwatch");
        stopTheClock();
        assertThat(browser.all("#elements button"))
                .extracting(WebElement::getText)
                .containsExactly("fetch coil", "load and open", "shear tail", "fit up", "weld", "inspect");
        for (int i = 0; i < 3; i++) {
            timed(90 + i, 120 - i, 8 + i, 22, 31 + i, 9);
        }

        browser.click("#fit");

        browser.await("the fits", () -> browser.text("#fits").contains("3 coil changes were timed, 6 elements"));
        assertThat(browser.all("#fits table").size()).isGreaterThan(2);
    }

    @Test
    void withoutAServerItOpensAndGoesOn() throws IOException {
        PageServer other = PageServer.start("runthrough test", 1, 0);
        String address = other.address() + "stopwatch";
        browser.visitAnew(address);
        browser.await(
                "that it is kept", () -> "true".equals(browser.find("body").getDomAttribute("data-kept")));
        browser.click("#tap");
        other.close();

        browser.visit(address);

        assertThat(browser.text("#now")).isEqualTo("Now: prepare the next coil");
        browser.click("#tap");
        assertThat(browser.text("#now")).isEqualTo("Now: shear the tail");
        assertThat(browser.find("#tap").getCssValue("min-height")).isEqualTo("96px");
        // That nobody answers is what the browser complains of.
        browser.errors();
    }

    @ParameterizedTest
    @CsvSource({"390, light", "390, dark", "1440, light", "1440, dark"})
    void itIsAccessibleAndMadeForThumbs(int width, String theme) throws IOException {
        browser.screen(width, 844, width < 640);
        browser.driver().executeScript("document.documentElement.dataset.theme = arguments[0];", theme);
        timed(90, 8, 22.5, 31, 9);
        tapAfter(3);

        browser.assertAccessible();
        assertThat(browser.all("button, a, select, input"))
                .filteredOn(WebElement::isDisplayed)
                .allMatch(part -> part.getSize().height >= 44 && part.getSize().width >= 44);
        browser.picture("stopwatch-" + width + "-" + theme);
    }
}
