package runthrough.plant.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import runthrough.plant.Accumulator;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Entry;
import runthrough.plant.Practice;
import runthrough.plant.ProcessSection;
import runthrough.plant.StorageForm;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;

/**
 * What stands in for the parts of a line that are refused, so that all others can still be held against each other. The line is
 * checked with either stand-in, and a message counts that is the same both times: a message names the values that it rests on, so
 * one about a stand-in differs. The two are as far apart as can be, the one with the least demand on the rest of the line and
 * without chance, the other with the most and random: what is found with both is found with anything between them.
 *
 * <p>Rule CHECK-35.
 */
public enum StandIn {
    /** Fast ramps, slow process, ample store; nothing random. */
    MILD,
    /** Slow ramps, fast process, no store; everything random. */
    HARSH;

    private static final double LITTLE = 1e-9;
    private static final double MUCH = 1e9;
    private static final Distribution SOME_TIME = Distribution.uniform(MUCH / 2, MUCH);

    /** The messages of a check that rest on no stand-in: those that are alike whichever of the two is there. */
    public static List<Message> independent(Function<StandIn, List<Message>> check) {
        List<Message> alike = new ArrayList<>(check.apply(MILD));
        alike.retainAll(check.apply(HARSH));
        return List.copyOf(alike);
    }

    /** The other of the two. */
    public StandIn other() {
        return this == MILD ? HARSH : MILD;
    }

    /** What stands in for a time. */
    public Distribution time() {
        return this == MILD ? Distribution.constant(LITTLE) : SOME_TIME;
    }

    /** A distribution of {@code value} alone, {@code >= 0}, or of values at random up to it. */
    public Distribution spread(double value) {
        return this == MILD ? Distribution.constant(value) : Distribution.uniform(value / 2, value);
    }

    /** What stands in for a work element of which the name alone is known. */
    public WorkElement element(String name) {
        WorkElement any = new WorkElement(name, new WorkTime.Timed(time()), new Occurrence.Always(), this == HARSH);
        return this == MILD ? any : any.withPeople((int) MUCH);
    }

    /** What stands in for the coils. */
    public CoilSource coils() {
        if (this == MILD) {
            return new CoilSource.Repeated(new Coil(
                    "stand-in",
                    new Coil.Strip(LITTLE, LITTLE, LITTLE),
                    new CoilSize.ByLength(Distribution.constant(MUCH))));
        }
        Coil one = coil("stand-in", MUCH).withProcessSpeed(MUCH);
        Coil other = coil("other stand-in", MUCH / 2).withProduct("other");
        return new CoilSource.Mix(List.of(new CoilSource.Share(one, 1), new CoilSource.Share(other, 1)));
    }

    private static Coil coil(String name, double size) {
        return new Coil(
                name,
                new Coil.Strip(size, size, size),
                new CoilSize.ByLength(Distribution.uniform(LITTLE, 2 * LITTLE)),
                new Coil.Crops(LITTLE, LITTLE),
                OptionalDouble.empty(),
                "",
                Optional.empty());
    }

    /** What stands in for the entry section. */
    public Entry entry() {
        return this == MILD
                ? new Entry(1, MUCH, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Optional.empty(), 0)
                : new Entry(1, LITTLE, LITTLE, LITTLE, Optional.of(new Entry.Creep(LITTLE, MUCH)), MUCH);
    }

    /** What stands in for the process section. */
    public ProcessSection process() {
        if (this == MILD) {
            return ProcessSection.running(LITTLE, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        }
        return new ProcessSection(
                new ProcessSection.Drive(MUCH, LITTLE, LITTLE),
                new ProcessSection.Restart(MUCH, SOME_TIME),
                Optional.of(new ProcessSection.Slowing(MUCH, MUCH, MUCH)),
                Optional.of(new ProcessSection.Downtime(SOME_TIME, SOME_TIME)),
                MUCH,
                new ProcessSection.Scrap(MUCH, MUCH),
                new ProcessSection.JointsInProcess(
                        Optional.of(new ProcessSection.JointPassage(MUCH, MUCH, MUCH)),
                        Optional.of(new ProcessSection.JointBreak(0.5, MUCH, SOME_TIME, MUCH))));
    }

    /** What stands in for the accumulator. */
    public Accumulator accumulator() {
        return this == MILD
                ? Accumulator.ofCapacity(MUCH)
                : new Accumulator(new StorageForm.Strands(1, LITTLE, LITTLE, LITTLE, false), LITTLE, MUCH, 0);
    }

    /** What stands in for the practice, where not even that is known. */
    public Practice practice() {
        return this == MILD ? new Practice.JoinWithAccumulator(accumulator()) : new Practice.Rethread(SOME_TIME);
    }

    /** What stands in for the people and the work of a coil change. */
    public CoilChange work() {
        return this == MILD
                ? new CoilChange((int) MUCH, List.of(), List.of(), List.of(), new Reject.Never())
                : new CoilChange(1, List.of(), List.of(), List.of(), new Reject.Chance(0.5)).withJoinLongerBy(MUCH);
    }
}
