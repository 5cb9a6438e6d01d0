package runthrough.folder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.File;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class HindranceTest {
    @TempDir
    private Path folder;

    @Test
    void whatIsNotThereOrIsReplacedHasNone() throws IOException {
        Path file = Files.createFile(folder.resolve("file"));

        assertThat(Hindrance.toFile(file)).isEmpty();
        assertThat(Hindrance.toFolder(folder)).isEmpty();
        assertThat(Hindrance.toFile(folder.resolve("a/b/c"))).isEmpty();
        assertThat(Hindrance.toFolder(folder.resolve("a/b/c"))).isEmpty();
        assertThat(Hindrance.toFile(Path.of("name alone"))).isEmpty();
    }

    @Test
    void anythingElseIsNamed_alsoWhereItIsOnTheWay() throws IOException {
        Path file = Files.createFile(folder.resolve("file"));

        assertThat(Hindrance.toFile(folder)).hasValue("it is a folder, and must be a file");
        assertThat(Hindrance.toFolder(file)).hasValue("it is a file, and must be a folder");
        assertThat(Hindrance.toFile(file.resolve("a/b"))).hasValue(file + " is a file, and must be a folder");
        assertThat(Hindrance.toFolder(file.resolve("a"))).hasValue(file + " is a file, and must be a folder");
        assertThat(Hindrance.toFile(Path.of("/dev/null"))).hasValue("it is a device, and must be a file");
        assertThat(Hindrance.toFolder(Path.of("/dev/null/a"))).hasValue("/dev/null is a device, and must be a folder");
    }

    @Test
    void theNameThatJavaPutsBeforeAReasonIsNotRepeated() {
        File none = folder.resolve("a (copy)/b").toFile();

        assertThatThrownBy(() -> new RandomAccessFile(none, "rw"))
                .isInstanceOfSatisfying(
                        FileNotFoundException.class,
                        failure -> assertThat(Hindrance.words(failure)).isEqualTo("No such file or directory"));
    }

    /** Standard input of a program that was started with a file there: a link by which nothing may be replaced. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void whatAProgramHasOpenIsADevice_alsoWhereItIsAFile() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "a");
        try (InputStream open = Files.newInputStream(file)) {
            Path stream;
            try (Stream<Path> all = Files.list(Path.of("/proc/self/fd"))) {
                stream = all.filter(one -> isLinkTo(one, file)).findFirst().orElseThrow();
            }

            assertThat(Files.isRegularFile(stream)).isTrue();
            assertThat(Hindrance.toFile(stream)).hasValue("it is a device, and must be a file");
            assertThat(Hindrance.toFile(Files.createSymbolicLink(folder.resolve("link"), stream)))
                    .hasValue("it is a device, and must be a file");
            assertThat(open.read()).isEqualTo('a');
        }
    }

    private static boolean isLinkTo(Path link, Path file) {
        try {
            return Files.readSymbolicLink(link).equals(file.toRealPath());
        } catch (IOException e) {
            return false;
        }
    }

    @Test
    void aLinkThatLeadsToNothingIsCalledThat() throws IOException {
        Path loop = folder.resolve("loop");
        Files.createSymbolicLink(loop, loop);
        Path nowhere = Files.createSymbolicLink(folder.resolve("nowhere"), folder.resolve("gone"));

        assertThat(Hindrance.toFile(loop)).hasValue("it is a link that leads back to itself");
        assertThat(Hindrance.toFolder(nowhere)).hasValue("it is a link that leads nowhere");
        assertThat(Hindrance.toFile(nowhere.resolve("sub/x"))).hasValue(nowhere + " is a link that leads nowhere");
    }
}
