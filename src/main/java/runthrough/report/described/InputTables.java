package runthrough.report.described;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.plant.Accumulator;
import runthrough.plant.Coil;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection;
import runthrough.plant.RunPlan;
import runthrough.plant.Shifts;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.quantity.Kind;
import runthrough.quantity.Numbers;
import runthrough.report.Provenance;
import runthrough.report.Subject;
import runthrough.report.Table;
import runthrough.report.Texts;

/** What was described, every value with its unit, part by part. */
public final class InputTables {
    private static final int MOST_COILS = 60;

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
                        Optional.of(tables.coils()),
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

    private Table coils() {
        List<String> head = new ArrayList<>(
                List.of("Coil", "Thickness", "Width", "Density", "Size", "Head crop", "Tail crop", "Process speed"));
        Optional<CoilSource.Mix> mix =
                line.coilSource() instanceof CoilSource.Mix m ? Optional.of(m) : Optional.empty();
        mix.ifPresent(m -> head.add("Share"));
        List<Coil> coils = line.coils();
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < Math.min(MOST_COILS, coils.size()); i++) {
            List<String> row = new ArrayList<>(coil(coils.get(i)));
            int index = i;
            mix.ifPresent(
                    m -> row.add(texts.text(Kind.SHARE, m.shares().get(index).weight() / m.totalWeight())));
            rows.add(row);
        }
        return Table.words(coilsCaption(coils.size()), head, rows, false);
    }

    private String coilsCaption(int count) {
        if (line.coilSource() instanceof CoilSource.Repeated) {
            return "Coils: the same, over and over";
        } else if (line.coilSource() instanceof CoilSource.Mix) {
            return "Coils: drawn at random by their shares";
        }
        String caption = "Coils: in this order, again from the top when it runs out";
        return count > MOST_COILS ? caption + " (the first " + MOST_COILS + " of " + count + ")" : caption;
    }

    private List<String> coil(Coil coil) {
        double own = coil.processSpeed().orElse(Double.NaN);
        return List.of(
                coil.name(),
                texts.text(Kind.THICKNESS, coil.thickness()),
                texts.text(Kind.WIDTH, coil.width()),
                texts.text(Kind.DENSITY, coil.density()),
                size(coil),
                texts.text(Kind.LENGTH, coil.headCrop()),
                texts.text(Kind.LENGTH, coil.tailCrop()),
                Double.isNaN(own) ? "the line's" : texts.text(Kind.SPEED, own));
    }

    private String size(Coil coil) {
        String beside = coil.innerDiameter().isPresent()
                ? ", " + texts.text(Kind.DIAMETER, coil.innerDiameter().getAsDouble()) + " inside, so "
                        + texts.text(Kind.DIAMETER, coil.outerDiameter().orElseThrow()) + " outside"
                        + winding(coil.windingFactor())
                : "";
        return size(coil.size()) + beside;
    }

    private String size(CoilSize size) {
        if (size instanceof CoilSize.ByLength length) {
            return "length " + DistributionText.of(length.length(), Kind.LENGTH, texts);
        } else if (size instanceof CoilSize.ByMass mass) {
            return "mass " + DistributionText.of(mass.mass(), Kind.MASS, texts);
        } else if (size instanceof CoilSize.ByDiameters diameters) {
            return "diameter " + texts.text(Kind.DIAMETER, diameters.outer()) + " outside, "
                    + texts.text(Kind.DIAMETER, diameters.inner()) + " inside" + winding(diameters.windingFactor());
        }
        throw new IllegalArgumentException("a size without words: " + size);
    }

    private static String winding(double factor) {
        return factor == 1 ? "" : ", winding factor " + Numbers.text(factor, 6);
    }

    private Table entry() {
        Entry entry = line.entry();
        Rows rows = new Rows();
        rows.add("Uncoilers", Integer.toString(entry.uncoilers()));
        rows.add("Top speed", texts.text(Kind.SPEED, entry.topSpeed()));
        rows.add("Acceleration", texts.acceleration(entry.acceleration()));
        rows.add("Deceleration", texts.acceleration(entry.deceleration()));
        entry.creep().ifPresent(creep -> {
            rows.add("Creep speed", texts.text(Kind.SPEED, creep.speed()));
            rows.add("Creep length", texts.text(Kind.LENGTH, creep.length()));
        });
        rows.add("Strip path from uncoiler to joiner", texts.text(Kind.LENGTH, entry.uncoilerPath()));
        return rows.table("Entry section");
    }

    private Optional<Table> accumulator() {
        if (line.practice().isOneStrip()) {
            return Optional.empty();
        }
        Accumulator accumulator = line.accumulator();
        Rows rows = new Rows();
        form(accumulator.form(), rows);
        rows.add("Usable capacity", texts.text(Kind.LENGTH, accumulator.capacity()));
        rows.add("Fill-rate limit in force", texts.text(Kind.SPEED, accumulator.fillRateLimit()));
        rows.add("Reserve", texts.text(Kind.LENGTH, accumulator.reserve()));
        if (Double.isFinite(accumulator.overtravelAllowance())) {
            rows.add("Overtravel allowance", texts.text(Kind.LENGTH, accumulator.overtravelAllowance()));
        }
        return Optional.of(rows.table("Accumulator"));
    }

    private void form(StorageForm form, Rows rows) {
        if (form instanceof StorageForm.Strands strands) {
            rows.add("Form", strands.vertical() ? "strands, vertical carriage" : "strands, horizontal carriage");
            rows.add("Strands", Integer.toString(strands.strands()));
            rows.add("Stroke", texts.text(Kind.LENGTH, strands.stroke()));
            rows.add("Carriage speed, filling", texts.text(Kind.SPEED, strands.fillingSpeed()));
            rows.add("Carriage speed, emptying", texts.text(Kind.SPEED, strands.emptyingSpeed()));
        } else if (form instanceof StorageForm.FreeLoop loop) {
            rows.add("Form", loop.loops() == 1 ? "free loop" : loop.loops() + " free loops");
            rows.add("Span", texts.text(Kind.LENGTH, loop.span()));
            rows.add("Sag, full", texts.text(Kind.LENGTH, loop.greatestSag()));
            rows.add("Sag, empty", texts.text(Kind.LENGTH, loop.leastSag()));
        } else if (form instanceof StorageForm.Spiral spiral) {
            rows.add("Form", "spiral");
            rows.add("Wraps", Numbers.text(spiral.wraps(), 6));
            rows.add("Mean diameter of a wrap, full", texts.text(Kind.DIAMETER, spiral.fullDiameter()));
            rows.add("Mean diameter of a wrap, empty", texts.text(Kind.DIAMETER, spiral.emptyDiameter()));
        } else {
            rows.add("Form", "given by its capacity");
        }
    }

    private Table process() {
        ProcessSection process = line.process();
        boolean stores = !line.practice().isOneStrip();
        Rows rows = new Rows();
        rows.add("Rated speed", texts.text(Kind.SPEED, process.speed()));
        rows.add("Acceleration", texts.acceleration(process.acceleration()));
        rows.add("Deceleration", texts.acceleration(process.deceleration()));
        if (stores) {
            rows.add("Stop level", texts.text(Kind.LENGTH, line.stopLevel(line.fastestRatedSpeed())));
            rows.add("Restart level", texts.text(Kind.LENGTH, line.restartLevel(line.fastestRatedSpeed())));
        }
        if (line.practice().hasJoiner()) {
            rows.add("Restart delay", DistributionText.of(process.restartDelay(), Kind.TIME, texts));
        }
        process.slowing().filter(slowing -> stores).ifPresent(slowing -> {
            rows.add("Slowed speed", texts.text(Kind.SPEED, slowing.speed()));
            rows.add("Slows below a level of", texts.text(Kind.LENGTH, slowing.level()));
            rows.add("Resumes from a level of", texts.text(Kind.LENGTH, line.resumeLevel(slowing)));
        });
        process.downtime().ifPresent(stops -> {
            rows.add("Running time between downtimes", DistributionText.of(stops.runningTime(), Kind.TIME, texts));
            rows.add("Standing time of such a stop", DistributionText.of(stops.standingTime(), Kind.TIME, texts));
        });
        if (process.path() > 0) {
            rows.add("Strip path from accumulator to process", texts.text(Kind.LENGTH, process.path()));
        }
        process.jointPassage().ifPresent(passage -> {
            rows.add("Speed while a joint passes, at most", texts.text(Kind.SPEED, passage.speed()));
            rows.add(
                    "Strip before and after the joint at this speed",
                    texts.text(Kind.LENGTH, passage.before()) + ", " + texts.text(Kind.LENGTH, passage.after()));
        });
        process.jointBreak().ifPresent(breaks -> {
            rows.add("Joints that break in the process", texts.text(Kind.SHARE, breaks.chance()));
            rows.add("Length of the process section", texts.text(Kind.LENGTH, breaks.length()));
            rows.add("Repair of a broken joint", DistributionText.of(breaks.repair(), Kind.TIME, texts));
            rows.add("Strip scrapped by a break, beside that of a stop", texts.text(Kind.LENGTH, breaks.scrap()));
        });
        rows.add("Strip scrapped by a stop", texts.text(Kind.LENGTH, process.scrapPerStop()));
        if (process.scrapPerJoint() > 0) {
            rows.add("Strip cut out with each joint", texts.text(Kind.LENGTH, process.scrapPerJoint()));
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
                        () -> rows.add("Crew", Integer.toString(line.change().crew())));
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
            rows.add("Modulus of elasticity", texts.text(Kind.STRESS, bending.modulus()));
            rows.add("Yield stress", texts.text(Kind.STRESS, bending.yield()));
            rows.add("Smallest roll or loop radius", texts.text(Kind.DIAMETER, bending.radius()));
            return rows.table("Bending of the strip");
        });
    }

    private Table run() {
        RunPlan run = request.run();
        Rows rows = new Rows();
        if (run.extent() instanceof RunPlan.Extent.Changes changes) {
            rows.add("Coil changes of a replication", Texts.count(changes.changes()));
        } else if (run.extent() instanceof RunPlan.Extent.Time time) {
            rows.add("Time of a replication", texts.text(Kind.TIME, time.duration()));
        }
        rows.add("First coil changes left out", Integer.toString(run.leaveOut()));
        rows.add("Replications", Texts.count(run.replications()));
        rows.add("Seed", Long.toString(run.seed()));
        rows.add("Target: share of coil changes to run through", texts.text(Kind.SHARE, run.target()));
        run.targetWithoutStop()
                .ifPresent(target ->
                        rows.add("Target: share of coil changes without a stop", texts.text(Kind.SHARE, target)));
        return rows.table("Run");
    }

    /** Names and values. */
    private static final class Rows {
        private final List<List<String>> rows = new ArrayList<>();

        void add(String name, String value) {
            rows.add(List.of(name, value));
        }

        Table table(String caption) {
            return Table.words(caption, List.of("", ""), rows, false);
        }
    }
}
