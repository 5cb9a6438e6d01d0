package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.commons.io.file.PathUtils;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import runthrough.web.job.Refusal;

/** The folder of the page's server below that for temporary files, which the system may clear at any time. */
class PageFolderTest {
    private static final List<PageRequest.Sent> SENT = List.of(new PageRequest.Sent("theirs.csv", "2"));

    private final PageFolder folder = new PageFolder(Map.of("ours.csv", "1"));

    @AfterEach
    void close() {
        folder.close();
    }

    @Test
    void whatIsGoneIsMadeAgain() throws IOException {
        Files.delete(folder.shipped().resolve("ours.csv"));
        assertThat(folder.shipped().resolve("ours.csv")).hasContent("1");

        Files.delete(folder.with(SENT).resolve("theirs.csv"));
        assertThat(folder.with(SENT).resolve("theirs.csv")).hasContent("2");
        assertThat(folder.with(SENT).resolve("ours.csv")).hasContent("1");

        PathUtils.deleteDirectory(folder.root());
        assertThat(folder.with(SENT).resolve("theirs.csv")).hasContent("2");
        assertThat(folder.shipped().resolve("ours.csv")).hasContent("1");
    }

    /** What still runs when the program ends. */
    @Test
    void nothingIsMadeAgainAfterTheEnd() {
        Path root = folder.root();
        folder.close();

        assertThatThrownBy(() -> folder.with(SENT)).isInstanceOf(Refusal.class);
        assertThat(root).doesNotExist();
    }

    @Test
    void whatWasRefusedIsRefusedInTheSameWordsWhenItComesAgain() {
        List<PageRequest.Sent> half = List.of(new PageRequest.Sent("half.csv", "\uD800"));
        for (int time = 0; time < 2; time++) {
            assertThatThrownBy(() -> folder.with(half))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("holds half of a letter");
        }
    }
}
