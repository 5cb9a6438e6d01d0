package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.cli.terminal.ExitCode;

/**
 * Commands that are killed while they write, at moments of a fixed seed, and two that write to one place at a time: each file is of the
 * one result or the other, whole, and after the next success nothing else lies about.
 */
class KilledTest {
    private static final String LINE = Session.LINE.replace("join strip: 60 s", "weld: {sheet: times.csv}") + """
            alternatives:
              rethread: {practice: rethread, coil-change.rethread: 500 s}
            """;

    private static final String SHEET = "weld\n62.5\n58.1\n71.4\n66\n60.9\n75.2\n64.8\n";

    private static final String LOG = """
            time,event,coil
            0,tail stopped,A1
            50,joint released,A1
            900,tail stopped,A2
            955,joint released,A2
            1800,tail stopped,A3
            """;

    /** The wait for the first sign of something written. */
    private static final int LONGEST_MS = 60_000;

    private static final int MOMENTS_MS = 500;

    @TempDir
    private Path folder;

    /** What the commands read: for the earlier result, or for the later one, by its title. */
    private Session inputs(String title, String[] command) throws IOException {
        Session session = new Session(folder)
                .write("line.yaml", LINE.replace("Quick line", title))
                .write("times.csv", SHEET + (title.equals("Later") ? "69.3\n" : ""))
                .write("log.csv", title.equals("Later") ? LOG : LOG.replace("1800", "1750"));
        if (command[0].equals("merge")) {
            Files.deleteIfExists(folder.resolve("cases.jsonl"));
            session.run("sweep", "line.yaml", "--vary", "entry.top-speed=100m/min,110m/min", "--out", "cases.jsonl");
        }
        return session;
    }

    private Map<String, String> files() throws IOException {
        Map<String, String> found = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                // As bytes, each a letter. Within this process the program has another working directory, and names a
                // table in full.
                String text = Files.readString(file, StandardCharsets.ISO_8859_1);
                found.put(folder.relativize(file).toString(), text.replace(folder + "/", ""));
            }
        }
        return found;
    }

    private Map<String, String> made(String title, String[] command) throws IOException {
        Session.Done done = inputs(title, command).run(command);
        assertThat(done.code()).as(done.err()).isZero();
        return files();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "run line.yaml --out out",
                "document line.yaml --out out",
                "size line.yaml --out out",
                "compare line.yaml --out out",
                "sensitivity line.yaml --out out",
                "limits line.yaml --out out",
                "speeds line.yaml --from 50m/min --to 70m/min --out out",
                "map line.yaml --points 20 --out out",
                "uncertainty line.yaml --resamples 50 --out out",
                "log line.yaml log.csv --out out",
                "times times.csv --out out --fragment work.yaml",
                "merge cases.jsonl --out merged.jsonl"
            })
    void killedAtAnyMoment_theEarlierResultOrTheLater(String words) throws IOException, InterruptedException {
        theEarlierResultOrTheLater(words, Process::destroyForcibly);
    }

    /** Java breaks a font that it reads on a thread that is interrupted: what is drawn then is neither. */
    @ParameterizedTest
    @ValueSource(
            strings = {"run line.yaml --out out", "document line.yaml --out out", "log line.yaml log.csv --out out"})
    void endedAtAnyMoment_theEarlierResultOrTheLater(String words) throws IOException, InterruptedException {
        theEarlierResultOrTheLater(words, process -> {
            process.destroy();
            return process;
        });
    }

    private void theEarlierResultOrTheLater(String words, UnaryOperator<Process> end)
            throws IOException, InterruptedException {
        String[] command = words.split(" ");
        Map<String, String> earlier = made("Earlier", command);
        inputs("Later", command);
        endWhileItWrites(command, new Random(words.hashCode()), end);

        Map<String, String> found = files();
        makeOld();
        Map<String, String> later = made("Later", command);
        assertThat(later).containsOnlyKeys(earlier.keySet());
        later.keySet().forEach(name -> assertThat(found.get(name)).as(name).isIn(earlier.get(name), later.get(name)));
    }

    private void endWhileItWrites(String[] command, Random random, UnaryOperator<Process> end)
            throws IOException, InterruptedException {
        long before = number(folder);
        Process process = ProcessTest.program(folder, command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        for (int i = 0; i < LONGEST_MS && process.isAlive() && number(folder) == before; i++) {
            Thread.sleep(1);
        }
        Thread.sleep(random.nextInt(MOMENTS_MS));
        end.apply(process).waitFor();
    }

    /** Fonts are files while a program draws. */
    @Test
    void temporaryFilesOfOneThatWasKilledGoWithTheNext() throws IOException, InterruptedException {
        Path temporary = Files.createDirectory(folder.resolve("tmp"));
        String[] command = {"document", "line.yaml", "--out", "out"};
        inputs("Later", command);
        ProcessBuilder document = ProcessTest.program(folder, command);
        document.command().add(1, "-Djava.io.tmpdir=" + temporary);
        document.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);

        Process killed = document.start();
        for (int i = 0; i < LONGEST_MS && number(temporary) == 0; i++) {
            Thread.sleep(1);
        }
        Thread.sleep(MOMENTS_MS);
        killed.destroyForcibly().waitFor();
        try (Stream<Path> left = Files.walk(temporary)) {
            for (Path file : left.filter(Files::isRegularFile).toList()) {
                Files.setLastModifiedTime(file, FileTime.from(Instant.now().minus(Duration.ofMinutes(5))));
            }
        }

        assertThat(temporary).isNotEmptyDirectory();
        assertThat(document.start().waitFor()).isZero();
        assertThat(temporary).isEmptyDirectory();
    }

    /** It goes on behind its last whole line, and ends with the bytes of one that was never killed. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "sweep line.yaml --vary entry.top-speed=100m/min..150m/min:200 --out many.jsonl",
                "sweep line.yaml --vary entry.top-speed=100m/min..150m/min:60 --uncertainty 50 --shard 2/3 --out many.jsonl"
            })
    void aSweepThatWasKilledGoesOn(String words) throws IOException, InterruptedException {
        String[] command = words.split(" ");
        String whole = Objects.requireNonNull(made("Later", command).get("many.jsonl"));
        Files.delete(folder.resolve("many.jsonl"));
        endWhileItWrites(command, new Random(1), Process::destroyForcibly);

        String found = Files.readString(folder.resolve("many.jsonl"));
        assertThat(whole).startsWith(found.substring(0, found.lastIndexOf('\n') + 1));
        assertThat(made("Later", command))
                .containsEntry("many.jsonl", whole)
                .containsOnlyKeys("line.yaml", "log.csv", "many.jsonl", "times.csv");
    }

    /** Two that write to one folder at the same instant, as processes and as threads: the result is one of the two, whole. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void twoAtOnceGiveTheResultOfOne(boolean asProcesses) throws Exception {
        List<String[]> commands = Stream.of("7", "8")
                .map(seed -> new String[] {"run", "line.yaml", "--seed", seed, "--out", "out"})
                .toList();
        List<Map<String, String>> alone = new ArrayList<>();
        for (String[] command : commands) {
            alone.add(made("Later", command));
        }
        List<Future<Integer>> codes = new ArrayList<>();
        ExecutorService two = Executors.newFixedThreadPool(2);
        for (String[] command : commands) {
            codes.add(two.submit(() -> asProcesses
                    ? ProcessTest.program(folder, command)
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    : new Session(folder).run(command).code()));
        }
        for (Future<Integer> code : codes) {
            assertThat(code.get()).isEqualTo(ExitCode.DONE);
        }
        two.shutdown();
        assertThat(files()).isIn(alone);
    }

    private static long number(Path place) throws IOException {
        try (Stream<Path> all = Files.list(place)) {
            return all.count();
        }
    }

    /** What is a minute old or less is left alone: its run may be about to lock it. */
    private void makeOld() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path left : all.filter(file -> file.toString().contains(".part"))
                    .sorted(Comparator.reverseOrder())
                    .toList()) {
                Files.setLastModifiedTime(left, FileTime.from(Instant.now().minus(Duration.ofMinutes(5))));
            }
        }
    }
}
