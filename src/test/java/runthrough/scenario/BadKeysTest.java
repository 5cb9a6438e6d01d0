package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Keys that are unknown, missing or too many, in the words that the user reads. */
class BadKeysTest {

    @TempDir
    private Path folder;

    private Written written = new Written(Path.of("."));

    @BeforeEach
    void writeIntoTheFolder() {
        written = new Written(folder);
    }

    private List<String> refusal(String... sections) {
        return written.refusal(Written.with(sections));
    }

    @ParameterizedTest
    @CsvSource({"resluts-in, results-in", "Notes, notes", "Results_In, results-in"})
    void anUnknownKeyIsAnsweredWithTheNearestOne(String wrong, String meant) {
        assertThat(refusal(wrong + ": metric"))
                .containsExactly(
                        "line.yaml:8:1 " + wrong + " = metric; is not a known key. Did you mean " + meant + "?");
    }

    @Test
    void aMisspeltKeyIsNotCalledMissingAsWell() {
        assertThat(refusal("coil: {thickness: 2 mm, widht: 240 mm, density: 7850 kg/m3, lenght: 900 m}"))
                .containsExactly(
                        "line.yaml:2:25 coil.widht = 240 mm; is not a known key of coil. Did you mean width?",
                        "line.yaml:2:61 coil.lenght = 900 m; is not a known key of coil. Did you mean length?");
    }

    @Test
    void aKeyUnlikeAnyOtherIsAnsweredWithAllThatAreAllowed() {
        assertThat(refusal("accumulator: {capacity: 72 m, colour: blue}"))
                .singleElement()
                .asString()
                .startsWith("line.yaml:4:31 accumulator.colour = blue; is not a known key of accumulator. "
                        + "Allowed here are: capacity, strands, stroke,");
    }

    @Test
    void aFormerKeyIsAnsweredWithItsNewName() {
        assertThat(refusal(
                        "process: {speed: 45 m/min, own-stops: {running: 3 h, standing: 4 min}, spoilt-per-stop: 4 m}"))
                .containsExactly(
                        "line.yaml:5:28 process.own-stops = {running: ...}; is now called process.downtime. Write the new"
                                + " name.",
                        "line.yaml:5:72 process.spoilt-per-stop = 4 m; is now called process.scrap-per-stop. Write the new"
                                + " name.");
    }

    @Test
    void aDuplicateKeyIsShownWithTheLineOfTheFirst() {
        assertThat(written.refusal(Written.with() + "title: again\n"))
                .containsExactly("line.yaml:8:1 title = again; is given twice, first in line 1. Leave out one.");
    }

    @Test
    void aMissingKeyIsShownWithWhatItMustBe() {
        assertThat(refusal("process: {acceleration: 0.2 m/s2}"))
                .containsExactly(
                        "line.yaml:5:10 process.speed; is missing; must be a speed with its unit, more than 0. "
                                + "Give the rated strip speed of the process, such as 45 m/min.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"process", "coil-change", "title"})
    void aMissingSectionIsShownAtTheTopOfTheFile(String section) {
        assertThat(written.refusal(Written.without(section)))
                .singleElement()
                .asString()
                .contains(" " + section + "; is missing; must be ");
    }

    @Test
    void whatThePracticeNeedsMustBeThere() {
        assertThat(written.refusal(Written.without("accumulator")))
                .containsExactly("line.yaml:1:1 accumulator; is missing; must be a group of keys, or the word none. "
                        + "Give the accumulator, or the word none, such as {capacity: 60 m}.");
        assertThat(refusal("entry: {uncoilers: 2}"))
                .containsExactly(
                        "line.yaml:3:8 entry.top-speed; is missing; must be a speed with its unit, more than 0. "
                                + "Give the greatest strip speed of the entry, such as 90 m/min.");
        assertThat(refusal("practice: rethread"))
                .containsExactly(
                        "line.yaml:6:14 coil-change.rethread; is missing; must be a time with its unit, more than"
                                + " 0, or a random one. Give the time to thread the line anew, for the practice of that name,"
                                + " such as {triangular: [6 min, 9 min, 15 min]}.");
    }

    @Test
    void twoWaysToSayOneThingAreRefused() {
        assertThat(refusal("coil: {thickness: 2 mm, width: 240 mm, density: 7850 kg/m3, length: 900 m, mass: 3 t}"))
                .containsExactly(
                        "line.yaml:2:76 coil.mass = 3 t; the size of the coil is already given by length;"
                                + " allowed is one of: length; mass; outer-diameter with inner-diameter. Leave out all but one.");
        assertThat(refusal("accumulator: {strands: 8, stroke: 9 m, capacity: 72 m}"))
                .singleElement()
                .asString()
                .contains("accumulator.capacity = 72 m; how the accumulator holds strip is already given by strands;");
        assertThat(refusal("run: {coil-changes: 10, time: 8 h}"))
                .singleElement()
                .asString()
                .contains("run.time = 8 h; the length of a run is already given by coil-changes;");
        assertThat(refusal("coils: {mix: []}"))
                .anyMatch(
                        problem -> problem.contains("coils = {mix: ...}; which coils come is already given by coil;"));
    }

    @Test
    void noWayToSayWhatMustBeSaidIsRefused() {
        assertThat(refusal("coil: {thickness: 2 mm, width: 240 mm, density: 7850 kg/m3}"))
                .singleElement()
                .asString()
                .contains("does not say the size of the coil; give one of: length; mass;");
        assertThat(refusal("accumulator: {reserve: 2 m}"))
                .singleElement()
                .asString()
                .contains("does not say how the accumulator holds strip; give one of: capacity; strands with stroke;");
        assertThat(written.refusal(Written.without("coil")))
                .singleElement()
                .asString()
                .contains("does not say which coils come; give one of: coil; coils.");
    }

    @Test
    void halfAWayIsRefused() {
        assertThat(refusal("coil: {thickness: 2 mm, width: 240 mm, density: 7850 kg/m3, outer-diameter: 1450 mm}"))
                .containsExactly("line.yaml:2:61 coil.inner-diameter; is missing; outer-diameter needs it. "
                        + "Add inner-diameter.");
        assertThat(refusal("accumulator: {capacity: 72 m, carriage-speed: 12 m/min}"))
                .containsExactly(
                        "line.yaml:4:31 accumulator.carriage-speed = 12 m/min; only goes with strands with stroke."
                                + " Leave it out, or give strands with stroke.");
    }
}
