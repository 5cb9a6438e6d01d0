package runthrough.report.described;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.plant.Accumulator;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection;
import runthrough.plant.RunPlan;
import runthrough.plant.Shifts;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;
import runthrough.report.Cell;
import runthrough.report.Provenance;
import runthrough.report.Subject;
import runthrough.report.Table;
import runthrough.report.Value;

/** What was described, every value with its unit, part by part. */
public final class InputTables {
    private final SimulationRequest request;
    private final Line line;
    private final InputTexts texts;

    private InputTables(SimulationRequest request) {
        this.request = request;
        this.line = request.line();
        this.texts = new InputTexts(request.resultsIn());
    }

    /** The line of {@code request} as the subject of an answer. */
    public static Subject subject(SimulationRequest request, Provenance provenance) {
        return Subject.line(request, of(request), provenance);
    }

    public static List<Table> of(SimulationRequest request) {
        InputTables tables = new InputTables(request);
        return Stream.of(
                        Optional.of(CoilsTable.of(request.line(), tables.texts)),
                        request.line().practice().hasJoiner() ? Optional.of(tables.entry()) : Optional.<Table>empty(),
                        tables.accumulator(),
                        Optional.of(tables.process()),
                        Optional.of(tables.change()),
                        Optional.of(WorkTable.of(request.line(), tables.texts)),
                        Optional.of(tables.run()),
                        tables.bending())
                .flatMap(Optional::stream)
                .toList();
    }

    private Table entry() {
        Entry entry = line.entry();
        Rows rows = new Rows();
        rows.add("Uncoilers", Cell.of(entry.uncoilers()));
        rows.add("Top speed", texts.cell(Kind.SPEED, entry.topSpeed()));
        rows.add("Acceleration", texts.acceleration(entry.acceleration()));
        rows.add("Deceleration", texts.acceleration(entry.deceleration()));
        entry.creep().ifPresent(creep -> {
            rows.add("Creep speed", texts.cell(Kind.SPEED, creep.speed()));
            rows.add("Creep length", texts.cell(Kind.LENGTH, creep.length()));
        });
        rows.add("Strip path from uncoiler to joiner", texts.cell(Kind.LENGTH, entry.uncoilerPath()));
        return rows.table("Entry section");
    }

    private Optional<Table> accumulator() {
        if (line.practice().isOneStrip()) {
            return Optional.empty();
        }
        Accumulator accumulator = line.accumulator();
        Rows rows = new Rows();
        form(accumulator.form(), rows);
        rows.add("Usable capacity", texts.cell(Kind.LENGTH, accumulator.capacity()));
        rows.add("Fill-rate limit in force", texts.cell(Kind.SPEED, accumulator.fillRateLimit()));
        rows.add("Reserve", texts.cell(Kind.LENGTH, accumulator.reserve()));
        if (Double.isFinite(accumulator.overtravelAllowance())) {
            rows.add("Overtravel allowance", texts.cell(Kind.LENGTH, accumulator.overtravelAllowance()));
        }
        return Optional.of(rows.table("Accumulator"));
    }

    private void form(StorageForm form, Rows rows) {
        if (form instanceof StorageForm.Strands strands) {
            rows.add("Form", strands.vertical() ? "strands, vertical carriage" : "strands, horizontal carriage");
            rows.add("Strands", Cell.of(strands.strands()));
            rows.add("Stroke", texts.cell(Kind.LENGTH, strands.stroke()));
            rows.add("Carriage speed, filling", texts.cell(Kind.SPEED, strands.fillingSpeed()));
            rows.add("Carriage speed, emptying", texts.cell(Kind.SPEED, strands.emptyingSpeed()));
        } else if (form instanceof StorageForm.FreeLoop loop) {
            rows.add("Form", loop.loops() == 1 ? "free loop" : loop.loops() + " free loops");
            rows.add("Span", texts.cell(Kind.LENGTH, loop.span()));
            rows.add("Sag, full", texts.cell(Kind.LENGTH, loop.greatestSag()));
            rows.add("Sag, empty", texts.cell(Kind.LENGTH, loop.leastSag()));
        } else if (form instanceof StorageForm.Spiral spiral) {
            rows.add("Form", "spiral");
            rows.add("Wraps", Cell.of(texts.plain(spiral.wraps())));
            rows.add("Mean diameter of a wrap, full", texts.cell(Kind.DIAMETER, spiral.fullDiameter()));
            rows.add("Mean diameter of a wrap, empty", texts.cell(Kind.DIAMETER, spiral.emptyDiameter()));
        } else {
            rows.add("Form", "given by its capacity");
        }
    }

    private Table process() {
        ProcessSection process = line.process();
        boolean stores = !line.practice().isOneStrip();
        InputTexts calculated = new InputTexts(texts.system(), Rounding.CERTAIN);
        Rows rows = new Rows();
        rows.add("Rated speed", texts.cell(Kind.SPEED, process.speed()));
        rows.add("Acceleration", texts.acceleration(process.acceleration()));
        rows.add("Deceleration", texts.acceleration(process.deceleration()));
        if (stores) {
            rows.add("Stop level", calculated.cell(Kind.LENGTH, line.stopLevel(line.fastestRatedSpeed())));
            rows.add(
                    "Restart level",
                    (Double.isNaN(process.restartLevel()) ? calculated : texts)
                            .cell(Kind.LENGTH, line.restartLevel(line.fastestRatedSpeed())));
        }
        if (line.practice().hasJoiner()) {
            rows.add("Restart delay", texts.cell(Kind.TIME, process.restartDelay()));
        }
        process.slowing().filter(slowing -> stores).ifPresent(slowing -> {
            rows.add("Slowed speed", texts.cell(Kind.SPEED, slowing.speed()));
            rows.add("Slows below a level of", texts.cell(Kind.LENGTH, slowing.level()));
            rows.add("Resumes from a level of", texts.cell(Kind.LENGTH, line.resumeLevel(slowing)));
        });
        process.downtime().ifPresent(stops -> {
            rows.add("Running time between downtimes", texts.cell(Kind.TIME, stops.runningTime()));
            rows.add("Standing time of such a stop", texts.cell(Kind.TIME, stops.standingTime()));
        });
        if (process.path() > 0) {
            rows.add("Strip path from accumulator to process", texts.cell(Kind.LENGTH, process.path()));
        }
        process.jointPassage().ifPresent(passage -> {
            rows.add("Speed while a joint passes, at most", texts.cell(Kind.SPEED, passage.speed()));
            rows.add(
                    "Strip before and after the joint at this speed",
                    texts.text(Kind.LENGTH, passage.before()) + ", " + texts.text(Kind.LENGTH, passage.after()));
        });
        process.jointBreak().ifPresent(breaks -> {
            rows.add("Joints that break in the process", texts.cell(Kind.SHARE, breaks.chance()));
            rows.add("Length of the process section", texts.cell(Kind.LENGTH, breaks.length()));
            rows.add("Repair of a broken joint", texts.cell(Kind.TIME, breaks.repair()));
            rows.add("Strip scrapped by a break, beside that of a stop", texts.cell(Kind.LENGTH, breaks.scrap()));
        });
        rows.add("Strip scrapped by a stop", texts.cell(Kind.LENGTH, process.scrapPerStop()));
        if (process.scrapPerJoint() > 0) {
            rows.add("Strip cut out with each joint", texts.cell(Kind.LENGTH, process.scrapPerJoint()));
        }
        return rows.table("Process section");
    }

    private Table change() {
        Rows rows = new Rows();
        rows.add("Practice", practice());
        line.change()
                .shifts()
                .ifPresentOrElse(
                        shifts -> shifts.list().forEach(shift -> rows.add("Crew, " + shift.name(), crew(shift))),
                        () -> rows.add("Crew", Cell.of(line.change().crew())));
        if (line.change().joinShorterBy() > 0) {
            rows.add(
                    line.practice().hasJoiner() ? "Taken off every pass of the join work" : "Taken off every rethread",
                    texts.text(Kind.TIME, line.change().joinShorterBy()));
        }
        if (line.practice().hasJoiner()) {
            rows.add("Rejected joints", WorkTable.rejects(line.change().reject(), texts));
        }
        return rows.table("Coil change");
    }

    private String practice() {
        if (!line.practice().hasJoiner()) {
            return "threaded anew, without a joiner";
        }
        return line.practice().isOneStrip()
                ? "joined, the process standing meanwhile"
                : "joined, the process running on stored strip";
    }

    private String crew(Shifts.Shift shift) {
        String breaks = shift.breaks().stream()
                .map(one -> ", " + one.crew() + " in the break from " + texts.text(Kind.TIME, one.begin()) + " to "
                        + texts.text(Kind.TIME, one.end()))
                .collect(Collectors.joining());
        return shift.crew() + " for " + texts.text(Kind.TIME, shift.hours()) + breaks;
    }

    private Optional<Table> bending() {
        return line.bending().map(bending -> {
            Rows rows = new Rows();
            rows.add("Modulus of elasticity", texts.cell(Kind.STRESS, bending.modulus()));
            rows.add("Yield stress", texts.cell(Kind.STRESS, bending.yield()));
            rows.add("Smallest roll or loop radius", texts.cell(Kind.DIAMETER, bending.radius()));
            return rows.table("Bending of the strip");
        });
    }

    private Table run() {
        RunPlan run = request.run();
        Rows rows = new Rows();
        if (run.extent() instanceof RunPlan.Extent.Changes changes) {
            rows.add("Coil changes of a replication", Cell.of(changes.changes()));
        } else if (run.extent() instanceof RunPlan.Extent.Time time) {
            rows.add("Time of a replication", texts.cell(Kind.TIME, time.duration()));
        }
        rows.add("First coil changes left out", Cell.of(run.leaveOut()));
        rows.add("Replications", Cell.of(run.replications()));
        rows.add("Seed", Long.toString(run.seed()));
        rows.add("Target: share of coil changes to run through", Cell.of(Value.of(run.target(), Notation.GIVEN_SHARE)));
        run.targetWithoutStop()
                .ifPresent(target -> rows.add(
                        "Target: share of coil changes without a stop",
                        Cell.of(Value.of(target, Notation.GIVEN_SHARE))));
        return rows.table("Run");
    }

    /** Names and values. */
    private static final class Rows {
        private final List<List<Cell>> rows = new ArrayList<>();

        void add(String name, Cell value) {
            rows.add(List.of(Cell.of(name), value));
        }

        void add(String name, String words) {
            add(name, Cell.of(words));
        }

        Table table(String caption) {
            return Table.pairs(caption, rows);
        }
    }
}
