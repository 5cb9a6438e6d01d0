package runthrough.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runthrough.simulation.LineSimulator;
import umontreal.ssj.simevents.Simulator;

/** The engine's jar and the event library, with nothing else on the class path, run a line in a virtual machine of their own. */
class EngineJarTest {
    private static final Path ENTRY = Path.of("src/main/java/runthrough/simulation/package-info.java");
    private static final Pattern EXAMPLE = Pattern.compile("(?s)<pre>\\{@code\\n(.*?)\\n \\* \\}</pre>");
    private static final double DIGITS = 1e-9;

    @TempDir
    private static Path folder;

    private static String classPath = "";

    @BeforeAll
    static void makeTheJar() throws IOException, URISyntaxException {
        Path classes = placeOf(LineSimulator.class);
        List<PathMatcher> wanted = PublishedPackages.filesOfTheEngine().stream()
                .map(pattern -> FileSystems.getDefault().getPathMatcher("glob:" + pattern.replace("**/*", "**")))
                .toList();
        Path jar = folder.resolve("engine.jar");
        try (OutputStream out = Files.newOutputStream(jar);
                JarOutputStream entries = new JarOutputStream(out);
                Stream<Path> all = Files.walk(classes)) {
            for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
                Path inside = classes.relativize(file);
                if (wanted.stream().anyMatch(pattern -> pattern.matches(inside))) {
                    entries.putNextEntry(new JarEntry(inside.toString().replace(File.separatorChar, '/')));
                    Files.copy(file, entries);
                    entries.closeEntry();
                }
            }
        }
        Path own = Path.of("runthrough/library/RandomRun.class");
        Files.createDirectories(folder.resolve(own).getParent());
        Files.copy(placeOf(RandomRun.class).resolve(own), folder.resolve(own));
        classPath = String.join(
                File.pathSeparator, jar.toString(), placeOf(Simulator.class).toString(), folder.toString());
    }

    private static Path placeOf(Class<?> type) throws URISyntaxException {
        return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    }

    @Test
    void engineAlone_givesTheSameNumbersAsTheWholeProgram() throws IOException, InterruptedException {
        assertThat(run("runthrough.library.RandomRun")).isEqualTo(RandomRun.totals());
    }

    /**
     * Matched at 1.5 m/s, the accumulator loses 1.5^2/(2 * 0.5) = 2.25 m while the entry brakes, 1.5 * 80 = 120 m while the
     * strip stands, and 1.5^2/(2 * 0.4) = 2.8125 m until the entry is as fast as the process again: 125.0625 m of 200 m. To
     * stop, the process needs 1.5^2/(2 * 0.5) = 2.25 m, so the lowest level is 200 - 125.0625 - 2.25 = 72.6875 m above the level to stop at.
     */
    @Test
    void exampleOfTheJavadoc_compilesAndGivesTheHandCalculation() throws IOException, InterruptedException {
        String text = EXAMPLE.matcher(Files.readString(ENTRY))
                .results()
                .findFirst()
                .orElseThrow()
                .group(1)
                .replaceAll("(?m)^ \\* ?", "");
        Path source = folder.resolve("Example.java");
        Files.writeString(source, text);
        int errors = ToolProvider.getSystemJavaCompiler()
                .run(
                        null,
                        null,
                        null,
                        "-proc:none",
                        "-Xlint:-classfile",
                        "-cp",
                        classPath,
                        "-d",
                        folder.toString(),
                        source.toString());
        assertThat(errors).isZero();

        Map<String, Double> numbers = numbers(run("Example"));
        assertThat(numbers)
                .containsOnlyKeys(
                        "joint cycle time", "strip drawn", "lowest above the stop level", "share run through");
        assertThat(numbers.get("joint cycle time")).isCloseTo(80, within(DIGITS));
        assertThat(numbers.get("strip drawn")).isCloseTo(125.0625, within(DIGITS));
        assertThat(numbers.get("lowest above the stop level")).isCloseTo(72.6875, within(DIGITS));
        assertThat(numbers.get("share run through")).isEqualTo(1);
        assertThat(text.lines()).hasSizeLessThanOrEqualTo(28);
    }

    /** Lines such as {@code strip drawn 70.4 m}, by name. */
    private static Map<String, Double> numbers(String printed) {
        Map<String, Double> numbers = new TreeMap<>();
        Pattern.compile("(?m)^(\\D+) ([0-9.]+)")
                .matcher(printed)
                .results()
                .forEach(found -> numbers.put(found.group(1), Double.valueOf(found.group(2))));
        return numbers;
    }

    private static String run(String program) throws IOException, InterruptedException {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        Process process = new ProcessBuilder(java.toString(), "-cp", classPath, program)
                .redirectErrorStream(true)
                .start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(printed).isZero();
        return printed.strip();
    }
}
