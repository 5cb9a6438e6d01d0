package runthrough.bars;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Whole commands, one jar after the other: processor time (s), which shows more than the clock where others use the machine, time by
 * the clock (s), and the most memory that the process held (MiB; Linux only).
 */
final class CommandBars {
    /** In an argument, the folder of the scenarios of a jar's edition. */
    private static final String LINES = "LINES/";

    private static final int TIMES = 5;
    private static final int TIMES_IF_LONG = 3;
    private static final double KIB_IN_MIB = 1024;
    private static final Pattern MINUTES_AND_SECONDS = Pattern.compile("(\\d+)m([\\d.]+)s");
    private static final Pattern PEAK = Pattern.compile("VmHWM:\\s+(\\d+) kB");

    private final List<String> jars;
    private final List<Path> lines;

    /** Commands of {@code jars}, each with the scenarios of its edition in its folder of {@code lines}. */
    CommandBars(List<String> jars, List<Path> lines) {
        this.jars = jars;
        this.lines = lines;
    }

    private record Measured(double processor, double clock, double memory) {}

    void print(PrintStream out) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("bars");
        String line = LINES + "tube-line.yaml";
        out.printf("%-34s%s%n", "", "processor s, clock s, peak MiB, jar by jar");
        row(out, TIMES, "--version", "--version");
        row(out, TIMES, "check", "check", line);
        row(out, TIMES, "run, no report, 10,000 changes", "run", line, "--no-report");
        row(out, TIMES, "the same, 1,000,000 changes", "run", line, "--no-report", "--coil-changes", "20000");
        row(out, TIMES_IF_LONG, "the same, 4,000,000, one thread", many(line, 1));
        row(out, TIMES_IF_LONG, "the same, 4,000,000, two threads", many(line, 2));
        row(out, TIMES, "coating line, 500,000 changes", coating());
        row(out, TIMES, "run with report", "run", line, "--out", folder + "/run");
        row(out, TIMES, "document", "document", line, "--out", folder + "/document");
        row(out, TIMES, "times", "times", LINES + "tube-line-times.csv", "--out", folder + "/times");
        for (String study : List.of("limits", "size", "speeds", "sensitivity", "compare", "map")) {
            row(out, TIMES, study, study, line, "--no-report");
        }
    }

    private static String[] many(String line, int threads) {
        return new String[] {"run", line, "--no-report", "--coil-changes", "80000", "--threads", "" + threads};
    }

    private static String[] coating() {
        return new String[] {
            "run", LINES + "coating-line.yaml", "--no-report", "--coil-changes", "10000", "--replications", "50"
        };
    }

    private void row(PrintStream out, int times, String name, String... arguments)
            throws IOException, InterruptedException {
        List<Medians> medians = List.of(
                new Medians(jars.size(), times), new Medians(jars.size(), times), new Medians(jars.size(), times));
        for (int time = 0; time < times; time++) {
            for (int jar = 0; jar < jars.size(); jar++) {
                String folder = lines.get(jar) + "/";
                Measured one = run(
                        jars.get(jar),
                        Stream.of(arguments)
                                .map(argument -> argument.replace(LINES, folder))
                                .toList());
                medians.get(0).set(jar, time, one.processor());
                medians.get(1).set(jar, time, one.clock());
                medians.get(2).set(jar, time, one.memory());
            }
        }
        out.printf("%-34s", name);
        for (int jar = 0; jar < jars.size(); jar++) {
            out.printf(
                    Locale.ROOT,
                    "%8.2f %6.2f %5.0f",
                    medians.get(0).of(jar),
                    medians.get(1).of(jar),
                    medians.get(2).of(jar));
        }
        out.println();
    }

    /** One process; its processor time is the shell's own account of what its children took. No numbers where it failed. */
    private static Measured run(String jar, List<String> arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(
                List.of("sh", "-c", "\"$@\" > /dev/null 2>&1; code=$?; times; exit $code", "sh", "java"));
        command.addAll(List.of("-jar", jar));
        command.addAll(arguments);
        long begin = System.nanoTime();
        Process process = new ProcessBuilder(command).start();
        double peak = 0;
        while (process.isAlive()) {
            peak = Math.max(
                    peak,
                    process.descendants()
                            .flatMapToDouble(CommandBars::peakMemory)
                            .max()
                            .orElse(0));
            Thread.sleep(5);
        }
        double clock = (System.nanoTime() - begin) / 1e9;
        if (process.exitValue() != 0) {
            return new Measured(Double.NaN, Double.NaN, Double.NaN);
        }
        String times = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        Matcher ofChildren =
                MINUTES_AND_SECONDS.matcher(times.lines().skip(1).findFirst().orElse(""));
        return new Measured(
                ofChildren.results().mapToDouble(CommandBars::seconds).sum(), clock, peak);
    }

    private static double seconds(MatchResult time) {
        return 60 * Double.parseDouble(time.group(1)) + Double.parseDouble(time.group(2));
    }

    private static DoubleStream peakMemory(ProcessHandle process) {
        try {
            return PEAK.matcher(Files.readString(Path.of("/proc/" + process.pid() + "/status")))
                    .results()
                    .mapToDouble(found -> Long.parseLong(found.group(1)) / KIB_IN_MIB);
        } catch (IOException e) {
            return DoubleStream.empty();
        }
    }
}
