package runthrough.folder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import runthrough.OwnProcess;

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
        Path named = Files.createDirectory(theirs.resolveSibling("runthrough-test-2026"));
        old(Files.createFile(named.resolve(".lock")));
        try (TemporaryFolder other = TemporaryFolder.named(NAME)) {
            old(Files.createFile(left.resolve(".lock")));
            makeOneInAProcessOfItsOwn(other);

            TemporaryFolder.named(NAME).close();
            makeOneInAProcessOfItsOwn(other);

            assertThat(left).doesNotExist();
            assertThat(other.path()).exists();
            // Without a lock, it is somebody else's.
            assertThat(theirs).exists();
            assertThat(named).exists();
            // Its program may be about to lock it.
            assertThat(young).exists();
        } finally {
            TemporaryFolder.delete(named);
            TemporaryFolder.delete(theirs);
            TemporaryFolder.delete(young);
        }
    }

    /** Opened, a pipe holds up its reader for ever. */
    @Test
    @Timeout(20)
    void aPipeIsNoLock(@TempDir Path parent) throws IOException, InterruptedException {
        Path folder = Files.createDirectory(parent.resolve("folder"));
        Path pipe = folder.resolve(".lock");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor())
                .isZero();
        makeOldInAProcessOfItsOwn(pipe, folder);

        assertThat(FolderLock.isThere(folder)).isFalse();
        Path alone = Path.of(System.getProperty("java.io.tmpdir"), NAME + "123456789012345678");
        assertThat(new ProcessBuilder("mkfifo", alone.toString()).start().waitFor())
                .isZero();
        try {
            TemporaryFolder.named(NAME).close();
        } finally {
            Files.delete(alone);
        }
        FolderLock.inDead(folder, () -> TemporaryFolder.delete(folder));

        assertThat(folder).doesNotExist();
    }

    @Test
    void whatOneHasTakenOverIsLeftAloneByOthers(@TempDir Path parent) throws IOException {
        Path folder = Files.createDirectory(parent.resolve("folder"));
        old(Files.createFile(folder.resolve(".lock-1-a")));
        List<String> done = new ArrayList<>();

        FolderLock.inDead(folder, () -> {
            done.add("first");
            FolderLock.inDead(folder, () -> done.add("second"));
        });

        assertThat(done).containsExactly("first");
        assertThat(FolderLock.isThere(folder)).isFalse();
    }

    private static void makeOldInAProcessOfItsOwn(Path... files) throws IOException, InterruptedException {
        for (Path file : files) {
            assertThat(new ProcessBuilder("touch", "-d", "2 hours ago", file.toString())
                            .start()
                            .waitFor())
                    .isZero();
        }
    }

    private static void makeOneInAProcessOfItsOwn(TemporaryFolder other) throws IOException, InterruptedException {
        Process another = OwnProcess.of(Another.class, List.of(other.path().toString()))
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
