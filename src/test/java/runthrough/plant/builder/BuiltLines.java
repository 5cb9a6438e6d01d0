package runthrough.plant.builder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import runthrough.plant.Distribution;
import runthrough.plant.WorkElement;
import runthrough.plant.check.LineRefusedException;
import runthrough.plant.check.Message;

/** A line described in code, and how it is refused. */
final class BuiltLines {
    private BuiltLines() {}

    /** A coil of 600 m, the entry up to 2.5 m/s, 200 m of strip, the process at 1.5 m/s, a joint of 80 s. */
    static LineBuilder line() {
        return new LineBuilder()
                .coil("coil", 0.002, 1.25, 7850, Distribution.constant(600))
                .entry(2.5, 0.4, 0.5)
                .capacity(200)
                .process(1.5, 0.2, 0.5)
                .join("weld", Distribution.constant(80));
    }

    /** The messages with which {@code line} is refused. */
    static List<String> refusals(LineBuilder line) {
        LineRefusedException refused = catchThrowableOfType(LineRefusedException.class, line::build);
        assertThat(refused).isNotNull();
        return refused.messages().stream().map(Message::text).toList();
    }

    /** 90 s by one person. */
    static WorkElement loading() {
        return new WorkElement(
                "load",
                new WorkElement.WorkTime.Timed(Distribution.constant(90)),
                new WorkElement.Occurrence.Always(),
                false);
    }
}
