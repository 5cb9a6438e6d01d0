package runthrough.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import picocli.CommandLine;
import runthrough.cli.failure.Failures;
import runthrough.cli.terminal.BadInputException;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.cli.terminal.WholeFile;
import runthrough.report.sweep.Merge;

/**
 * {@code sweep} on Apache Spark: takes the arguments of {@code sweep} with {@code --out}, runs its shards as tasks, and merges them
 * to the bytes that one machine writes. A task brings all that it needs, the bytes of the files included, so that executors share no
 * disk; one that is lost is run again by another executor.
 */
public final class SparkSweep {
    /** Below this many cases a task costs more than it does; one with its resamples is as much work by itself. */
    private static final int LEAST_CASES = 50;

    private static final int MOST_TASKS = 10_000;

    private SparkSweep() {}

    public static void main(String[] args) {
        Environment environment = Environment.ofThisProcess();
        int code;
        try {
            code = run(List.of(args), environment);
        } catch (RuntimeException e) {
            code = new Failures(environment.err(), List.of(args).contains("--debug")).tell(e);
        }
        if (code != ExitCode.DONE) {
            // Also of a driver within a cluster nothing else is seen.
            throw new IllegalStateException("exit code " + code);
        }
    }

    private static int run(List<String> args, Environment environment) {
        int at = args.indexOf("--out");
        if (at < 0 || at + 1 == args.size()) {
            throw new BadInputException("a sweep on Spark needs --out FILE.");
        }
        Path out = Path.of(args.get(at + 1));
        List<String> others = new ArrayList<>(args);
        others.subList(at, at + 2).clear();
        SweepCommand command = new SweepCommand(environment);
        CommandLine line = new CommandLine(command);
        line.parseArgs(others.toArray(String[]::new));
        SweepCommand.Prepared sweep = command.prepared();
        int least = sweep.name().hasUncertainty() ? 1 : LEAST_CASES;
        int tasks = Math.max(1, Math.min(MOST_TASKS, sweep.name().cases() / least));
        ShardTask task = new ShardTask(others, contents(command, sweep), tasks);
        try (JavaSparkContext spark =
                new JavaSparkContext(new SparkConf().setIfMissing("spark.app.name", "runthrough"))) {
            List<Integer> shards = IntStream.rangeClosed(1, tasks).boxed().collect(Collectors.toList());
            return merged(spark.parallelize(shards, tasks).map(task::lines).collect(), out, environment);
        }
    }

    /** The bytes of all files that the sweep reads, by the names that the command line and the scenario give them. */
    private static Map<String, byte[]> contents(SweepCommand command, SweepCommand.Prepared sweep) {
        List<Path> files = new ArrayList<>(command.inputs());
        files.addAll(sweep.tables());
        Map<String, byte[]> contents = new LinkedHashMap<>();
        for (Path file : files) {
            if (file.isAbsolute() || file.normalize().startsWith("..")) {
                throw new BadInputException(file + "; must be within the folder that the sweep is started in.");
            }
            try {
                contents.put(file.normalize().toString(), Files.readAllBytes(file));
            } catch (IOException e) {
                throw new BadInputException(file + " cannot be read (" + e.getMessage() + ").");
            }
        }
        return contents;
    }

    private static int merged(List<String> parts, Path out, Environment environment) {
        try {
            Path folder = Files.createTempDirectory("runthrough-parts");
            try {
                List<Path> files = new ArrayList<>();
                for (String part : parts) {
                    Path file = folder.resolve("part-" + (files.size() + 1));
                    files.add(Files.writeString(file, part, StandardCharsets.UTF_8));
                }
                Merge merge = Merge.of(files);
                if (!merge.problems().isEmpty()) {
                    throw new BadInputException(merge.problems());
                }
                new WholeFile(out, "--out").write(merge::writeTo, environment);
                environment.out().println(out + ": " + merge.failed() + " cases could not be run");
                return merge.failed() == 0 ? ExitCode.DONE : ExitCode.CASE_FAILED;
            } finally {
                ShardTask.delete(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
