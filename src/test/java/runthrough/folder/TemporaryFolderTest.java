package runthrough.folder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Folders among the temporary files of the machine, where those of other programs and of programs that live are left alone. */
class TemporaryFolderTest {
    private static final String NAME = "runthrough-folder-test";

    @Test
    void whatAProgramHasLeftThatWasKilledGoes_andWhatAnotherIsAtWorkInStays() throws IOException, InterruptedException {
        Path left = Files.createTempDirectory(NAME);
        Files.writeString(Files.createDirectory(left.resolve("within")).resolve("file.csv"), "1");
        Path theirs = old(Files.createTempDirectory(NAME));
        Path young = Files.createTempDirectory(NAME);
        Files.createFile(young.resolve(".lock"));
        try (TemporaryFolder other = TemporaryFolder.named(NAME)) {
            old(Files.createFile(left.resolve(".lock")));
            makeOneInAProcessOfItsOwn(other);

            TemporaryFolder.named(NAME).close();
            makeOneInAProcessOfItsOwn(other);

            assertThat(left).doesNotExist();
            assertThat(other.path()).exists();
            // Without a lock, it is somebody else's.
            assertThat(theirs).exists();
            // Its program may be about to lock it.
            assertThat(young).exists();
        } finally {
            TemporaryFolder.delete(theirs);
            TemporaryFolder.delete(young);
        }
    }

    private static void makeOneInAProcessOfItsOwn(TemporaryFolder other) throws IOException, InterruptedException {
        Process another = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        Another.class.getName(),
                        other.path().toString())
                .inheritIO()
                .start();
        assertThat(another.waitFor()).isZero();
    }

    /** A program that makes a folder, and removes what it takes for dead. It makes the lock of another old first: to do so is to open it. */
    static final class Another {
        private Another() {}

        public static void main(String[] args) throws IOException {
            try (Stream<Path> files = Files.list(Path.of(args[0]))) {
                old(files.findFirst().orElseThrow());
            }
            TemporaryFolder.named(NAME).close();
        }
    }

    @Test
    void itGoesWithAllThatIsInIt() throws IOException {
        TemporaryFolder folder = TemporaryFolder.named(NAME);
        Files.writeString(Files.createDirectory(folder.path().resolve("within")).resolve("file.csv"), "1");
        assertThat(folder.isThere()).isTrue();

        folder.close();

        assertThat(folder.isThere()).isFalse();
        assertThat(folder.path()).doesNotExist();
    }

    private static Path old(Path file) throws IOException {
        return Files.setLastModifiedTime(file, FileTime.from(Instant.now().minus(Duration.ofHours(1))));
    }
}
