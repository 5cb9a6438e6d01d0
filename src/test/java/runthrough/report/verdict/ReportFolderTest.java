package runthrough.report.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.plant.Distribution;
import runthrough.plant.SimulationRequest;
import runthrough.report.write.FolderWriter;
import runthrough.report.write.ReportFolderException;
import runthrough.report.write.Staging;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyOptions;
import runthrough.study.StudyResult;

class ReportFolderTest {
    private static final SimulationRequest BRIEF = Invented.request(Invented.line(Distribution.lognormal(30, 6)));
    private static final FolderWriter.Wrapper AS_IT_IS = file -> file;

    @TempDir
    private Path disk;

    @Test
    void writesAllFilesAndNothingElse() throws IOException {
        Path report = write(disk.resolve("reports/tube"), AS_IT_IS);
        assertThat(report).hasFileName("report.html").exists();
        assertThat(names(disk.resolve("reports")))
                .containsExactlyInAnyOrder(
                        "tube",
                        "tube/report.html",
                        "tube/verdict.json",
                        "tube/coil-changes.csv",
                        "tube/work-elements.csv",
                        "tube/replications.csv",
                        "tube/products.csv",
                        "tube/coils.csv",
                        "tube/causes.csv",
                        "tube/worth.csv");
    }

    @Test
    void sameScenarioGivesTheSameBytes() throws IOException {
        write(disk.resolve("a"), AS_IT_IS);
        write(disk.resolve("b"), AS_IT_IS);
        for (String name : names(disk.resolve("a"))) {
            assertThat(disk.resolve("a").resolve(name))
                    .hasSameBinaryContentAs(disk.resolve("b").resolve(name));
        }
    }

    /** Java breaks a font that it reads on a thread that is interrupted, and draws on with another: such a report is none. */
    @Test
    void whoeverIsGivenUpPutsNothingInPlace() throws IOException {
        Path folder = Files.createDirectory(disk.resolve("tube"));
        Files.writeString(folder.resolve("report.html"), "an earlier report");
        FolderWriter writer = FolderWriter.open(folder);
        Thread.currentThread().interrupt();
        try {
            assertThatThrownBy(() -> writer.complete(Map.of("report.html", new byte[] {1})))
                    .isInstanceOf(CancellationException.class);
        } finally {
            assertThat(Thread.interrupted()).isTrue();
            writer.close();
        }
        assertThat(folder.resolve("report.html")).hasContent("an earlier report");
        assertThat(names(disk)).containsExactlyInAnyOrder("tube", "tube/report.html");
    }

    @Test
    void earlierReportIsReplacedAndOtherFilesAreLeftAlone() throws IOException {
        Path folder = Files.createDirectory(disk.resolve("tube"));
        Files.writeString(folder.resolve("report.html"), "an earlier report");
        Files.writeString(folder.resolve("notes.txt"), "mine");
        write(folder, AS_IT_IS);
        assertThat(folder.resolve("report.html")).content().startsWith("<!DOCTYPE html>");
        assertThat(folder.resolve("notes.txt")).hasContent("mine");
        assertThat(names(disk)).noneMatch(name -> name.contains(".part"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"report.html", "causes.csv"})
    void folderInThePlaceOfAFile_isNotReplaced(String name) throws IOException {
        Path folder = Files.createDirectory(disk.resolve("tube"));
        Files.createDirectory(folder.resolve(name));
        Files.writeString(folder.resolve("verdict.json"), "an earlier one");
        assertThatThrownBy(() -> write(folder, AS_IT_IS))
                .isInstanceOf(ReportFolderException.class)
                .hasMessageContaining("tube cannot take the report; ")
                .hasMessageContaining(name + ": it is a folder, and must be a file. Nothing was written there.");
        assertThat(names(disk)).containsExactlyInAnyOrder("tube", "tube/" + name, "tube/verdict.json");
        assertThat(folder.resolve(name)).isEmptyDirectory();
        assertThat(folder.resolve("verdict.json")).hasContent("an earlier one");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 100, 1000, 10_000, 60_000, 100_000, 200_000})
    void fullDiskLeavesNothingHalfWritten(int bytes) throws IOException {
        assertThatThrownBy(() -> write(disk.resolve("reports/tube"), new FullDisk(bytes)::open))
                .isInstanceOf(ReportFolderException.class)
                .hasMessageContaining("reports/tube cannot take the report; No space left on device.")
                .hasMessageContaining("Nothing was written there. Choose another folder.");
        assertThat(names(disk)).isEmpty();
    }

    @Test
    void fullDiskLeavesTheEarlierReportAsItWas() throws IOException {
        Path folder = Files.createDirectory(disk.resolve("tube"));
        Files.writeString(folder.resolve("report.html"), "an earlier report");
        assertThatThrownBy(() -> write(folder, new FullDisk(50_000)::open)).isInstanceOf(ReportFolderException.class);
        assertThat(names(disk)).containsExactlyInAnyOrder("tube", "tube/report.html");
        assertThat(folder.resolve("report.html")).hasContent("an earlier report");
    }

    @Test
    void failureWhileMovingPutsTheEarlierReportBack() throws IOException {
        Path folder = Files.createDirectory(disk.resolve("tube"));
        Files.writeString(folder.resolve("report.html"), "an earlier report");
        // A folder of that name that is not empty stands in the way of the last file to be moved.
        Staging staging = Staging.beside(folder);
        Files.writeString(staging.path().resolve("report.html"), "a new report");
        assertThatThrownBy(() -> staging.moveInto(folder, List.of("report.html", "missing.csv")))
                .isInstanceOf(IOException.class);
        staging.drop();
        assertThat(names(disk)).containsExactlyInAnyOrder("tube", "tube/report.html");
        assertThat(folder.resolve("report.html")).hasContent("an earlier report");
    }

    @Test
    void targetThatIsAFileIsRefusedAndKept() throws IOException {
        Path file = Files.writeString(disk.resolve("tube"), "a file");
        assertThatThrownBy(() -> ReportFolder.open(file, BRIEF))
                .isInstanceOf(ReportFolderException.class)
                .hasMessageEndingWith(
                        "tube cannot take the report; it is a file, and must be a folder. Nothing was written there. Choose another "
                                + "folder.");
        assertThat(file).hasContent("a file");
    }

    @Test
    void folderBelowAFileIsRefused() throws IOException {
        Files.writeString(disk.resolve("file"), "a file");
        assertThatThrownBy(() -> ReportFolder.open(disk.resolve("file/tube"), BRIEF))
                .isInstanceOf(ReportFolderException.class)
                .hasMessageContaining("file/tube cannot take the report;");
        assertThat(names(disk)).containsExactly("file");
    }

    @Test
    void missingPermissionIsSaid() throws IOException {
        FolderWriter.Wrapper denied = file -> {
            file.close();
            throw new AccessDeniedException("/somewhere/else");
        };
        assertThatThrownBy(() -> write(disk.resolve("tube"), denied))
                .isInstanceOf(ReportFolderException.class)
                .hasMessageContaining("no permission to write to /somewhere/else.");
        assertThat(names(disk)).isEmpty();
    }

    @Test
    void studyThatIsGivenUpLeavesNothing() throws IOException {
        try (ReportFolder folder = ReportFolder.open(disk.resolve("reports/tube"), BRIEF)) {
            folder.listener().progress(0, 1);
        }
        assertThat(names(disk)).isEmpty();
    }

    @Test
    void leftoverOfAKilledRunIsNoHindrance() throws IOException {
        Files.createDirectory(disk.resolve(".tube.part1"));
        write(disk.resolve("tube"), AS_IT_IS);
        assertThat(disk.resolve("tube/report.html")).exists();
        assertThat(disk.resolve(".tube.part1")).isEmptyDirectory();
    }

    /** Killed before it locked what it had made. Another folder's is none of ours, whatever its name begins with. */
    @Test
    void leftoverWithoutALockIsRemovedWhenItIsOld_thatOfAnotherFolderIsNot() throws IOException {
        FileTime before = FileTime.from(Instant.now().minus(Duration.ofMinutes(5)));
        for (String name : List.of(".tube.part1", ".tube.partner.part1")) {
            Files.setLastModifiedTime(Files.createDirectory(disk.resolve(name)), before);
        }

        write(disk.resolve("tube"), AS_IT_IS);

        assertThat(disk.resolve(".tube.part1")).doesNotExist();
        assertThat(disk.resolve(".tube.partner.part1")).exists();
    }

    /** A lock that nobody holds: its run was killed. One that is held, or young, is left alone. */
    @Test
    void leftoverOfAKilledRunIsRemovedByTheNext_aRunUnderWayIsNot() throws IOException {
        FileTime before = FileTime.from(Instant.now().minus(Duration.ofMinutes(5)));
        Files.writeString(Files.createDirectory(disk.resolve(".tube.part1")).resolve(".lock"), "");
        Files.setLastModifiedTime(disk.resolve(".tube.part1/.lock"), before);
        Files.writeString(Files.createDirectory(disk.resolve(".tube.part2")).resolve(".lock"), "");
        try (FolderWriter underWay = FolderWriter.open(disk.resolve("tube"))) {
            Path lock = lockIn(disk.resolve(".tube.part1"));
            Files.setLastModifiedTime(lock, before);

            write(disk.resolve("tube"), AS_IT_IS);

            assertThat(lock).exists();
            assertThat(disk.resolve(".tube.part2/.lock")).exists();
            assertThat(disk.resolve(".tube.part3")).doesNotExist();
            assertThat(disk.resolve("tube")).isDirectoryNotContaining("glob:**/.lock*");
            assertThat(underWay).isNotNull();
        }
    }

    private static Path lockIn(Path folder) throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, ".lock*")) {
            return files.iterator().next();
        }
    }

    /** It was killed between its first and its second move: the rest is made up for. */
    @Test
    void aRunThatWasKilledWhileItMovedFilesIsFinishedByTheNext() throws IOException {
        Files.writeString(Files.createDirectory(disk.resolve("tube")).resolve("sizing.json"), "old");
        Path dead = disk.resolve(".tube.part1");
        Files.writeString(Files.createDirectories(dead.resolve("new")).resolve("sizing.json"), "new");
        Files.createDirectory(dead.resolve("old"));
        Files.writeString(dead.resolve(".lock"), "");
        Files.setLastModifiedTime(
                dead.resolve(".lock"), FileTime.from(Instant.now().minus(Duration.ofMinutes(5))));

        write(disk.resolve("tube"), AS_IT_IS);

        assertThat(disk.resolve("tube/sizing.json")).hasContent("new");
        assertThat(dead).doesNotExist();
    }

    private static Path write(Path folder, FolderWriter.Wrapper wrapper) {
        try (ReportFolder open = ReportFolder.open(FolderWriter.open(folder, wrapper), BRIEF)) {
            StudyResult study = new RunThroughStudy(BRIEF).run(StudyOptions.forReport(), open.listener());
            return open.complete(RunThroughResult.of(study, List.of(), Invented.PROVENANCE));
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(path -> !path.equals(folder))
                    .map(path -> folder.relativize(path).toString())
                    .toList();
        }
    }

    /** A disk with so many bytes left for all files together. */
    private static final class FullDisk {
        private int left;

        FullDisk(int left) {
            this.left = left;
        }

        OutputStream open(OutputStream file) {
            return new FilterOutputStream(file) {
                @Override
                public void write(byte[] bytes, int from, int count) throws IOException {
                    left -= count;
                    if (left < 0) {
                        throw new IOException("No space left on device");
                    }
                    out.write(bytes, from, count);
                }
            };
        }
    }
}
