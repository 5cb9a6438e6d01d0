package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.OwnProcess;

/** The program as a process of its own: what shells and the system see of it. */
class ProcessTest {
    private static final int LONGEST_SECONDS = 60;

    @TempDir
    private Path folder;

    private final List<Process> started = new ArrayList<>();

    @BeforeEach
    void writeScenario() {
        new Session(folder).write("line.yaml", Session.LINE).write("marginal.yaml", Session.MARGINAL);
    }

    @AfterEach
    void endWhatWasStarted() {
        started.forEach(Process::destroyForcibly);
    }

    private ProcessBuilder program(String... args) {
        return program(folder, args);
    }

    /** The program as a process that works in {@code folder}. */
    static ProcessBuilder program(Path folder, String... args) {
        return OwnProcess.of(Main.class, List.of(args)).directory(folder.toFile());
    }

    private Process start(ProcessBuilder builder) throws IOException {
        Process process = builder.start();
        started.add(process);
        return process;
    }

    private static int codeOf(Process process) throws InterruptedException {
        assertThat(process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)).isTrue();
        return process.exitValue();
    }

    private static String text(java.io.InputStream stream) throws IOException {
        return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }

    /** The commands whose classes a start of the program with {@code args} loads. */
    private List<String> commandsLoaded(String... args) throws IOException, InterruptedException {
        Path log = folder.resolve("loaded.txt");
        ProcessBuilder builder = program(args);
        builder.command().add(1, "-Xlog:class+load:file=" + log);
        assertThat(codeOf(start(builder.redirectOutput(ProcessBuilder.Redirect.DISCARD))))
                .isZero();
        return Pattern.compile("runthrough\\.cli\\.(\\w+)Command ")
                .matcher(Files.readString(log))
                .results()
                .map(found -> found.group(1))
                .distinct()
                .toList();
    }

    @Test
    void aStartLoadsNoCommandThatIsNotAskedFor() throws IOException, InterruptedException {
        assertThat(commandsLoaded("--version")).isEmpty();
        // Runthrough: the program itself, with its help.
        assertThat(commandsLoaded("keys")).containsExactlyInAnyOrder("Runthrough", "Keys");
    }

    @Test
    void inAPipeNothingButTheVerdictIsPrinted() throws IOException, InterruptedException {
        Process process = start(program("run", "line.yaml", "--replications", "5000"));

        assertThat(text(process.getInputStream())).startsWith("Quick line").doesNotContain("\u001B[", "\r");
        assertThat(text(process.getErrorStream())).isEmpty();
        assertThat(codeOf(process)).isZero();
    }

    @Test
    void exitCodeReachesTheShell() throws IOException, InterruptedException {
        assertThat(codeOf(start(program("run", "marginal.yaml", "--no-report", "--require-target"))))
                .isEqualTo(3);
        assertThat(codeOf(start(program("run", "nowhere.yaml")))).isEqualTo(2);
    }

    @Test
    void endedInTheMiddleItLeavesNothingBehind() throws IOException, InterruptedException {
        Process process = start(program("run", "marginal.yaml", "--out", "out/report", "--replications", "100000"));
        waitUntilSomethingIsWritten(folder.resolve("out"));

        process.destroy();

        assertThat(codeOf(process)).isNotZero();
        assertThat(folder.resolve("out")).doesNotExist();
    }

    private static void waitUntilSomethingIsWritten(Path place) throws InterruptedException {
        for (int i = 0; i < 10 * LONGEST_SECONDS && !Files.exists(place); i++) {
            Thread.sleep(100);
        }
        assertThat(place).exists();
    }

    /** At moments between the first temporary file and the open page. */
    @ParameterizedTest
    @ValueSource(ints = {0, 150, 300, 450, 600, 800})
    void aPageThatIsEndedWhileItStartsLeavesNothingBehind(int millis) throws IOException, InterruptedException {
        Path temporary = Files.createDirectory(folder.resolve("temporary"));
        ProcessBuilder builder = program("serve", "--no-browser");
        builder.command().add(1, "-Djava.io.tmpdir=" + temporary);
        Process process = start(builder.redirectErrorStream(true));
        while (process.isAlive() && isEmpty(temporary)) {
            Thread.sleep(5);
        }
        Thread.sleep(millis);

        process.toHandle().destroy();

        assertThat(text(process.getInputStream())).doesNotContain("Exception");
        assertThat(codeOf(process)).isNotZero();
        assertThat(isEmpty(temporary)).isTrue();
    }

    /** What the virtual machine itself keeps there does not count. */
    private static boolean isEmpty(Path temporary) throws IOException {
        try (Stream<Path> all = Files.list(temporary)) {
            return all.noneMatch(file -> file.getFileName().toString().startsWith("runthrough"));
        }
    }

    @Test
    void aFolderForTemporaryFilesThatCannotBeWrittenIsNamed() throws IOException, InterruptedException {
        for (String command : List.of("run", "serve")) {
            ProcessBuilder builder =
                    command.equals("run") ? program("run", "line.yaml") : program("serve", "--no-browser");
            builder.command().add(1, "-Djava.io.tmpdir=/nonexistent");
            Process process = start(builder);

            assertThat(text(process.getErrorStream()))
                    .isEqualToIgnoringNewLines(
                            "the folder for temporary files, /nonexistent, cannot be written to, or is full. Give"
                                    + " another one: java -Djava.io.tmpdir=FOLDER -jar runthrough.jar ...");
            assertThat(codeOf(process)).isEqualTo(2);
        }
        assertThat(folder.resolve("reports")).doesNotExist();
    }

    /** What is no file: it would be another name, or another date of the report. */
    @Test
    void aWordThatTheLocaleCannotReadIsSaidInPlainWords() throws IOException, InterruptedException {
        ProcessBuilder shell = program("run", "line.yaml", "--date").directory(folder.toFile());
        shell.command().addAll(0, List.of("sh", "-c", "exec \"$@\" \"$(printf '3 M\\303\\244rz 2031')\"", "sh"));
        shell.environment().put("LC_ALL", "C");
        Process process = start(shell);

        assertThat(text(process.getErrorStream()))
                .startsWith("3 M")
                .contains("rz 2031; has letters that the present locale cannot read. Set LC_ALL=C.UTF-8");
        assertThat(codeOf(process)).isEqualTo(2);
        assertThat(folder.resolve("reports")).doesNotExist();
    }

    @Test
    void aNameThatTheLocaleCannotWriteIsSaidInPlainWords() throws IOException, InterruptedException {
        Files.copy(folder.resolve("line.yaml"), folder.resolve("l\u00fcbeck.yaml"));
        ProcessBuilder shell = new ProcessBuilder(program("check").command()).directory(folder.toFile());
        shell.command().addAll(0, List.of("sh", "-c", "exec \"$@\" l*beck.yaml", "sh"));
        shell.environment().put("LC_ALL", "C");
        Process process = start(shell);

        String said = text(process.getErrorStream());
        assertThat(said)
                .contains("Set LC_ALL=C.UTF-8, or give the file a plain name.")
                .doesNotContain("Exception");
        assertThat(codeOf(process)).isEqualTo(2);
    }

    @Test
    void aFolderForTemporaryFilesThatTheLocaleCannotWriteIsSaidToBeThat() throws IOException, InterruptedException {
        Path temporary = Files.createDirectory(folder.resolve("l\u00fcbeck"));
        ProcessBuilder builder = program("run", "line.yaml");
        builder.command().add(1, "-Djava.io.tmpdir=" + temporary);
        ProcessBuilder shell = new ProcessBuilder(builder.command()).directory(folder.toFile());
        shell.environment().put("LC_ALL", "C");
        Process process = start(shell);

        assertThat(text(process.getErrorStream()))
                .contains("has a name that the present locale cannot write. Give another one: java -Djava.io.tmpdir")
                .doesNotContain("Exception");
        assertThat(codeOf(process)).isEqualTo(2);
    }

    /** What programs read is UTF-8, and in no language's own digits. */
    @ParameterizedTest
    @ValueSource(strings = {"schema", "completion", "keys", "run --help"})
    void whatIsPrintedForProgramsIsTheSameInEveryLocale(String command) throws IOException, InterruptedException {
        List<String> printed = new ArrayList<>();
        for (List<String> locale : List.of(List.of("en", "C.UTF-8"), List.of("ar", "C"), List.of("tr", "C"))) {
            ProcessBuilder builder = program(command.split(" "));
            builder.command().add(1, "-Duser.language=" + locale.get(0));
            builder.command().add(1, "-Duser.country=EG");
            builder.environment().put("LC_ALL", locale.get(1));
            Process process = start(builder);
            printed.add(text(process.getInputStream()));
            assertThat(codeOf(process)).isZero();
        }

        assertThat(printed).hasSize(3).containsOnly(printed.get(0));
    }

    /** Files would be put into another folder, whose name is what the locale makes of this one. */
    @Test
    void aFolderThatTheLocaleCannotWriteIsNoPlaceToWorkIn() throws IOException, InterruptedException {
        Path inside = Files.createDirectory(folder.resolve("l\u00fcbeck"));
        ProcessBuilder builder =
                program(inside, "run", folder.resolve("line.yaml").toString(), "--out", "report");
        builder.environment().put("LC_ALL", "C");
        Process process = start(builder);

        assertThat(text(process.getErrorStream()))
                .startsWith(
                        "the present folder is gone, or has a name that the present locale cannot write. Set LC_ALL=C.UTF-8")
                .doesNotContain("Exception");
        assertThat(codeOf(process)).isEqualTo(2);
        assertThat(inside).isEmptyDirectory();
        try (Stream<Path> beside = Files.list(folder)) {
            assertThat(beside.filter(Files::isDirectory)).containsExactly(inside);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "run --help"})
    void helpForAReaderWhoHasGoneIsQuiet(String words) throws IOException, InterruptedException {
        Process process = start(program(words.split(" ")));
        process.getInputStream().close();

        assertThat(codeOf(process)).isEqualTo(141);
        assertThat(text(process.getErrorStream())).isEmpty();
    }

    /** Enough lines to fill any pipe; the first is all that is read. */
    @Test
    void aReaderThatHasSeenEnoughEndsItQuietly() throws IOException, InterruptedException {
        Process process = start(program("sweep", "line.yaml", "--vary", "entry.top-speed=80m/min..200m/min:100000"));
        assertThat(new String(process.getInputStream().readNBytes(10), StandardCharsets.UTF_8))
                .isEqualTo("{\"case\":1,");

        process.getInputStream().close();

        assertThat(codeOf(process)).isEqualTo(141);
        assertThat(text(process.getErrorStream())).isEmpty();
    }

    @Test
    void aFullDiskIsSaid() throws IOException, InterruptedException {
        Path full = Path.of("/dev/full");
        Assumptions.assumeTrue(Files.exists(full), "a device that is always full");
        Process process =
                start(program("run", "line.yaml", "--no-report", "--json").redirectOutput(full.toFile()));

        assertThat(text(process.getErrorStream()))
                .startsWith("standard output could not be written to the end: it is closed, or the disk is full.");
        assertThat(codeOf(process)).isEqualTo(2);
    }

    /** As by {@code | head}: whoever reads has seen enough. */
    @Test
    void aPipeThatNobodyReadsAnyMoreEndsItQuietly() throws IOException, InterruptedException {
        Assumptions.assumeTrue(Files.exists(Path.of("/proc/self/fd")), "a system that says what standard output is");
        Process process = start(program("keys"));
        process.getInputStream().close();

        assertThat(text(process.getErrorStream())).isEmpty();
        assertThat(codeOf(process)).isEqualTo(141);
    }

    @Test
    void standardOutputThatIsClosedLeavesTheReportWhole() throws IOException, InterruptedException {
        ProcessBuilder shell =
                new ProcessBuilder(program("run", "line.yaml", "--out", "out").command());
        shell.command().addAll(0, List.of("sh", "-c", "exec \"$@\" >&-", "sh"));
        Process process = start(shell.directory(folder.toFile()));

        assertThat(text(process.getErrorStream())).endsWith("Files that were asked for, if any, are there.\n");
        assertThat(codeOf(process)).isEqualTo(2);
        assertThat(folder.resolve("out/report.html")).exists();
    }

    @Test
    void memoryThatIsNotEnoughIsSaid() throws IOException, InterruptedException {
        ProcessBuilder builder =
                program("run", "marginal.yaml", "--out", "out", "--coil-changes", "1000000", "--replications", "50");
        builder.command().add(1, "-Xmx24m");
        Process process = start(builder);

        assertThat(text(process.getErrorStream())).contains("out of memory; run fewer coil changes or replications");
        assertThat(codeOf(process)).isEqualTo(2);
        assertThat(folder.resolve("out")).doesNotExist();
    }

    /** One request asks for more than there is room for; the next one is answered. */
    @Test
    void aPageWithoutMemoryForOneRequestAnswersTheNext() throws IOException, InterruptedException {
        ProcessBuilder builder = program("serve", "--no-browser");
        builder.command().add(1, "-Xmx64m");
        Process process = start(builder);
        String said = process.inputReader().readLine();
        URI page = URI.create(said.replaceAll(".*(http://[^ ]*).*", "$1"));
        String large = Session.MARGINAL
                .replace("coil-changes: 21", "coil-changes: 200000")
                .replace("replications: 3", "replications: 20");

        assertThat(asked(page.resolve("/api/tables"), large).body()).contains("It needs more memory than there is.");
        assertThat(answered(page.resolve("/api/answer"), Session.LINE).statusCode())
                .isEqualTo(200);
    }

    /** Asks once more where the connection is closed: short memory may have ended the thread that reads it. */
    private static HttpResponse<String> answered(URI uri, String scenario) throws IOException, InterruptedException {
        try {
            return asked(uri, scenario);
        } catch (HttpTimeoutException e) {
            throw e;
        } catch (IOException e) {
            return asked(uri, scenario);
        }
    }

    @Test
    void aPageThatIsOpenToTheNetworkSaysWhatThatMeans() throws IOException {
        Process process = start(program("serve", "--no-browser", "--network"));
        BufferedReader said = process.inputReader();

        assertThat(said.readLine())
                .matches("The page is at http://127\\.0\\.0\\.1:\\d+/\\?token=[\\w-]{22}  \\(Ctrl-C ends it\\)");
        assertThat(Stream.generate(() -> line(said)).takeWhile(line -> !line.endsWith("ends with the page.")))
                .contains(
                        "It is open to the local network. Whoever has a link can use the page and this machine's processors, and")
                .anyMatch(line -> line.contains("What is sent is not encrypted"));
        process.destroy();
    }

    private static String line(BufferedReader said) {
        try {
            return String.valueOf(said.readLine());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static HttpResponse<String> asked(URI uri, String scenario) throws IOException, InterruptedException {
        String body =
                new ObjectMapper().createObjectNode().put("text", scenario).toString();
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(uri)
                                .timeout(Duration.ofSeconds(LONGEST_SECONDS))
                                .header("Content-Type", "application/json")
                                .POST(HttpRequest.BodyPublishers.ofString(body))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
    }
}
