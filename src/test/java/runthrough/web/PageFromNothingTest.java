package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A line made from nothing, in a real browser. */
class PageFromNothingTest extends BrowsedPage {

    private static void ask(int width, String theme) {
        browser.screen(width, 1000, width < 640);
        openPage();
        browser.choose("#theme", theme);
        browser.click("#new");
        browser.await("the questions", () -> browser.all("#new-times fieldset").size() == 3);
    }

    /** In plain fields, with the least, usual and greatest time or with measured ones; without a word of the file's syntax. */
    @Test
    void aFewAnswersMakeALineWithAVerdict() {
        ask(1440, "light");
        browser.type("#new-title-box", "Our mill");
        browser.choose("#new-kind", "roll-former");
        browser.await("its questions", () -> browser.value("#new-rated-speed").equals("20 m/min"));
        browser.type("#new-coil-thickness", "1.2 mm");
        browser.type("#new-rated-speed", "25");
        browser.type("[aria-label='make the joint, most']", "3 min");
        browser.choose("[aria-label='How the time of prepare the next coil is given']", "observed");
        browser.type("[aria-label^='prepare the next coil, times']", "150, 170, 4 min");
        browser.type("#new-run-target", "98 %");
        browser.type("#new-currency", "EUR");
        browser.type("#new-line-hour", "300");
        browser.click("#new-make");

        browser.await("the line", () -> browser.text("#title").equals("Our mill"));
        browser.awaitSettled();
        assertThat(browser.text("#word")).isIn("STOPS", "RUNS THROUGH");
        assertThat(browser.value("#text"))
                .contains("thickness: 1.2 mm", "speed: 25 m/min", "make the joint: {triangular: [40 s, 60 s, 3 min]}")
                .contains("prepare the next coil: {observed: [150 s, 170 s, 4 min]}")
                .contains("coil-change.join.make the joint: stated on the page")
                .contains("target: 98 %", "run.target: stated on the page", "line-hour: 300");

        browser.part("inputs");
        String assumed = browser.text("#assumed");
        assertThat(assumed).contains("values of this line are assumptions");
        assertThat(browser.text("#groups")).contains("assumption (common practice, no source)", "stated on the page");
        browser.type("#full-coil-width", "320 mm");
        browser.await("one fewer", () -> !browser.text("#assumed").equals(assumed));
    }

    @Test
    void aWrongAnswerIsSaidAtItsField() {
        ask(1440, "light");
        browser.type("#new-coil-thickness", "-1 mm");
        browser.click("#new-make");

        browser.await(
                "what is wrong",
                () -> browser.text("#new-coil-thickness ~ .fault").contains("more than 0 mm"));
        assertThat(browser.find("#new-line").isDisplayed()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"390, light", "390, dark", "1440, light", "1440, dark"})
    void theQuestionsAreAccessible(int width, String theme) throws IOException {
        ask(width, theme);

        browser.assertAccessible();
        browser.picture("from-nothing-" + width + "-" + theme);
    }
}
