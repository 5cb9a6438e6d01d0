package runthrough.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.scenario.ScenarioFile;
import runthrough.scenario.ScenarioReading;
import runthrough.scenario.log.LineLogReader;
import runthrough.scenario.log.LineLogReading;
import runthrough.scenario.source.Problem;
import runthrough.scenario.times.TimeSheetReader;
import runthrough.scenario.times.TimeSheetReading;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.SimulationException;

/**
 * Reads an input whose first letter says what it is: {@code s} a scenario, {@code c} a schedule of coils, {@code t} a time-study
 * sheet, {@code l} a log, {@code r} a request to the page. A capital letter: the rest says which {@link Slips} are made in a shipped
 * one. Any other letter stands for one of these. What is accepted is run.
 *
 * @param folder where files are put
 * @param request what asks the page
 * @param slips by the small letter of what they are made in
 */
record HostileInput(Path folder, HostileRequest request, Map<Character, Slips> slips) implements AutoCloseable {
    private static final String KINDS = "sctlrSCTLR";

    /** Long enough for a machine that is busy; what takes longer hangs. */
    private static final Duration LONGEST = Duration.ofSeconds(20);

    private static final int FEW_CHANGES = 30;

    private static final String SCHEDULED = """
            coils: {density: 7850 kg/m3, width: 200 mm, schedule: any.csv}
            entry: {uncoilers: 2, top-speed: 120 m/min}
            accumulator: {capacity: 100 m}
            process: {speed: 60 m/min}
            coil-change:
              join: [{join strip: 60 s}]
            run: {coil-changes: 20, replications: 2, target: 95 %}
            """;

    private static final String MEASURED = """
            coil: {thickness: 2 mm, width: 200 mm, density: 7850 kg/m3, length: 1000 m}
            entry: {uncoilers: 2, top-speed: 120 m/min}
            accumulator: {capacity: 100 m}
            process: {speed: 60 m/min}
            coil-change:
              join: [{weld: {sheet: any.csv}}]
            run: {coil-changes: 20, replications: 2, target: 95 %}
            """;

    static HostileInput open() throws IOException {
        Map<Character, Slips> slips = new HashMap<>();
        Shipped.byKind().forEach((kind, texts) -> slips.put(kind, Slips.in(texts.stream())));
        Path folder = Files.createTempDirectory("runthrough-fuzz");
        for (String table : Shipped.TABLES) {
            Files.copy(Shipped.FOLDER.resolve(table), folder.resolve(table));
        }
        return new HostileInput(folder, HostileRequest.open(), slips);
    }

    /** Fails when the input is neither used nor refused with a message. */
    void read(byte[] input) throws IOException, InterruptedException {
        if (input.length == 0) {
            return;
        }
        long begin = System.nanoTime();
        int found = KINDS.indexOf(input[0]);
        char kind = KINDS.charAt(found < 0 ? Math.floorMod(input[0], KINDS.length()) : found);
        byte[] rest = Arrays.copyOfRange(input, 1, input.length);
        char small = Character.toLowerCase(kind);
        byte[] text =
                kind == small ? rest : Objects.requireNonNull(slips.get(small)).made(rest);
        try {
            read(small, text);
        } catch (AssertionError | RuntimeException e) {
            throw new AssertionError(
                    "keep this as an input that failed: " + small + new String(text, StandardCharsets.UTF_8), e);
        }
        assertThat(Duration.ofNanos(System.nanoTime() - begin)).isLessThan(LONGEST);
    }

    private void read(char kind, byte[] bytes) throws IOException, InterruptedException {
        switch (kind) {
            case 's' -> scenario(bytes);
            case 'c' -> schedule(bytes);
            case 't' -> sheet(bytes);
            case 'l' -> log(bytes);
            default -> request.send(bytes);
        }
    }

    private void scenario(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("line.yaml"), bytes);
        use(ScenarioFile.open(file));
    }

    private void schedule(byte[] bytes) throws IOException {
        Files.write(folder.resolve("any.csv"), bytes);
        use(ScenarioFile.of(folder.resolve("line.yaml"), SCHEDULED));
    }

    private void sheet(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("any.csv"), bytes);
        TimeSheetReading reading = TimeSheetReader.read(file, "any.csv");
        if (reading instanceof TimeSheetReading.Refused refused) {
            refused(refused.problems());
        }
        use(ScenarioFile.of(folder.resolve("line.yaml"), MEASURED));
    }

    private void log(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("any.csv"), bytes);
        if (LineLogReader.read(file) instanceof LineLogReading.Refused refused) {
            refused(refused.problems());
        }
    }

    private static void use(ScenarioFile file) {
        ScenarioReading reading = file.read();
        if (reading instanceof ScenarioReading.Accepted accepted) {
            file.inputs();
            file.alternatives(List.of(), accepted);
            run(accepted.request());
        } else if (reading instanceof ScenarioReading.Refused refused) {
            Stream.of(refused.problems(), file.problemsOfAlternatives(List.of(), refused))
                    .filter(problems -> !problems.isEmpty())
                    .forEach(HostileInput::refused);
        }
    }

    /** A few coil changes of what was accepted. */
    private static void run(SimulationRequest request) {
        RunPlan plan = new RunPlan(
                new RunPlan.Extent.Changes(FEW_CHANGES),
                0,
                1,
                request.run().seed(),
                request.run().target());
        try {
            LineSimulator.of(request.line(), plan).run(0, Detail.CHANGES);
        } catch (SimulationException e) {
            assertThat(e).message().isNotBlank();
        }
    }

    /** Each message names its place in one line, in numbers that can be read, and nothing of the program's inside. */
    static void refused(List<Problem> problems) {
        assertThat(problems).isNotEmpty().allSatisfy(problem -> {
            assertThat(problem.line() > 0 || problem.rule().matches("(is empty|has no ).*"))
                    .isTrue();
            assertThat(problem.toString()).hasLineCount(1).doesNotContain("Exception", "java.", "runthrough.");
            // What is quoted is the user's.
            assertThat((problem.rule() + problem.remedy()).replaceAll("\"[^\"]*\"", ""))
                    .as("beside " + problem.value())
                    .doesNotContainPattern("\\d\\.\\d{7}");
            assertThat(problem.rule()).isNotBlank();
            assertThat(problem.remedy()).isNotBlank();
        });
    }

    @Override
    public void close() {
        request.close();
        try (Stream<Path> files = Files.list(folder)) {
            files.forEach(file -> file.toFile().delete());
        } catch (IOException e) {
            // A folder for temporary files: the system clears it.
        }
        folder.toFile().delete();
    }
}
