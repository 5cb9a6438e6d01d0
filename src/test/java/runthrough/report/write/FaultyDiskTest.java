package runthrough.report.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whichever operation of the disk fails: the earlier report is whole, or the new one is, and nothing else lies about. */
class FaultyDiskTest {
    private static final Map<String, String> NEW =
            Map.of("report.html", "new page", "verdict.json", "new numbers", "causes.csv", "new causes");
    private static final Map<String, String> OLD =
            Map.of("report.html", "old page", "verdict.json", "old numbers", "notes.txt", "mine");

    @TempDir
    private Path disk;

    private final FaultyDisk faulty = new FaultyDisk();

    @Test
    void aFirstReportIsThereWholeOrNotAtAll() throws IOException {
        assertThat(forEveryOperation("reports/tube", Map.of(), NEW)).isGreaterThan(12);
    }

    @Test
    void anEarlierReportIsReplacedWholeOrLeftAsItWas() throws IOException {
        Map<String, String> both = new TreeMap<>(OLD);
        both.putAll(NEW);

        assertThat(forEveryOperation("tube", OLD, both)).isGreaterThan(18);
    }

    /** Lets one operation after the other fail, until none is left; returns how many there were. */
    private int forEveryOperation(String name, Map<String, String> before, Map<String, String> after)
            throws IOException {
        for (int operations = 0; ; operations++) {
            Path here = Files.createDirectory(disk.resolve("try" + operations));
            for (Map.Entry<String, String> file : before.entrySet()) {
                Path folder = Files.createDirectories(here.resolve(name));
                Files.writeString(folder.resolve(file.getKey()), file.getValue());
            }
            faulty.failAfter(operations);
            boolean isDone = write(faulty.at(here.resolve(name)));

            assertThat(files(here, name))
                    .as("operation %d: %s", operations, faulty.failed())
                    .isEqualTo(isDone ? after : before);
            if (faulty.failed().isEmpty()) {
                return operations;
            }
        }
    }

    private static boolean write(Path folder) {
        try (FolderWriter writer = FolderWriter.open(folder)) {
            Map<String, byte[]> files = new TreeMap<>();
            NEW.forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
            try (OutputStream rows = writer.stream("causes.csv")) {
                rows.write(files.remove("causes.csv"));
            } catch (IOException e) {
                throw writer.failed(e);
            }
            writer.complete(files);
            return true;
        } catch (ReportFolderException e) {
            assertThat(e)
                    .hasMessageContaining("cannot take the report; ")
                    .hasMessageContaining("Nothing was written there.");
            return false;
        }
    }

    /** The files of the report; what else lies about by its whole name, unless it is what could not be removed. */
    private Map<String, String> files(Path here, String report) throws IOException {
        boolean isLeft = faulty.failed().matches("delete|list");
        Map<String, String> found = new TreeMap<>();
        try (Stream<Path> all = Files.walk(here)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                boolean isReport = file.startsWith(here.resolve(report));
                if (isReport || !(isLeft && file.toString().contains(".part"))) {
                    found.put(
                            (isReport ? here.resolve(report) : here)
                                    .relativize(file)
                                    .toString(),
                            Files.readString(file));
                }
            }
        }
        return found;
    }
}
