package runthrough.bars;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The engine of one edition after the other, warm, on a shipped line with all records of a coil change: processor time (ns). Each
 * runs in a process of its own and is called by reflection, for its classes are not the ones at hand.
 */
public final class EngineOfJar {
    private static final int CHANGES = 10_000;
    private static final int WARM_UP = 60;
    private static final int REPLICATIONS = 60;
    private static final int PROCESSES = 5;
    private static final List<String> LINES =
            List.of("tube-line", "coating-line", "slitter", "perforating-line", "roll-former");

    private EngineOfJar() {}

    /** Prints how long a coil change takes, jar by jar in turn; the scenarios of each are in the folder of its edition. */
    static void print(List<String> jars, List<Path> folders, PrintStream out) throws IOException {
        out.printf("%n%-34s%s%n", "engine, warm", "ns a coil change, jar by jar");
        for (String line : LINES) {
            Medians medians = new Medians(jars.size(), PROCESSES);
            for (int time = 0; time < PROCESSES; time++) {
                for (int jar = 0; jar < jars.size(); jar++) {
                    medians.set(
                            jar, time, measured(jars.get(jar), folders.get(jar).resolve(line + ".yaml")));
                }
            }
            out.printf("%-34s", line);
            for (int jar = 0; jar < jars.size(); jar++) {
                out.printf(Locale.ROOT, "%10.0f", medians.of(jar));
            }
            out.println();
        }
    }

    private static double measured(String jar, Path line) throws IOException {
        String classes = Path.of(EngineOfJar.class
                        .getProtectionDomain()
                        .getCodeSource()
                        .getLocation()
                        .getPath())
                .toString();
        Process process = new ProcessBuilder(
                        "java",
                        "-cp",
                        jar + System.getProperty("path.separator") + classes,
                        EngineOfJar.class.getName(),
                        line.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (InputStream said = process.getInputStream()) {
            String number = new String(said.readAllBytes(), StandardCharsets.UTF_8).strip();
            // An edition that has no such line says nothing.
            return number.isEmpty() ? Double.NaN : Double.parseDouble(number);
        }
    }

    /** Prints how long a coil change of the scenario that is named takes. */
    public static void main(String[] arguments) throws ReflectiveOperationException {
        Object request = call(reading(Path.of(arguments[0])), "request");
        Object simulator = simulator(call(request, "line"), plan());
        Class<?> detail = oneOf("runthrough.simulation.records.Detail", "runthrough.simulation.Detail");
        Object records = detail.getField("CHANGES").get(null);
        Method run = simulator.getClass().getMethod("run", int.class, detail);
        double[] nanos = new double[REPLICATIONS];
        for (int i = -WARM_UP; i < REPLICATIONS; i++) {
            long begin = threadTime();
            run.invoke(simulator, Math.abs(i), records);
            nanos[Math.max(0, i)] = (threadTime() - begin) / (double) CHANGES;
        }
        System.out.println(Medians.of(nanos));
    }

    private static Object reading(Path file) throws ReflectiveOperationException {
        Class<?> reader = Class.forName("runthrough.scenario.ScenarioReader");
        return has(reader, "read")
                ? reader.getMethod("read", Path.class).invoke(null, file)
                : call(
                        Class.forName("runthrough.scenario.ScenarioFile")
                                .getMethod("open", Path.class)
                                .invoke(null, file),
                        "read");
    }

    private static Object plan() throws ReflectiveOperationException {
        Class<?> changes = Class.forName("runthrough.plant.RunPlan$Extent$Changes");
        Class<?> extent = Class.forName("runthrough.plant.RunPlan$Extent");
        return Class.forName("runthrough.plant.RunPlan")
                .getConstructor(extent, int.class, int.class, long.class, double.class)
                .newInstance(changes.getConstructor(int.class).newInstance(CHANGES), 0, 1, 7L, 0.995);
    }

    private static Object simulator(Object line, Object plan) throws ReflectiveOperationException {
        Class<?> simulator = Class.forName("runthrough.simulation.LineSimulator");
        return has(simulator, "of")
                ? simulator.getMethod("of", line.getClass(), plan.getClass()).invoke(null, line, plan)
                : simulator.getConstructor(line.getClass(), plan.getClass()).newInstance(line, plan);
    }

    private static boolean has(Class<?> type, String method) {
        return Stream.of(type.getMethods())
                .anyMatch(one ->
                        Modifier.isStatic(one.getModifiers()) && one.getName().equals(method));
    }

    private static Class<?> oneOf(String name, String former) throws ClassNotFoundException {
        try {
            return Class.forName(name);
        } catch (ClassNotFoundException e) {
            return Class.forName(former);
        }
    }

    private static Object call(Object on, String method) throws ReflectiveOperationException {
        return on.getClass().getMethod(method).invoke(on);
    }

    private static long threadTime() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
