package runthrough.crosscheck;

import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.random.DrawTable;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.SimulationException;

/** The engine in {@code src/test/python}: one folder for each case, one Python for all of them. */
final class SecondEngine {
    private static final Path PROGRAM = Path.of("src", "test", "python", "line_model.py");
    /** The system's own Python has the system's SimPy, whatever other Python stands first in the path. */
    private static final String PYTHON = "/usr/bin/python3";

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .build();
    private static final int MINUTES = 5;

    private final Path folder;

    SecondEngine(Path folder) {
        this.folder = folder;
    }

    /** Whether this machine has what it needs. */
    static boolean isInstalled() {
        try {
            return start("-c", "import simpy").waitFor() == 0;
        } catch (IOException noPython) {
            return false;
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Runs replication 0 of every case; the results in the same order. */
    List<JsonNode> run(List<Case> cases) throws IOException, InterruptedException {
        for (int i = 0; i < cases.size(); i++) {
            write(cases.get(i), Files.createDirectories(place(i)));
        }
        Process python = start("-B", PROGRAM.toString(), folder.toString());
        String said = new String(python.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (!python.waitFor(MINUTES, TimeUnit.MINUTES) || python.exitValue() != 0) {
            throw new IllegalStateException("the second engine failed: " + said);
        }
        return IntStream.range(0, cases.size()).mapToObj(this::result).toList();
    }

    private Path place(int index) {
        return folder.resolve(String.format(Locale.ROOT, "%05d", index));
    }

    private static void write(Case one, Path place) throws IOException {
        MAPPER.writeValue(place.resolve("line.json").toFile(), LineDocument.of(one.line(), one.plan()));
        RunPlan plan = one.plan();
        int changes = plan.extent() instanceof Extent.Changes extent ? extent.changes() : 60;
        int draws = Math.max(30 * changes + 150, 2 * restarts(one) + 50);
        try (Writer out = Files.newBufferedWriter(place.resolve("luck.csv"))) {
            new DrawTable(one.line(), plan.seed(), 0, changes + 8, draws).writeTo(out);
        }
    }

    /** About how often a process that restarts into the next stop draws a restart delay. */
    private static int restarts(Case one) {
        try {
            return LineSimulator.of(one.line(), one.plan())
                    .run(0, Detail.CHANGES)
                    .totals()
                    .starvedStops();
        } catch (SimulationException refused) {
            return 0;
        }
    }

    private JsonNode result(int index) {
        try {
            return MAPPER.readTree(place(index).resolve("result.json").toFile());
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    private static Process start(String... arguments) throws IOException {
        return new ProcessBuilder(Stream.concat(Stream.of(PYTHON), Arrays.stream(arguments))
                        .toList())
                .redirectErrorStream(true)
                .start();
    }
}
