package runthrough.report.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** Work on another thread. */
class BesideTest {
    @Test
    void whatItGivesIsThereWhenItIsAskedFor() {
        assertThat(Beside.begin(() -> "report").result()).isEqualTo("report");
    }

    /** Short memory must be called that, and not an internal error. */
    @Test
    void itsOwnFailureIsMet() {
        OutOfMemoryError memory = new OutOfMemoryError("heap");
        Supplier<String> work = () -> {
            throw memory;
        };
        assertThatThrownBy(() -> Beside.begin(work).result()).isSameAs(memory);
    }
}
