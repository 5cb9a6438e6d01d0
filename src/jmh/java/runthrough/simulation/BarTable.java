package runthrough.simulation;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import runthrough.simulation.records.Detail;

/**
 * Prints how long whole commands take with two jars, in turn, and how long a coil change takes in the engine, in the bare model and in
 * its draws alone. Medians; processor time (s, ns), which shows more than the clock where others use the machine, and time by the
 * clock (s). Its arguments are the jars: the one to compare with, and the one to measure.
 */
public final class BarTable {
    private static final int TIMES = 5;
    private static final int CHANGES = 10_000;
    private static final int REPLICATIONS = 200;
    private static final Pattern MINUTES_AND_SECONDS = Pattern.compile("(\\d+)m([\\d.]+)s");

    private BarTable() {}

    /** Measures and prints. */
    public static void main(String[] jars) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("bars");
        String line = Path.of("scenarios/tube-line.yaml").toAbsolutePath().toString();
        Map<String, List<String>> commands = new LinkedHashMap<>();
        commands.put("--version", List.of("--version"));
        commands.put("check", List.of("check", line));
        commands.put("run, no report, 10,000 changes", List.of("run", line, "--no-report"));
        commands.put("the same, 1,000,000 changes", List.of("run", line, "--no-report", "--coil-changes", "20000"));
        commands.put(
                "run with report",
                List.of("run", line, "--out", folder.resolve("run").toString()));
        commands.put(
                "document",
                List.of("document", line, "--out", folder.resolve("document").toString()));
        System.out.printf("%-34s%s%n", "", "processor and clock (s), jar by jar");
        for (Map.Entry<String, List<String>> command : commands.entrySet()) {
            System.out.printf("%-34s%s%n", command.getKey(), wholeCommand(List.of(jars), command.getValue()));
        }
        engine();
    }

    private static String wholeCommand(List<String> jars, List<String> arguments)
            throws IOException, InterruptedException {
        double[][] processor = new double[jars.size()][TIMES];
        double[][] clock = new double[jars.size()][TIMES];
        for (int time = 0; time < TIMES; time++) {
            for (int jar = 0; jar < jars.size(); jar++) {
                long begin = System.nanoTime();
                processor[jar][time] = processorTime(jars.get(jar), arguments);
                clock[jar][time] = (System.nanoTime() - begin) / 1e9;
            }
        }
        StringBuilder text = new StringBuilder();
        for (int jar = 0; jar < jars.size(); jar++) {
            text.append(String.format(Locale.ROOT, "%8.2f %6.2f", median(processor[jar]), median(clock[jar])));
        }
        return text.toString();
    }

    /** Of one process, by the shell's own account of what its children took. */
    private static double processorTime(String jar, List<String> arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("sh", "-c", "\"$@\" > /dev/null 2>&1; times", "sh", "java"));
        command.addAll(List.of("-jar", jar));
        command.addAll(arguments);
        Process process = new ProcessBuilder(command).start();
        String times = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        Matcher ofChildren =
                MINUTES_AND_SECONDS.matcher(times.lines().skip(1).findFirst().orElse(""));
        return ofChildren.results().mapToDouble(BarTable::seconds).sum();
    }

    private static double seconds(MatchResult time) {
        return 60 * Double.parseDouble(time.group(1)) + Double.parseDouble(time.group(2));
    }

    private static void engine() {
        LineSimulator simulator = BenchmarkLine.simulator(BenchmarkLine.CAPACITY, CHANGES);
        Map<String, IntToDoubleFunction> measured = new LinkedHashMap<>();
        measured.put("engine", i -> simulator.run(i, Detail.CHANGES).totals().jointSeconds());
        measured.put("bare event model", i -> {
            BareModel model = new BareModel(i, BenchmarkLine.CAPACITY, CHANGES);
            model.run();
            return model.jointSeconds();
        });
        measured.put("draws alone", i -> {
            BareDraws draws = new BareDraws(i);
            double sum = 0;
            for (int change = 1; change <= CHANGES; change++) {
                sum += draws.ofChange(change);
            }
            return sum;
        });
        Map<String, double[]> nanos = new LinkedHashMap<>();
        measured.keySet().forEach(name -> nanos.put(name, new double[REPLICATIONS]));
        double sink = 0;
        for (int i = 0; i < REPLICATIONS; i++) {
            for (Map.Entry<String, IntToDoubleFunction> one : measured.entrySet()) {
                long begin = threadTime();
                sink += one.getValue().applyAsDouble(i);
                nanos.get(one.getKey())[i] = (threadTime() - begin) / (double) CHANGES;
            }
        }
        System.out.printf("%n%-34s%s%n", "", "ns a coil change: first 10,000, warm");
        nanos.forEach((name, all) -> System.out.printf(
                Locale.ROOT,
                "%-34s%10.0f %10.0f%n",
                name,
                all[0],
                median(Arrays.copyOfRange(all, REPLICATIONS / 2, REPLICATIONS))));
        System.out.println(Double.isNaN(sink) ? "no sum" : "");
    }

    private static long threadTime() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
