package runthrough.plant.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static runthrough.plant.SoundLine.line;

import runthrough.plant.RunPlan;
import runthrough.plant.SoundLine;
import runthrough.plant.check.Message.Severity;

/** What the check of a line finds, held against what it should. */
final class Found {
    static final RunPlan LONG_RUN = new RunPlan(new RunPlan.Extent.Changes(200), 0, 50, 7, 0.995);

    static void assertOnly(SoundLine line, Severity severity, String text) {
        assertThat(LineCheck.check(line.build()))
                .extracting(Message::severity, Message::text)
                .containsExactly(tuple(severity, text));
    }

    static void assertError(SoundLine line, String text) {
        assertOnly(line, Severity.ERROR, text);
    }

    static void assertWarning(SoundLine line, String text) {
        assertOnly(line, Severity.WARNING, text);
    }

    private Found() {}
}
