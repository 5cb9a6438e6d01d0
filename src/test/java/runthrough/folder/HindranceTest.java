package runthrough.folder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
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
    void aLinkThatLeadsToNothingIsCalledThat() throws IOException {
        Path loop = folder.resolve("loop");
        Files.createSymbolicLink(loop, loop);
        Path nowhere = Files.createSymbolicLink(folder.resolve("nowhere"), folder.resolve("gone"));

        assertThat(Hindrance.toFile(loop)).hasValue("it is a link that leads back to itself");
        assertThat(Hindrance.toFolder(nowhere)).hasValue("it is a link that leads nowhere");
    }
}
