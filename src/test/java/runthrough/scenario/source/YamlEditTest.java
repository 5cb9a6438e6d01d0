package runthrough.scenario.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Changes of a YAML text stay where they belong: what is not changed is there to the letter. */
class YamlEditTest {

    private static Raw read(String text) {
        Problems problems = new Problems();
        Optional<Raw> raw = YamlText.read(new TextFile("line.yaml", text), problems);
        assertThat(problems.errors()).isEmpty();
        return raw.orElseThrow();
    }

    private static String edited(String before, String after) {
        return YamlEdit.apply(before, read(before), read(after));
    }

    @Test
    void aValueGivesWayAndTheCommentBehindItStays() {
        assertThat(edited("speed: 45 m/min   # as measured\nupper: 2\n", "{speed: 50 m/min, upper: 2}"))
                .isEqualTo("speed: 50 m/min   # as measured\nupper: 2\n");
    }

    @Test
    void aValueWithinBracesGivesWay() {
        assertThat(edited(
                        "entry: {uncoilers: 2, top-speed: 90 m/min} # fast\n",
                        "entry: {uncoilers: 3, top-speed: 90 m/min}"))
                .isEqualTo("entry: {uncoilers: 3, top-speed: 90 m/min} # fast\n");
    }

    @Test
    void aNewKeyStandsBehindTheLastOfItsBlockWithTheSameIndentation() {
        assertThat(edited(
                        "process:\n  speed: 45 m/min # rated\n# the work\nwork: 1\n",
                        "{process: {speed: 45 m/min, path: 3 m}, work: 1}"))
                .isEqualTo("process:\n  speed: 45 m/min # rated\n  path: 3 m\n# the work\nwork: 1\n");
    }

    @Test
    void aNewKeyWithinBracesStandsBeforeTheBrace() {
        assertThat(edited("entry: {uncoilers: 2}\n", "entry: {uncoilers: 2, creep: {speed: 5 m/min, length: 2 m}}"))
                .isEqualTo("entry: {uncoilers: 2, creep: {speed: 5 m/min, length: 2 m}}\n");
    }

    @Test
    void aKeyOnLinesOfItsOwnGoesWithItsLines() {
        assertThat(edited("a: 1\nb:\n  c: 2\n  d: 3\ne: 4\n", "{a: 1, e: 4}")).isEqualTo("a: 1\ne: 4\n");
    }

    @Test
    void anItemIsAddedToAListAsTheOthersStandInIt() {
        assertThat(edited(
                        "join:\n  - weld: 30 s   # long\n\nrun: 1\n",
                        "{join: [{weld: 30 s}, {inspect: 10 s}], run: 1}"))
                .isEqualTo("join:\n  - weld: 30 s   # long\n  - {inspect: 10 s}\n\nrun: 1\n");
        assertThat(edited("join: [{weld: 30 s}]\n", "join: [{weld: 30 s}, {inspect: 10 s}]"))
                .isEqualTo("join: [{weld: 30 s}, {inspect: 10 s}]\n");
    }

    @Test
    void anItemGoesWithItsLinesAndTheOthersStay() {
        assertThat(edited("- a: 1\n- b: 2 # two\n- c: 3\n", "[{a: 1}, {c: 3}]")).isEqualTo("- a: 1\n- c: 3\n");
        assertThat(edited("- a: 1\n- b:\n    x: 2\n    y: 3\n", "[{a: 1}]")).isEqualTo("- a: 1\n");
    }

    @Test
    void aKeyWithoutAValueIsGivenOne() {
        assertThat(edited("a:\nb: 2\n", "{a: 5 m, b: 2}")).isEqualTo("a: 5 m\nb: 2\n");
    }

    @Test
    void lettersOutsideTheBasicPlaneDoNotShiftWhatFollows() {
        assertThat(edited("title: \"\uD83D\uDE80 ü\"\nspeed: 1 m/s\n", "{title: \"\uD83D\uDE80 ü\", speed: 2 m/s}"))
                .isEqualTo("title: \"\uD83D\uDE80 ü\"\nspeed: 2 m/s\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"fit up|fit up", "2 %|2 %", "a: b|\"a: b\"", "- x|\"- x\"", "''|\"\"", "#5|\"#5\"", "it's|\"it's\""
            })
    void textIsQuotedWhereYamlWouldReadItAsSomethingElse(String text, String written) {
        Raw.Scalar scalar = new Raw.Scalar(text, Place.whole("x"));
        assertThat(FlowText.of(scalar)).isEqualTo(written);
        assertThat(((Raw.Scalar) ((Raw.Sequence) read("[" + written + "]"))
                                .items()
                                .get(0))
                        .text())
                .isEqualTo(text);
    }

    static Stream<Path> shipped() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList().stream();
        }
    }

    /** Random changes of values, keys and items: what is read afterwards is what was asked for, and comments are all there. */
    @ParameterizedTest
    @MethodSource("shipped")
    void whatIsReadAfterwardsIsWhatWasAskedFor(Path file) throws IOException {
        String text = Files.readString(file);
        Random random = new Random(11);
        for (int i = 0; i < 60; i++) {
            Raw before = read(text);
            Raw after = changed(before, random, 0);
            String now = YamlEdit.apply(text, before, after);
            assertThat(FlowText.of(read(now)))
                    .as("change %s of %s", i, file)
                    .isEqualTo(FlowText.of(ordered(after, read(now))));
        }
    }

    /** {@code wanted} with its keys in the order of {@code as}: new keys stand last. */
    private static Raw ordered(Raw wanted, Raw as) {
        if (wanted instanceof Raw.Mapping mapping
                && as instanceof Raw.Mapping order
                && mapping.entries().size() == order.entries().size()) {
            List<Raw.Entry> entries = new ArrayList<>();
            for (Raw.Entry entry : order.entries()) {
                mapping.entries().stream()
                        .filter(own -> own.key().equals(entry.key()))
                        .map(own -> new Raw.Entry(own.key(), own.place(), ordered(own.value(), entry.value())))
                        .forEach(entries::add);
            }
            return new Raw.Mapping(entries, mapping.place());
        } else if (wanted instanceof Raw.Sequence list
                && as instanceof Raw.Sequence order
                && list.items().size() == order.items().size()) {
            List<Raw> items = new ArrayList<>();
            for (int i = 0; i < list.items().size(); i++) {
                items.add(ordered(list.items().get(i), order.items().get(i)));
            }
            return new Raw.Sequence(items, list.place());
        }
        return wanted;
    }

    private static Raw changed(Raw raw, Random random, int depth) {
        if (depth > 0 && random.nextInt(12) == 0) {
            return new Raw.Scalar(random.nextBoolean() ? "7 m" : "x: {y", raw.place());
        }
        if (raw instanceof Raw.Mapping mapping) {
            List<Raw.Entry> entries = new ArrayList<>();
            for (Raw.Entry entry : mapping.entries()) {
                if (random.nextInt(20) > 0 || mapping.entries().size() == 1) {
                    entries.add(new Raw.Entry(entry.key(), entry.place(), changed(entry.value(), random, depth + 1)));
                }
            }
            if (entries.isEmpty() || random.nextInt(10) == 0) {
                entries.add(new Raw.Entry("added", raw.place(), new Raw.Scalar("1 s", raw.place())));
            }
            return new Raw.Mapping(entries, raw.place());
        } else if (raw instanceof Raw.Sequence list) {
            List<Raw> items = new ArrayList<>();
            for (Raw item : list.items()) {
                if (random.nextInt(12) > 0 || list.items().size() == 1) {
                    items.add(changed(item, random, depth + 1));
                }
            }
            if (items.isEmpty() || random.nextInt(8) == 0) {
                items.add(new Raw.Scalar("more", raw.place()));
            }
            return new Raw.Sequence(items, raw.place());
        }
        return random.nextInt(4) == 0 ? new Raw.Scalar("3.5 m/s", raw.place()) : raw;
    }

    @Test
    void aKeyBehindAQuestionMarkHasOthersBesideIt() {
        assertThat(edited(
                        "work:\n  ? crew\n  : 2\n  tail: 1\nlast: 1\n", "{work: {crew: 3, tail: 1, join: 2}, last: 1}"))
                .isEqualTo("work:\n  ? crew\n  : 3\n  tail: 1\n  join: 2\nlast: 1\n");
    }

    @Test
    void aListWithItsDashesBelowItsKeyGivesWay() {
        assertThat(edited("shear:\n  triangular:\n  - 1 s\n  - 2 s\nlast: 1\n", "{shear: {triangular: 5 s}, last: 1}"))
                .isEqualTo("shear:\n  triangular:\n    5 s\nlast: 1\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void linesMayEndAsOnAnySystem(String end) {
        String before =
                "# mine\nspeed: 45 m/min # as measured\nwork:\n  crew: 2\n  tail: 1\n  # next\n  more: 1\nlast: 1\n";
        String after =
                edited(before.replace("\n", end), "{speed: 50 m/min, work: {crew: 2, more: 1, join: 3}, last: 1}");

        assertThat(after.replace("\r\n", "\n").replace("\r", "\n"))
                .isEqualTo(
                        "# mine\nspeed: 50 m/min # as measured\nwork:\n  crew: 2\n  # next\n  more: 1\n  join: 3\nlast: 1\n");
    }
}
