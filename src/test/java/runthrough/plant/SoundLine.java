package runthrough.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import runthrough.plant.builder.LineBuilder;

/**
 * A line for tests, made by the builder of the program and changed part by part from an invented one in which nothing is wrong: a coil
 * of 600 m between its crops, the entry up to 2.5 m/s, 200 m of strip, the process at 1.5 m/s, 90 s of joint.
 */
public final class SoundLine {
    private CoilSource coilSource = new CoilSource.Repeated(coil(600));
    private Entry entry = new Entry(2, 2.5, 0.4, 0.5, Optional.empty(), 0);
    private Accumulator accumulator = Accumulator.ofCapacity(200);
    private ProcessSection process = ProcessSection.running(1.5, 0.2, 0.5);
    private CoilChange change = new CoilChange(
            2,
            List.of(timed("load", 120)),
            List.of(timed("shear tail", 10)),
            List.of(timed("weld", 80)),
            new CoilChange.Reject.Never());
    private Optional<Practice> oneStrip = Optional.empty();
    private Optional<Bending> bending = Optional.empty();

    private SoundLine() {}

    public static SoundLine line() {
        return new SoundLine();
    }

    /** A coil of the given length (m) without crops, 1.25 m wide and 2 mm thick. */
    public static Coil coil(double length) {
        return coil(Distribution.constant(length), 0, 0);
    }

    /** A coil 1.25 m wide and 2 mm thick. */
    public static Coil coil(Distribution length, double headCrop, double tailCrop) {
        return new Coil("coil", new Coil.Strip(0.002, 1.25, 7850), new CoilSize.ByLength(length))
                .withCrops(headCrop, tailCrop);
    }

    /** The same coil with a process speed of its own (m/s). */
    public static Coil atSpeed(Coil coil, double speed) {
        return coil.withProcessSpeed(speed);
    }

    /** An element that always takes {@code seconds}, done every time and again after a reject. */
    public static WorkElement timed(String name, double seconds) {
        return timed(name, Distribution.constant(seconds));
    }

    public static WorkElement timed(String name, Distribution time) {
        return new WorkElement(name, new WorkElement.WorkTime.Timed(time), new WorkElement.Occurrence.Always(), true);
    }

    public SoundLine coilSource(CoilSource value) {
        coilSource = value;
        return this;
    }

    public SoundLine coils(Coil first, Coil... others) {
        List<Coil> coils = new ArrayList<>(List.of(first));
        coils.addAll(List.of(others));
        coilSource = others.length == 0 ? new CoilSource.Repeated(first) : new CoilSource.Schedule(coils);
        return this;
    }

    public SoundLine entry(int uncoilers, double topSpeed, double acceleration, double deceleration) {
        entry = new Entry(uncoilers, topSpeed, acceleration, deceleration, entry.creep(), entry.uncoilerPath());
        return this;
    }

    public SoundLine uncoilers(int value) {
        return entry(value, entry.topSpeed(), entry.acceleration(), entry.deceleration());
    }

    public SoundLine topSpeed(double value) {
        return entry(entry.uncoilers(), value, entry.acceleration(), entry.deceleration());
    }

    public SoundLine creep(double speed, double length) {
        entry = new Entry(
                entry.uncoilers(),
                entry.topSpeed(),
                entry.acceleration(),
                entry.deceleration(),
                Optional.of(new Entry.Creep(speed, length)),
                entry.uncoilerPath());
        return this;
    }

    public SoundLine uncoilerPath(double value) {
        entry = new Entry(
                entry.uncoilers(), entry.topSpeed(), entry.acceleration(), entry.deceleration(), entry.creep(), value);
        return this;
    }

    public SoundLine capacity(double value) {
        return accumulator(new Accumulator(
                new StorageForm.Direct(value),
                accumulator.ownFillRateLimit(),
                accumulator.reserve(),
                accumulator.overtravelAllowance()));
    }

    public SoundLine reserve(double value) {
        return accumulator(new Accumulator(
                accumulator.form(), accumulator.ownFillRateLimit(), value, accumulator.overtravelAllowance()));
    }

    public SoundLine fillRateLimit(double value) {
        return accumulator(
                new Accumulator(accumulator.form(), value, accumulator.reserve(), accumulator.overtravelAllowance()));
    }

    public SoundLine accumulator(Accumulator value) {
        accumulator = value;
        return this;
    }

    public SoundLine process(ProcessSection value) {
        process = value;
        return this;
    }

    public SoundLine process(double speed, double acceleration, double deceleration) {
        return process(process.withDrive(new ProcessSection.Drive(speed, acceleration, deceleration)));
    }

    public SoundLine processSpeed(double value) {
        return process(value, process.acceleration(), process.deceleration());
    }

    public SoundLine restart(double level, Distribution delay) {
        return process(process.withRestart(new ProcessSection.Restart(level, delay)));
    }

    public SoundLine slowing(double speed, double level, double resumeLevel) {
        return process(process.withSlowing(Optional.of(new ProcessSection.Slowing(speed, level, resumeLevel))));
    }

    public SoundLine downtime(Distribution runningTime, Distribution standingTime) {
        return process(process.withDowntime(Optional.of(new ProcessSection.Downtime(runningTime, standingTime))));
    }

    public SoundLine change(UnaryOperator<CoilChange> edit) {
        change = edit.apply(change);
        return this;
    }

    public SoundLine crew(int value) {
        return change(c -> new CoilChange(value, c.prepare(), c.tail(), c.join(), c.reject()));
    }

    public SoundLine prepare(WorkElement... value) {
        return change(c -> new CoilChange(c.crew(), List.of(value), c.tail(), c.join(), c.reject()));
    }

    public SoundLine tail(WorkElement... value) {
        return change(c -> new CoilChange(c.crew(), c.prepare(), List.of(value), c.join(), c.reject()));
    }

    public SoundLine join(WorkElement... value) {
        return change(c -> new CoilChange(c.crew(), c.prepare(), c.tail(), List.of(value), c.reject()));
    }

    public SoundLine reject(CoilChange.Reject value) {
        return change(c -> new CoilChange(c.crew(), c.prepare(), c.tail(), c.join(), value));
    }

    /** The practice of rethreading: no joiner, no accumulator. */
    public SoundLine rethread(Distribution time) {
        oneStrip = Optional.of(new Practice.Rethread(time));
        return change(c -> new CoilChange(c.crew(), c.prepare(), List.of(), List.of(), c.reject()));
    }

    /** A practice of one strip, whatever work is described. */
    public SoundLine practice(Practice value) {
        oneStrip = Optional.of(value);
        return this;
    }

    /** The practice of joining without an accumulator. */
    public SoundLine withoutAccumulator() {
        oneStrip = Optional.of(new Practice.JoinWithoutAccumulator());
        return this;
    }

    public SoundLine bending(Bending value) {
        bending = Optional.of(value);
        return this;
    }

    public Line build() {
        LineBuilder line = new LineBuilder()
                .coils(coilSource)
                .entry(entry)
                .process(process)
                .change(change)
                .practice(oneStrip.orElseGet(() -> new Practice.JoinWithAccumulator(accumulator)));
        bending.ifPresent(line::bending);
        return line.describe();
    }
}
