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
import runthrough.plant.Line;
import runthrough.plant.check.CheckedLine;
import runthrough.plant.check.LineCheck;
import runthrough.plant.check.LinePart;
import runthrough.plant.check.LineRefusedException;
import runthrough.plant.check.Message;
import runthrough.plant.check.StandIn;

/**
 * Describes a line in code, part by part. {@link #build} checks the whole and fails with all messages at once.
 *
 * <p>Units: SI. Lengths and levels in metres, times in seconds, speeds in m/s, accelerations in m/s2, densities in kg/m3. A
 * number out of its range is kept as a message, with its path, and fails the build, not the call. It hides no message between other
 * numbers; one that would rest on it comes when it is mended. A record made before it is given, as a {@link Coil} or
 * a shift's break, checks its own numbers where it is made, and names all that are out of range. {@link Double#POSITIVE_INFINITY} as an
 * acceleration or deceleration means that the speed changes at once. A part that is null fails the call, by its name.
 *
 * <p>Coils, entry and process must be given, and how the line gets from one coil to the next: with an accumulator, {@link
 * #withoutAccumulator} or {@link #rethread}. Without more said there is one uncoiler, one person, no work, no reject and
 * nothing that stops the process but a lack of strip.
 */
public final class LineBuilder extends WorkSteps<LineBuilder> {
    private static final Twice<Coil.Strip> ANY_STRIP = Twice.alike(new Coil.Strip(1, 1, 1));

    private @Nullable Twice<CoilSource> coils;
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
        Twice<Coil.Strip> strip = refusals.step(
                LinePart.COIL,
                ANY_STRIP,
                (now, numbers) -> new Coil.Strip(
                        numbers.of("thickness", thickness),
                        numbers.of("width", width),
                        numbers.of("density", density)));
        coils = strip.to(any -> new CoilSource.Repeated(new Coil(name, any, size)));
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
        coils = Twice.alike(source);
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
     * @throws LineRefusedException with all messages, when something is missing or refused
     */
    public CheckedLine build() {
        return CheckedLine.of(describe());
    }

    /**
     * The line as described, of which only its numbers are checked one by one; {@link
     * runthrough.plant.check.LineCheck#check(Line)} says what more is found.
     *
     * @throws LineRefusedException with all messages, when something is missing or out of its range
     */
    public Line describe() {
        List<Message> refused = new ArrayList<>(refusals.messages());
        refuseMissing(coils != null, LinePart.COIL, "Give the coils.", refused);
        refuseMissing(
                hasPractice(), LinePart.ACCUMULATOR, "Give its capacity, or say how the line does without.", refused);
        refuseMissing(hasEntry(), LinePart.TOP_SPEED, "Give the drive of the entry.", refused);
        refuseMissing(hasProcess(), LinePart.PROCESS_SPEED, "Give the drive of the process.", refused);
        crewBesideShifts().ifPresent(refused::add);
        if (!refused.isEmpty()) {
            refused.addAll(StandIn.independent(standIn -> LineCheck.check(line(standIn))));
            throw new LineRefusedException(refused);
        }
        return line(StandIn.MILD);
    }

    private static void refuseMissing(boolean isThere, LinePart part, String remedy, List<Message> refused) {
        if (!isThere) {
            refused.add(new Message(Message.Severity.ERROR, part.path(), "nothing; must be given", remedy));
        }
    }

    /** What is described; {@code standIn} is there where something is refused or missing. */
    private Line line(StandIn standIn) {
        return new Line(
                coils == null ? standIn.coils() : coils.with(standIn),
                describedEntry(standIn),
                describedProcess(standIn),
                describedWork(standIn),
                describedPractice(standIn),
                bending);
    }
}
