package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.apache.spark.launcher.JavaModuleOptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sweep on a cluster of two executors, processes of their own, one of which is killed half way. */
class SparkSweepTest {
    private static final Path PROGRAM = Path.of("target/runthrough.jar").toAbsolutePath();
    private static final Path SMALL = Path.of("target/runthrough-spark.jar").toAbsolutePath();
    private static final Path HOME = Path.of("target/spark/home").toAbsolutePath();
    private static final String JAVA = Path.of(System.getProperty("java.home"), "bin", "java").toString();

    /** 2,000 cases of 500 coil changes. */
    private static final List<String> SWEEP = List.of(
            "tube-line.yaml",
            "--vary",
            "joint-cycle-time=40s..100s:100",
            "--vary",
            "usable-capacity=50m..120m:20",
            "--coil-changes",
            "100",
            "--replications",
            "5");

    /** 60 cases, each with 100 resamples of its times. */
    private static final List<String> UNCERTAIN = List.of(
            "tube-line-measured.yaml",
            "--vary",
            "accumulator.stroke=7m..11m:10",
            "--vary",
            "process.speed=40m/min..50m/min:6",
            "--uncertainty",
            "100",
            "--format",
            "csv");

    @TempDir
    private Path folder;

    @Test
    void anExecutorThatIsKilledChangesNoByte() throws IOException, InterruptedException {
        Files.copy(Path.of("scenarios/tube-line.yaml"), folder.resolve("tube-line.yaml"));
        killAnExecutorOf(SWEEP);
    }

    /** Its scenario names a table, which goes with each task. */
    @Test
    void norDoesItWithTheUncertaintyOfEachCase() throws IOException, InterruptedException {
        for (String file : List.of("tube-line-measured.yaml", "tube-line-times.csv")) {
            Files.copy(Path.of("scenarios", file), folder.resolve(file));
        }
        killAnExecutorOf(UNCERTAIN);
        assertThat(Files.readString(folder.resolve("spark.jsonl"))).contains(",chance_target_met,");
    }

    private void killAnExecutorOf(List<String> sweep) throws IOException, InterruptedException {
        assertThat(started("alone.jsonl", List.of(JAVA, "-jar", PROGRAM.toString(), "sweep"), sweep)
                        .waitFor())
                .isZero();

        Process driver = driver(sweep);
        ProcessHandle executor = executorThatWorks(driver);
        executor.destroyForcibly();

        assertThat(driver.waitFor(5, TimeUnit.MINUTES)).isTrue();
        String log = Files.readString(folder.resolve("spark.jsonl.log"));
        assertThat(log).contains("Lost executor");
        assertThat(driver.exitValue()).as(log).isZero();
        assertThat(folder.resolve("spark.jsonl")).hasSameBinaryContentAs(folder.resolve("alone.jsonl"));
    }

    /** An executor once the first tasks are done. */
    private ProcessHandle executorThatWorks(Process driver) throws IOException, InterruptedException {
        for (int i = 0; i < 1200 && driver.isAlive(); i++) {
            Optional<ProcessHandle> executor = driver.descendants()
                    .filter(process -> process.info().commandLine().orElse("").contains("CoarseGrainedExecutorBackend"))
                    .findFirst();
            if (executor.isPresent()
                    && Files.readString(folder.resolve("spark.jsonl.log")).contains("Finished task 3.0")) {
                return executor.get();
            }
            TimeUnit.MILLISECONDS.sleep(100);
        }
        throw new AssertionError("no executor came: " + Files.readString(folder.resolve("spark.jsonl.log")));
    }

    private Process driver(List<String> sweep) throws IOException {
        Files.writeString(folder.resolve("log4j2.properties"), """
                rootLogger.level = info
                rootLogger.appenderRef.console.ref = console
                appender.console.type = Console
                appender.console.name = console
                appender.console.layout.type = PatternLayout
                appender.console.layout.pattern = %m%n
                """);
        List<String> command = new ArrayList<>(List.of(JAVA));
        command.addAll(Arrays.asList(JavaModuleOptions.defaultModuleOptionArray()));
        command.addAll(List.of(
                "-Dlog4j2.configurationFile=" + folder.resolve("log4j2.properties"),
                "-Dspark.master=local-cluster[2,1,1024]",
                "-Dspark.executor.extraClassPath=" + SMALL,
                "-cp",
                SMALL + File.pathSeparator + HOME.resolve("jars") + File.separator + "*",
                "runthrough.cli.SparkSweep"));
        return started("spark.jsonl", command, sweep);
    }

    private Process started(String out, List<String> program, List<String> sweep) throws IOException {
        List<String> command = new ArrayList<>(program);
        command.addAll(sweep);
        command.addAll(List.of("--out", out));
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve(out + ".log").toFile());
        builder.environment()
                .putAll(Map.of(
                        "SPARK_HOME", HOME.toString(), "SPARK_SCALA_VERSION", "2.13", "SPARK_LOCAL_IP", "127.0.0.1"));
        return builder.start();
    }
}
