package runthrough.report.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.io.TempDir;

/** Runs that put a report into the same folder at the same instant. */
class SameFolderTest {
    private static final int FILES = 20;
    private static final int RUNS = 3;

    @TempDir
    private Path disk;

    @RepeatedTest(20)
    void theReportIsThatOfOneOfThem_whole() throws Exception {
        Path folder = Files.createDirectory(disk.resolve("tube"));
        CyclicBarrier together = new CyclicBarrier(RUNS);

        IntStream.range(0, RUNS)
                .mapToObj(run -> new Thread(() -> write(folder, "run " + run, together)))
                .peek(Thread::start)
                .toList()
                .forEach(SameFolderTest::join);

        assertThat(texts(folder)).hasSize(FILES);
        assertThat(texts(folder).values()).containsOnly(texts(folder).get("file 0"));
        try (Stream<Path> beside = Files.list(disk)) {
            assertThat(beside).containsExactly(folder);
        }
    }

    private static void write(Path folder, String text, CyclicBarrier together) {
        Map<String, byte[]> files = IntStream.range(0, FILES)
                .boxed()
                .collect(Collectors.toMap(number -> "file " + number, number -> text.getBytes(StandardCharsets.UTF_8)));
        try (FolderWriter writer = FolderWriter.open(folder)) {
            together.await(1, TimeUnit.MINUTES);
            writer.complete(files);
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    private static void join(Thread thread) {
        try {
            thread.join();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private static Map<String, String> texts(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.collect(Collectors.toMap(file -> file.getFileName().toString(), SameFolderTest::text));
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
