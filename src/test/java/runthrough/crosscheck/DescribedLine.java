package runthrough.crosscheck;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import runthrough.plant.Accumulator;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilDifference;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.MeasuredRows;
import runthrough.plant.Practice;
import runthrough.plant.ProcessSection;
import runthrough.plant.RunPlan;
import runthrough.plant.Shifts;
import runthrough.plant.StorageForm;
import runthrough.plant.TravelSpeed;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;

/** A line and its run plan, read from a document of the second engine, whose {@code line_model.py} describes it. */
final class DescribedLine {
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    private DescribedLine() {}

    static RunPlan plan(JsonNode document) {
        JsonNode run = document.path("run");
        RunPlan.Extent extent = run.has("changes")
                ? new RunPlan.Extent.Changes(run.path("changes").intValue())
                : new RunPlan.Extent.Time(run.path("seconds").doubleValue());
        long seed = new BigInteger(document.path("seed").asText("0")).longValue();
        return new RunPlan(extent, document.path("leave_out").intValue(), 1, seed, 1);
    }

    static Line line(JsonNode document) {
        JsonNode change = document.path("change");
        return new Line(
                coils(document),
                entry(document.path("entry")),
                process(document.path("process")),
                change(change),
                practice(document, change),
                Optional.empty());
    }

    private static Practice practice(JsonNode document, JsonNode change) {
        return switch (document.path("practice").textValue()) {
            case "join" -> new Practice.JoinWithAccumulator(accumulator(document.path("accumulator")));
            case "rethread" -> new Practice.Rethread(distribution(change.path("rethread")));
            default -> new Practice.JoinWithoutAccumulator();
        };
    }

    private static Entry entry(JsonNode given) {
        return new Entry(
                given.path("uncoilers").intValue(),
                given.path("top_speed").doubleValue(),
                or(given, "acceleration", INFINITE),
                or(given, "deceleration", INFINITE),
                optional(given, "creep")
                        .map(creep -> new Entry.Creep(
                                creep.path("speed").doubleValue(),
                                creep.path("length").doubleValue())),
                or(given, "uncoiler_path", 0));
    }

    private static Accumulator accumulator(JsonNode given) {
        return new Accumulator(
                form(given.path("form")),
                or(given, "fill_rate_limit", INFINITE),
                or(given, "reserve", 0),
                or(given, "overtravel_allowance", INFINITE));
    }

    private static StorageForm form(JsonNode form) {
        return switch (form.path("kind").textValue()) {
            case "direct" -> new StorageForm.Direct(form.path("capacity").doubleValue());
            case "strands" ->
                new StorageForm.Strands(
                        form.path("strands").intValue(),
                        form.path("stroke").doubleValue(),
                        or(form, "filling_speed", INFINITE),
                        INFINITE,
                        false);
            case "free loop" ->
                new StorageForm.FreeLoop(
                        form.path("loops").intValue(),
                        form.path("span").doubleValue(),
                        form.path("greatest_sag").doubleValue(),
                        form.path("least_sag").doubleValue());
            case "spiral" ->
                new StorageForm.Spiral(
                        form.path("wraps").doubleValue(),
                        form.path("full_diameter").doubleValue(),
                        form.path("empty_diameter").doubleValue());
            default -> throw new IllegalArgumentException("form of an accumulator: " + form);
        };
    }

    private static ProcessSection process(JsonNode given) {
        return ProcessSection.running(
                        given.path("speed").doubleValue(),
                        or(given, "acceleration", INFINITE),
                        or(given, "deceleration", INFINITE))
                .withRestart(new ProcessSection.Restart(
                        or(given, "restart_level", Double.NaN), distribution(given.path("restart_delay"))))
                .withSlowing(optional(given, "slowing")
                        .map(slowing -> new ProcessSection.Slowing(
                                slowing.path("speed").doubleValue(),
                                slowing.path("level").doubleValue(),
                                or(slowing, "resume_level", Double.NaN))))
                .withDowntime(optional(given, "own_stops")
                        .map(stops -> new ProcessSection.Downtime(
                                distribution(stops.path("running")), distribution(stops.path("standing")))))
                .withPath(or(given, "path", 0))
                .withScrap(new ProcessSection.Scrap(or(given, "spoilt_per_stop", 0), or(given, "cut_per_joint", 0)))
                .withJoints(new ProcessSection.JointsInProcess(
                        optional(given, "passage")
                                .map(passage -> new ProcessSection.JointPassage(
                                        passage.path("speed").doubleValue(),
                                        or(passage, "before", 0),
                                        or(passage, "after", 0))),
                        optional(given, "joint_break")
                                .map(breaks -> new ProcessSection.JointBreak(
                                        breaks.path("chance").doubleValue(),
                                        breaks.path("length").doubleValue(),
                                        distribution(breaks.path("repair")),
                                        or(breaks, "scrap", 0)))));
    }

    // ---- coils

    private static CoilSource coils(JsonNode document) {
        List<Coil> kinds = new ArrayList<>();
        document.path("kinds").forEach(kind -> kinds.add(coil(kind, kinds.size() + 1)));
        JsonNode supply = document.path("supply");
        if (supply.path("kind").asText().equals("mix")) {
            return new CoilSource.Mix(IntStream.range(0, kinds.size())
                    .mapToObj(kind -> new CoilSource.Share(
                            kinds.get(kind), supply.path("shares").path(kind).doubleValue()))
                    .toList());
        }
        List<Coil> order = new ArrayList<>();
        supply.path("order").forEach(kind -> order.add(kinds.get(kind.intValue())));
        return new CoilSource.Schedule(order.isEmpty() ? kinds : order);
    }

    private static Coil coil(JsonNode given, int number) {
        JsonNode size = given.path("size");
        return new Coil(
                "coil " + number,
                new Coil.Strip(
                        given.path("thickness").doubleValue(),
                        given.path("width").doubleValue(),
                        given.path("density").doubleValue()),
                size(size),
                new Coil.Crops(or(given, "head_crop", 0), or(given, "tail_crop", 0)),
                number(given, "process_speed"),
                given.path("product").asText("").replace("null", ""),
                size.has("outer_diameter") ? Optional.empty() : core(size));
    }

    private static Optional<Coil.Core> core(JsonNode size) {
        return number(size, "inner_diameter").stream()
                .mapToObj(inner -> new Coil.Core(inner, or(size, "winding_factor", 1)))
                .findFirst();
    }

    private static CoilSize size(JsonNode size) {
        if (size.has("length")) {
            return new CoilSize.ByLength(distribution(size.path("length")));
        }
        if (size.has("mass")) {
            return new CoilSize.ByMass(distribution(size.path("mass")));
        }
        return new CoilSize.ByDiameters(
                size.path("outer_diameter").doubleValue(),
                size.path("inner_diameter").doubleValue(),
                or(size, "winding_factor", 1));
    }

    // ---- work

    private static CoilChange change(JsonNode given) {
        List<MeasuredRows> sheets = new ArrayList<>();
        given.path("sheets")
                .forEach(
                        sheet -> sheets.add(MeasuredRows.of(sheet.path("name").textValue(), rows(sheet.path("rows")))));
        CoilChange change = new CoilChange(
                given.path("crew").asInt(1),
                elements(given.path("prepare"), sheets, false),
                elements(given.path("tail"), sheets, true),
                elements(given.path("join"), sheets, true),
                optional(given, "reject").map(DescribedLine::reject).orElse(new Reject.Never()));
        return optional(given, "shifts")
                .map(shifts -> change.withShifts(shifts(shifts)))
                .orElse(change);
    }

    private static List<List<Double>> rows(JsonNode rows) {
        return StreamSupport.stream(rows.spliterator(), false)
                .map(row -> StreamSupport.stream(row.spliterator(), false)
                        .map(cell -> cell.isNull() ? Double.NaN : cell.doubleValue())
                        .toList())
                .toList();
    }

    private static Reject reject(JsonNode given) {
        return given.has("chance")
                ? new Reject.Chance(given.path("chance").doubleValue())
                : new Reject.Every(given.path("every").intValue());
    }

    private static Shifts shifts(JsonNode given) {
        List<Shifts.Shift> shifts = new ArrayList<>();
        for (JsonNode shift : given) {
            List<Shifts.Break> breaks = new ArrayList<>();
            shift.path("breaks")
                    .forEach(one -> breaks.add(new Shifts.Break(
                            one.path("begin").doubleValue(),
                            one.path("length").doubleValue(),
                            one.path("crew").intValue())));
            shifts.add(new Shifts.Shift(
                    Shifts.Shift.nameByPlace(shifts.size()),
                    shift.path("seconds").doubleValue(),
                    shift.path("crew").intValue(),
                    breaks));
        }
        return new Shifts(shifts);
    }

    private static List<WorkElement> elements(JsonNode list, List<MeasuredRows> sheets, boolean redo) {
        return StreamSupport.stream(list.spliterator(), false)
                .map(given -> new WorkElement(
                        given.path("name").asText("work"),
                        time(given, sheets),
                        occurrence(given),
                        given.path("redo").asBoolean(redo),
                        given.path("people").asInt(1),
                        given.path("put_down").asBoolean(true)))
                .toList();
    }

    private static WorkTime time(JsonNode given, List<MeasuredRows> sheets) {
        Optional<JsonNode> measured = optional(given, "measured");
        if (measured.isPresent()) {
            JsonNode from = measured.orElseThrow();
            return new WorkTime.FromRows(
                    sheets.get(from.path("sheet").intValue()),
                    from.path("column").intValue(),
                    from.path("factor").doubleValue());
        }
        Distribution time = distribution(given.path("time"));
        return optional(given, "travel_speed")
                .<WorkTime>map(speed -> new WorkTime.Travel(travelSpeed(speed), time))
                .orElse(new WorkTime.Timed(time));
    }

    private static TravelSpeed travelSpeed(JsonNode given) {
        if (given.isNumber()) {
            return TravelSpeed.of(given.doubleValue());
        }
        List<TravelSpeed.Row> rows = new ArrayList<>();
        given.forEach(row -> rows.add(
                new TravelSpeed.Row(row.path(0).doubleValue(), row.path(1).doubleValue())));
        return new TravelSpeed.ByThickness(rows);
    }

    private static Occurrence occurrence(JsonNode given) {
        long conditions = Stream.of("every", "chance", "when")
                .filter(name -> given.path(name).size() > 0 || given.path(name).isNumber())
                .count();
        if (conditions > 1) {
            throw new IllegalArgumentException(
                    "more than one condition, which the scenario's reader refuses: " + given);
        }
        if (optional(given, "every").isPresent()) {
            return new Occurrence.Every(given.path("every").intValue());
        }
        if (optional(given, "chance").isPresent()) {
            return new Occurrence.Chance(given.path("chance").doubleValue());
        }
        Set<CoilDifference> differences = EnumSet.noneOf(CoilDifference.class);
        given.path("when")
                .forEach(what ->
                        differences.add(CoilDifference.valueOf(what.textValue().toUpperCase(Locale.ROOT))));
        return differences.isEmpty() ? new Occurrence.Always() : new Occurrence.When(differences);
    }

    // ---- numbers

    private static Distribution distribution(JsonNode given) {
        if (given.isMissingNode() || given.isNull()) {
            return Distribution.constant(0);
        }
        if (given.isNumber()) {
            return Distribution.constant(given.doubleValue());
        }
        String kind = StreamSupport.stream(((Iterable<String>) given::fieldNames).spliterator(), false)
                .filter(name -> !name.equals("shift"))
                .findFirst()
                .orElseThrow();
        JsonNode of = given.path(kind);
        double first = of.path(0).doubleValue();
        double second = of.path(1).doubleValue();
        Distribution made = switch (kind) {
            case "constant" -> Distribution.constant(of.doubleValue());
            case "uniform" -> Distribution.uniform(first, second);
            case "triangular" ->
                Distribution.triangular(first, second, of.path(2).doubleValue());
            case "normal" -> Distribution.normal(first, second);
            case "lognormal" -> Distribution.lognormal(first, second);
            case "gamma" -> Distribution.gamma(first, second);
            case "weibull" -> Distribution.weibull(first, second);
            case "exponential" -> Distribution.exponential(of.doubleValue());
            case "observed" ->
                Distribution.observed(StreamSupport.stream(of.spliterator(), false)
                        .map(JsonNode::doubleValue)
                        .toList());
            default -> throw new IllegalArgumentException("distribution: " + given);
        };
        return given.has("shift") ? made.shifted(given.path("shift").doubleValue()) : made;
    }

    private static Optional<JsonNode> optional(JsonNode given, String name) {
        return Optional.of(given.path(name)).filter(node -> !node.isMissingNode() && !node.isNull());
    }

    private static OptionalDouble number(JsonNode given, String name) {
        return optional(given, name)
                .map(node -> OptionalDouble.of(node.doubleValue()))
                .orElse(OptionalDouble.empty());
    }

    private static double or(JsonNode given, String name, double missing) {
        return number(given, name).orElse(missing);
    }
}
