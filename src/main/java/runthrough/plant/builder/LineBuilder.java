package runthrough.plant.builder;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Bending;
import runthrough.plant.Coil;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.ProcessSection;
import runthrough.plant.check.CheckedLine;
import runthrough.plant.check.LineCheck;
import runthrough.plant.check.LinePart;
import runthrough.plant.check.Message;

/**
 * Describes a line in code, part by part. {@link #build} checks the whole and fails with all messages at once.
 *
 * <p>Units: SI. Lengths and levels in metres, times in seconds, speeds in m/s, accelerations in m/s2, densities in kg/m3. A
 * number out of its range is kept as a message and fails the build, not the call; {@link Double#POSITIVE_INFINITY} as an
 * acceleration or deceleration means that the speed changes at once. A part that is null fails the call, by its name.
 *
 * <p>Coils, entry and process must be given, and how the line gets from one coil to the next: with an accumulator, {@link
 * #withoutAccumulator} or {@link #rethread}. Without more said there is one uncoiler, one person, no work, no reject and
 * nothing that stops the process but a lack of strip.
 */
public final class LineBuilder extends WorkSteps<LineBuilder> {
    private @Nullable CoilSource coils;
    private Optional<Bending> bending = Optional.empty();

    @Override
    LineBuilder self() {
        return this;
    }

    /**
     * One kind of coil, repeated, without crops.
     *
     * @param name for reports
     * @param thickness of the strip (m), {@code > 0}
     * @param width of the strip (m), {@code > 0}
     * @param density of the metal (kg/m3), {@code > 0}
     * @param length of the whole coil (m)
     */
    public LineBuilder coil(String name, double thickness, double width, double density, Distribution length) {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(length, "length");
        CoilSize size = new CoilSize.ByLength(length);
        refusals.tell(LinePart.COIL, () -> coil(new Coil(name, new Coil.Strip(thickness, width, density), size)));
        return this;
    }

    /** One kind of coil, repeated. */
    public LineBuilder coil(Coil coil) {
        Objects.requireNonNull(coil, "coil");
        return coils(new CoilSource.Repeated(coil));
    }

    /** Several kinds of coil: a mix drawn at random, or a schedule. */
    public LineBuilder coils(CoilSource source) {
        Objects.requireNonNull(source, "source");
        coils = source;
        return this;
    }

    /** What the strip is bent over. */
    public LineBuilder bending(Bending over) {
        Objects.requireNonNull(over, "over");
        bending = Optional.of(over);
        return this;
    }

    /**
     * The line, checked.
     *
     * @throws runthrough.plant.check.LineRefusedException with all messages, when something is missing or refused
     */
    public CheckedLine build() {
        return CheckedLine.of(describe());
    }

    /**
     * The line as described, of which only its numbers are checked one by one; {@link
     * runthrough.plant.check.LineCheck#check(Line)} says what more is found.
     *
     * @throws runthrough.plant.check.LineRefusedException with all messages, when something is missing or out of its range
     */
    public Line describe() {
        List<Message> missing = new ArrayList<>();
        CoilSource source = refusals.given(LinePart.COIL, coils, "Give the coils.", missing);
        Practice practice = refusals.given(
                LinePart.ACCUMULATOR,
                describedPractice(),
                "Give its capacity, or say how the line does without.",
                missing);
        Entry entry = refusals.given(LinePart.TOP_SPEED, describedEntry(), "Give the drive of the entry.", missing);
        ProcessSection process =
                refusals.given(LinePart.PROCESS_SPEED, describedProcess(), "Give the drive of the process.", missing);
        if (source == null || practice == null || entry == null || process == null) {
            throw refusals.with(missing);
        }
        checkWork();
        Line line = new Line(source, entry, process, describedWork(), practice, bending);
        if (refusals.any()) {
            throw refusals.with(refusals.leaveRelationsToCheck() ? LineCheck.check(line) : List.of());
        }
        return line;
    }
}
