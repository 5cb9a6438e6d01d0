package runthrough.plant.builder;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Accumulator;
import runthrough.plant.Bending;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.ProcessSection;
import runthrough.plant.Shifts;
import runthrough.plant.StorageForm;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
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
public final class LineBuilder {
    private static final double AT_ONCE = Double.POSITIVE_INFINITY;

    private final Refusals refusals = new Refusals();
    private @Nullable CoilSource coils;
    private @Nullable Practice practice;
    private boolean hasEntry;
    private boolean hasProcess;
    /** 0 where none is given. */
    private int crewGiven;

    private boolean hasShifts;
    /** By one call each or as a whole, those that were refused with them. */
    private int shiftsGiven;

    private Entry entry = new Entry(1, 1, AT_ONCE, AT_ONCE, Optional.empty(), 0);
    private Accumulator accumulator = Accumulator.none();
    private ProcessSection process = ProcessSection.running(1, AT_ONCE, AT_ONCE);
    private CoilChange change = new CoilChange(1, List.of(), List.of(), List.of(), new Reject.Never());
    private Optional<Bending> bending = Optional.empty();

    // ---- coils

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
        refusals.tell(
                LinePart.COIL,
                () -> coil(new Coil(name, thickness, width, density, size, 0, 0, OptionalDouble.empty())));
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

    // ---- entry

    /**
     * The drive of the entry section.
     *
     * @param topSpeed greatest strip speed (m/s), {@code > 0}
     * @param acceleration (m/s2), {@code > 0}
     * @param deceleration (m/s2), {@code > 0}
     */
    public LineBuilder entry(double topSpeed, double acceleration, double deceleration) {
        hasEntry = true;
        refusals.tell(LinePart.TOP_SPEED, () -> entry = entry.withTopSpeed(topSpeed));
        refusals.tell(
                LinePart.ENTRY_ACCELERATION,
                () -> entry = new Entry(
                        entry.uncoilers(),
                        entry.topSpeed(),
                        acceleration,
                        entry.deceleration(),
                        entry.creep(),
                        entry.uncoilerPath()));
        refusals.tell(
                LinePart.ENTRY_DECELERATION,
                () -> entry = new Entry(
                        entry.uncoilers(),
                        entry.topSpeed(),
                        entry.acceleration(),
                        deceleration,
                        entry.creep(),
                        entry.uncoilerPath()));
        return this;
    }

    /** The entry section as a whole, in the place of what was said of it. */
    public LineBuilder entry(Entry whole) {
        Objects.requireNonNull(whole, "whole");
        hasEntry = true;
        entry = whole;
        return this;
    }

    /** How many uncoilers, {@code >= 1}. */
    public LineBuilder uncoilers(int number) {
        refusals.tell(LinePart.UNCOILERS, () -> entry = entry.withUncoilers(number));
        return this;
    }

    /** Strip path from uncoiler to joiner (m), {@code >= 0}. */
    public LineBuilder uncoilerPath(double path) {
        refusals.tell(LinePart.UNCOILER_PATH, () -> entry = with(entry.creep(), path));
        return this;
    }

    /**
     * Slow running before the tail of a coil.
     *
     * @param speed (m/s), {@code > 0}
     * @param length over which it is held (m), {@code > 0}
     */
    public LineBuilder creep(double speed, double length) {
        refusals.tell(
                LinePart.CREEP, () -> entry = with(Optional.of(new Entry.Creep(speed, length)), entry.uncoilerPath()));
        return this;
    }

    private Entry with(Optional<Entry.Creep> creep, double uncoilerPath) {
        return new Entry(
                entry.uncoilers(), entry.topSpeed(), entry.acceleration(), entry.deceleration(), creep, uncoilerPath);
    }

    // ---- practice

    /** Joins with an accumulator of usable capacity {@code capacity} (m). */
    public LineBuilder capacity(double capacity) {
        refusals.tell(LinePart.ACCUMULATOR, () -> storedIn(new StorageForm.Direct(capacity)));
        return this;
    }

    /** Joins with an accumulator of this form; what was said of its limits stays. */
    public LineBuilder accumulator(StorageForm form) {
        Objects.requireNonNull(form, "form");
        storedIn(form);
        return this;
    }

    /** Joins with this accumulator. */
    public LineBuilder accumulator(Accumulator whole) {
        Objects.requireNonNull(whole, "whole");
        accumulator = whole;
        return practice(new Practice.JoinWithAccumulator(whole));
    }

    private void storedIn(StorageForm form) {
        accumulator(new Accumulator(
                form, accumulator.ownFillRateLimit(), accumulator.reserve(), accumulator.overtravelAllowance()));
    }

    /** Limit of the accumulator on entry speed minus process speed (m/s), {@code > 0}. */
    public LineBuilder fillRateLimit(double limit) {
        refusals.tell(
                LinePart.FILL_RATE_LIMIT,
                () -> limits(limit, accumulator.reserve(), accumulator.overtravelAllowance()));
        return this;
    }

    /** Strip in the accumulator that is never planned to be used (m), {@code >= 0}. */
    public LineBuilder reserve(double metres) {
        refusals.tell(
                LinePart.RESERVE,
                () -> limits(accumulator.ownFillRateLimit(), metres, accumulator.overtravelAllowance()));
        return this;
    }

    /** Strip above the capacity from which the accumulator counts as overfull (m), {@code >= 0}. */
    public LineBuilder overtravelAllowance(double metres) {
        refusals.tell(
                LinePart.OVERTRAVEL_ALLOWANCE,
                () -> limits(accumulator.ownFillRateLimit(), accumulator.reserve(), metres));
        return this;
    }

    private void limits(double fillRate, double reserve, double allowance) {
        accumulator = new Accumulator(accumulator.form(), fillRate, reserve, allowance);
        if (practice instanceof Practice.JoinWithAccumulator) {
            practice = new Practice.JoinWithAccumulator(accumulator);
        }
    }

    /** How the line gets from one coil to the next, with what only that practice needs. */
    public LineBuilder practice(Practice how) {
        Objects.requireNonNull(how, "how");
        practice = how;
        return this;
    }

    /** Joins without an accumulator: entry and process are one strip, and stand during the joint. */
    public LineBuilder withoutAccumulator() {
        return practice(new Practice.JoinWithoutAccumulator());
    }

    /** Does not join: the line stops at each coil change and is threaded anew, which takes {@code time} (s). */
    public LineBuilder rethread(Distribution time) {
        Objects.requireNonNull(time, "time");
        return practice(new Practice.Rethread(time));
    }

    // ---- process

    /**
     * The drive of the process section.
     *
     * @param speed rated strip speed (m/s), {@code > 0}
     * @param acceleration (m/s2), {@code > 0}
     * @param deceleration (m/s2), {@code > 0}
     */
    public LineBuilder process(double speed, double acceleration, double deceleration) {
        hasProcess = true;
        refusals.tell(LinePart.PROCESS_SPEED, () -> process = process.withSpeed(speed));
        refusals.tell(
                LinePart.PROCESS_ACCELERATION, () -> process = process.withRamps(acceleration, process.deceleration()));
        refusals.tell(
                LinePart.PROCESS_DECELERATION, () -> process = process.withRamps(process.acceleration(), deceleration));
        return this;
    }

    /** The process section as a whole, in the place of what was said of it. */
    public LineBuilder process(ProcessSection whole) {
        Objects.requireNonNull(whole, "whole");
        hasProcess = true;
        process = whole;
        return this;
    }

    /**
     * When the process starts again after a starved stop.
     *
     * @param level from which it may (m), {@code >= 0}; NaN for the usual one, see {@link Line#restartLevel}
     * @param delay from being allowed to until it does (s)
     */
    public LineBuilder restart(double level, Distribution delay) {
        Objects.requireNonNull(delay, "delay");
        refusals.tell(LinePart.RESTART_LEVEL, () -> process = process.withRestart(level, delay));
        return this;
    }

    /**
     * Running slower while little strip is left.
     *
     * @param speed slowed strip speed (m/s), {@code > 0}
     * @param level below which it begins (m), {@code >= 0}
     * @param resumeLevel from which full speed is taken up again (m); NaN for the usual one, see {@link Line#resumeLevel}
     */
    public LineBuilder slowing(double speed, double level, double resumeLevel) {
        refusals.tell(
                LinePart.SLOWING,
                () -> process =
                        process.withSlowing(Optional.of(new ProcessSection.Slowing(speed, level, resumeLevel))));
        return this;
    }

    /**
     * Stops of the process that have nothing to do with coil changes.
     *
     * @param running time from the end of one until the next falls due, counted while the process moves (s)
     * @param standing how long it stands, from coming to rest (s)
     */
    public LineBuilder downtime(Distribution running, Distribution standing) {
        Objects.requireNonNull(running, "running");
        Objects.requireNonNull(standing, "standing");
        process = process.withDowntime(Optional.of(new ProcessSection.Downtime(running, standing)));
        return this;
    }

    /** Fixed strip path from accumulator to process (m), {@code >= 0}. */
    public LineBuilder processPath(double path) {
        refusals.tell(LinePart.PROCESS_PATH, () -> process = process.withPath(path));
        return this;
    }

    /** Strip scrapped by each stop of the process (m), {@code >= 0}. */
    public LineBuilder scrapPerStop(double metres) {
        refusals.tell(LinePart.SCRAP_PER_STOP, () -> process = process.withScrap(metres, process.scrapPerJoint()));
        return this;
    }

    /** Strip cut out with each joint after the process (m), {@code >= 0}, half of each coil. */
    public LineBuilder scrapPerJoint(double metres) {
        refusals.tell(LinePart.SCRAP_PER_JOINT, () -> process = process.withScrap(process.scrapPerStop(), metres));
        return this;
    }

    /**
     * Running slower while a joint passes the process section; a passage is planned and counts neither as slowed nor as stopped.
     *
     * @param speed at most, while it passes (m/s), {@code > 0} and below the rated speed
     * @param before so much of the strip before the joint (m), {@code >= 0}
     * @param after and so much behind it (m), {@code >= 0}
     */
    public LineBuilder jointPassage(double speed, double before, double after) {
        refusals.tell(
                LinePart.JOINT_PASSAGE,
                () -> process = process.withJoints(
                        Optional.of(new ProcessSection.JointPassage(speed, before, after)), process.jointBreak()));
        return this;
    }

    /**
     * Joints that break in the process section, for which it stops.
     *
     * @param chance that a joint breaks, in [0, 1)
     * @param length of the process section, anywhere in which it may break (m), {@code > 0}
     * @param repair how long the process stands, from coming to rest (s)
     * @param scrap strip scrapped by a break on top of that of a stop (m), {@code >= 0}
     */
    public LineBuilder jointBreak(double chance, double length, Distribution repair, double scrap) {
        Objects.requireNonNull(repair, "repair");
        refusals.tell(
                LinePart.JOINT_BREAK,
                () -> process = process.withJoints(
                        process.jointPassage(),
                        Optional.of(new ProcessSection.JointBreak(chance, length, repair, scrap))));
        return this;
    }

    // ---- work

    /** All work of a coil change, in the place of what was said of it. */
    public LineBuilder change(CoilChange whole) {
        Objects.requireNonNull(whole, "whole");
        crewGiven = 0;
        hasShifts = false;
        shiftsGiven = whole.shifts().map(given -> given.list().size()).orElse(0);
        return work(whole);
    }

    private LineBuilder work(CoilChange whole) {
        change = whole;
        return this;
    }

    /** How many people attend to coil changes, {@code >= 1}, at all hours; not beside shifts. */
    public LineBuilder crew(int people) {
        crewGiven = people;
        refusals.tell(
                LinePart.CREW,
                () -> change = new CoilChange(people, change.prepare(), change.tail(), change.join(), change.reject()));
        return this;
    }

    /** Who attends to coil changes at which hours; not beside a crew that is always there. The shifts repeat from time 0. */
    public LineBuilder shifts(Shifts whole) {
        Objects.requireNonNull(whole, "whole");
        hasShifts = true;
        shiftsGiven = whole.list().size();
        return work(change.withShifts(whole));
    }

    /**
     * Adds a shift after those given before; not beside a crew that is always there.
     *
     * @param name for reports
     * @param hours how long it lasts (s), {@code > 0}
     * @param people who attend to coil changes in it, {@code >= 1}
     * @param breaks in it, which must not overlap: begin after the start of the shift (s), length (s), people who stay
     */
    public LineBuilder shift(String name, double hours, int people, Shifts.Break... breaks) {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(breaks, "breaks");
        hasShifts = true;
        shiftsGiven++;
        refusals.tell(LinePart.SHIFTS, LinePart.SHIFTS.path() + "[" + shiftsGiven + "]", () -> {
            List<Shifts.Shift> all =
                    new ArrayList<>(change.shifts().map(Shifts::list).orElse(List.of()));
            all.add(new Shifts.Shift(name, hours, people, List.of(breaks)));
            work(change.withShifts(new Shifts(all)));
        });
        return this;
    }

    /** Adds work on the next coil, done while the line runs: it takes {@code time} (s) at every coil change. */
    public LineBuilder prepare(String name, Distribution time) {
        return prepare(always(name, time));
    }

    /**
     * Adds work on the next coil, done while the line runs. How many people it takes, whether it may be put down for work on the
     * joint, and at which coil changes it is done stand in {@code element}, see {@link WorkElement#withPeople}, {@link
     * WorkElement#notToBePutDown} and {@link WorkElement.Occurrence}.
     */
    public LineBuilder prepare(WorkElement element) {
        return work(and(change.prepare(), element), change.tail(), change.join());
    }

    /** Adds work that needs the tail only, strip standing: it takes {@code time} (s) at every coil change and pass. */
    public LineBuilder tail(String name, Distribution time) {
        return tail(always(name, time));
    }

    /** Adds work that needs the tail only, strip standing. */
    public LineBuilder tail(WorkElement element) {
        return work(change.prepare(), and(change.tail(), element), change.join());
    }

    /** Adds work that needs both coils, strip standing: it takes {@code time} (s) at every coil change and pass. */
    public LineBuilder join(String name, Distribution time) {
        return join(always(name, time));
    }

    /** Adds work that needs both coils, strip standing. */
    public LineBuilder join(WorkElement element) {
        return work(change.prepare(), change.tail(), and(change.join(), element));
    }

    /** How often a joint is made again. */
    public LineBuilder reject(Reject how) {
        Objects.requireNonNull(how, "how");
        return work(change.withReject(how));
    }

    /** Each joint is rejected with this chance, in [0, 1). */
    public LineBuilder rejectChance(double chance) {
        refusals.tell(LinePart.REJECT, () -> reject(new Reject.Chance(chance)));
        return this;
    }

    private LineBuilder work(List<WorkElement> prepare, List<WorkElement> tail, List<WorkElement> join) {
        return work(change.withWork(prepare, tail, join));
    }

    private static List<WorkElement> and(List<WorkElement> elements, WorkElement more) {
        Objects.requireNonNull(more, "element");
        List<WorkElement> all = new ArrayList<>(elements);
        all.add(more);
        return all;
    }

    private static WorkElement always(String name, Distribution time) {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(time, "time");
        return new WorkElement(name, new WorkTime.Timed(time), new Occurrence.Always(), true);
    }

    /** What the strip is bent over. */
    public LineBuilder bending(Bending over) {
        Objects.requireNonNull(over, "over");
        bending = Optional.of(over);
        return this;
    }

    // ---- the whole

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
        Practice chosen = refusals.given(
                LinePart.ACCUMULATOR, practice, "Give its capacity, or say how the line does without.", missing);
        refusals.given(LinePart.TOP_SPEED, hasEntry ? entry : null, "Give the drive of the entry.", missing);
        refusals.given(LinePart.PROCESS_SPEED, hasProcess ? process : null, "Give the drive of the process.", missing);
        if (source == null || chosen == null || !missing.isEmpty()) {
            throw refusals.with(missing);
        }
        if (crewGiven != 0 && hasShifts) {
            // Rule CHECK-27.
            refusals.refuse(
                    LinePart.CREW,
                    crewGiven + "; must not stand beside " + LinePart.SHIFTS.path(),
                    "Leave out the crew, or the shifts.");
        }
        Line line = new Line(source, entry, process, change, chosen, bending);
        if (refusals.any()) {
            throw refusals.with(refusals.leaveRelationsToCheck() ? LineCheck.check(line) : List.of());
        }
        return line;
    }
}
