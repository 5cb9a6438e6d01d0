package runthrough.crosscheck;

import static runthrough.simulation.LineBuilder.AT_ONCE;
import static runthrough.simulation.LineBuilder.coil;
import static runthrough.simulation.LineBuilder.coilAt;
import static runthrough.simulation.LineBuilder.cropped;
import static runthrough.simulation.LineBuilder.element;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Practice;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.simulation.LineBuilder;

/** One line for each thing that can be described, so that a disagreement names what it is about. */
final class ChosenLines {
    private static final double NO_LEVEL = Double.NaN;

    private final List<Case> cases = new ArrayList<>();

    private ChosenLines() {}

    static List<Case> all() {
        ChosenLines lines = new ChosenLines();
        lines.entryAndAccumulator();
        lines.process();
        lines.work();
        lines.coils();
        lines.withoutAccumulator();
        lines.extents();
        return lines.cases;
    }

    private void add(String name, LineBuilder line) {
        add(name, line, new RunPlan(new Extent.Changes(25), 0, 1, 4711, 0.9));
    }

    private void add(String name, LineBuilder line, RunPlan plan) {
        cases.add(new Case(name, line.build(), plan));
    }

    /** Ramps everywhere, coils and joints of random length, an accumulator that is now and then too small. */
    private static LineBuilder ramps() {
        return new LineBuilder()
                .coils(coil(Distribution.uniform(310, 690)))
                .entry(2.57, 0.31, 0.43)
                .process(1.53, 0.17, 0.22)
                .capacity(131)
                .join(Distribution.lognormal(61, 19));
    }

    private static LineBuilder jumps() {
        return ramps().entry(2.57, AT_ONCE, AT_ONCE).process(1.53, AT_ONCE, AT_ONCE);
    }

    private void entryAndAccumulator() {
        add("ramps everywhere", ramps());
        add("speed changes at once", jumps());
        add("entry speeds up at once, slows by ramp", ramps().entry(2.57, AT_ONCE, 0.29));
        add("entry slows at once, speeds up by ramp", ramps().entry(2.57, 0.29, AT_ONCE));
        add("fill-rate limit", ramps().fillRate(0.37).capacity(171));
        add("creep", ramps().creep(0.41, 7.3).capacity(160));
        add("creep with speed changes at once", jumps().creep(0.41, 7.3).capacity(160));
        add(
                "reserve, and an allowance for overtravel",
                overtravel().reserve(9.1).allowance(1.7));
    }

    /** The entry cannot slow as fast as the process does when it stops for itself. */
    private static LineBuilder overtravel() {
        return ramps().entry(2.57, 0.31, 0.11)
                .process(1.53, 0.17, 0.39)
                .downtime(Distribution.exponential(170), Distribution.uniform(11, 73));
    }

    private void process() {
        add("starved stops, restart delay", tight().restart(NO_LEVEL, Distribution.triangular(2, 9, 31)));
        add("restart only when full", tight().restart(103, Distribution.constant(0)));
        add("restart into the next stop", tight().restart(4.1, Distribution.uniform(1, 9)));
        add("slowing", tight().slowing(0.61, 47.3, NO_LEVEL));
        add("slowing until full", tight().slowing(0.61, 97.3, NO_LEVEL));
        add(
                "own stops that the entry follows",
                tight().downtime(Distribution.exponential(210), Distribution.gamma(41, 17)));
        add("own stops that the entry cannot follow", overtravel());
        add("own stops near the tail", overtravel().creep(0.52, 31.3).coils(coil(Distribution.uniform(130, 210))));
        add(
                "everything that holds the process back",
                tight().slowing(0.61, 47.3, NO_LEVEL)
                        .restart(60.7, Distribution.uniform(1, 9))
                        .downtime(Distribution.exponential(110), Distribution.uniform(11, 73))
                        .creep(0.41, 7.3)
                        .scrapPerStop(2.3));
    }

    private static LineBuilder tight() {
        return ramps().capacity(103);
    }

    private void work() {
        add("one uncoiler, one person", prepared().uncoilers(1, 0).crew(1));
        add("one uncoiler, two people", prepared().uncoilers(1, 0));
        add("two uncoilers, one person", prepared().crew(1));
        add("three uncoilers, two people, a long way to the joiner", prepared().uncoilers(3, 83.1));
        add("elements now and then, and by travel across the strip", occasional());
        add("rejects by chance", occasional().coils(cropped(403, 1.3, 0.7)).reject(new Reject.Chance(0.37)));
        add(
                "rejects every third time",
                occasional().coils(cropped(403, 1.3, 0.7)).reject(new Reject.Every(3)));
    }

    private static LineBuilder prepared() {
        return ramps().prepare(element(Distribution.weibull(2.1, 93)))
                .prepare(61.3)
                .tail(7.7);
    }

    private static LineBuilder occasional() {
        return ramps().crew(1)
                .prepare(done(new Occurrence.Every(2), Distribution.uniform(60, 190), true))
                .prepare(done(new Occurrence.Chance(0.6), Distribution.uniform(60, 90), false))
                .tail(done(new Occurrence.Chance(0.3), Distribution.exponential(9), true))
                .join(new WorkElement(
                        "weld", new WorkTime.Travel(0.041, Distribution.normal(9, 2)), new Occurrence.Always(), true))
                .join(done(new Occurrence.Every(3), Distribution.uniform(6, 19), false));
    }

    private static WorkElement done(Occurrence when, Distribution time, boolean redo) {
        return new WorkElement("work", new WorkTime.Timed(time), when, redo);
    }

    private void coils() {
        add(
                "speed by coil",
                ramps().coils(coilAt(307, 1.1), coilAt(251, 1.53), coilAt(199, 0.7))
                        .processPath(31.7));
        add(
                "several joints on their way to the process",
                ramps().coils(coilAt(97, 1.1), coilAt(41, 1.53), coilAt(53, 0.7))
                        .processPath(211.3));
        add(
                "coils too short to reach speed",
                ramps().coils(coil(301), coil(5.3), coil(1.9), coil(43)).creep(0.41, 7.3));
        add(
                "coils shorter than the way to the joiner",
                prepared().coils(coil(301), coil(23), coil(61)).uncoilers(2, 37.7));
        add("a mix by weight, mass and diameters", ramps().coilSource(mix()).processPath(12.1));
    }

    private static CoilSource mix() {
        Coil heavy = new Coil(
                "heavy",
                0.0031,
                1.27,
                7850,
                new CoilSize.ByMass(Distribution.uniform(9000, 14000)),
                1.1,
                0.4,
                OptionalDouble.empty());
        Coil wound = new Coil(
                "wound",
                0.0017,
                0.93,
                2700,
                new CoilSize.ByDiameters(1.21, 0.508, 0.97),
                0.6,
                0.3,
                OptionalDouble.of(1.27));
        return new CoilSource.Mix(List.of(new CoilSource.Share(heavy, 3), new CoilSource.Share(wound, 1.3)));
    }

    private void withoutAccumulator() {
        add("joined without an accumulator", oneStrip());
        add("joined without an accumulator, creep", oneStrip().creep(0.33, 11.7));
        add(
                "joined without an accumulator, own stops near the tail",
                oneStrip()
                        .coils(coil(Distribution.uniform(60, 90)))
                        .creep(0.33, 11.7)
                        .downtime(Distribution.exponential(37), Distribution.uniform(11, 73)));
        add(
                "joined without an accumulator, speed by coil",
                oneStrip()
                        .coils(coilAt(307, 1.1), coilAt(51, 1.53), coilAt(99, 0.7))
                        .processPath(71.3));
        add("threaded anew", prepared().crew(1).rethread(Distribution.triangular(210, 400, 870)));
        add(
                "threaded anew, own stops, speed by coil",
                prepared()
                        .coils(coilAt(307, 1.1), coilAt(151, 1.53))
                        .downtime(Distribution.exponential(91), Distribution.uniform(11, 73))
                        .rethread(Distribution.triangular(210, 400, 870)));
    }

    private static LineBuilder oneStrip() {
        return prepared()
                .practice(Practice.JOIN_WITHOUT_ACCUMULATOR)
                .restart(NO_LEVEL, Distribution.uniform(1, 9))
                .scrapPerStop(2.3);
    }

    private void extents() {
        add("first coil changes left out", tight(), new RunPlan(new Extent.Changes(25), 7, 1, 4711, 0.9));
        add("a given time", tight(), new RunPlan(new Extent.Time(3217.3), 0, 1, 4711, 0.9));
    }
}
