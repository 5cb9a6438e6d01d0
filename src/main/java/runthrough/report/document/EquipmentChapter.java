package runthrough.report.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import runthrough.handcalc.CarriageSpeed;
import runthrough.handcalc.CoilDrive;
import runthrough.handcalc.HandCalculation;
import runthrough.handcalc.Margin;
import runthrough.handcalc.WeldTravel;
import runthrough.plant.Line;
import runthrough.plant.SimulationRequest;
import runthrough.plant.handover.Drive;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;
import runthrough.quantity.Unit;
import runthrough.report.Cell;
import runthrough.report.Column;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.report.described.InputTexts;

/** Whether the equipment can do what the line is described to do. */
final class EquipmentChapter {
    private static final char GAP = '\u00a0';
    private static final int MOST_ROWS = 16;

    private final Line line;
    private final HandCalculation hand;
    private final Drive drive;
    private final Texts texts;
    private final InputTexts given;

    private EquipmentChapter(SimulationRequest request, HandCalculation hand, Drive drive) {
        this.line = request.line();
        this.hand = hand;
        this.drive = drive;
        this.texts = new Texts(request.resultsIn(), false);
        this.given = new InputTexts(request.resultsIn());
    }

    static DocumentChapter of(SimulationRequest request, HandCalculation hand, Drive drive) {
        EquipmentChapter chapter = new EquipmentChapter(request, hand, drive);
        List<Table> tables = new ArrayList<>();
        Optional<CoilDrive> coil = CoilDrive.of(request.line());
        coil.ifPresent(found -> {
            tables.add(chapter.worked(found));
            chapter.against(found).ifPresent(tables::add);
        });
        chapter.moving().ifPresent(tables::add);
        chapter.bending().ifPresent(tables::add);
        chapter.welds().ifPresent(tables::add);
        chapter.preparation().ifPresent(tables::add);
        return new DocumentChapter(
                "equipment",
                "What the equipment must do",
                chapter.lead(coil),
                List.of(),
                tables,
                List.of("The coil is calculated as a hollow cylinder that turns about its axis; the strip leaves it at"
                        + " its outer radius, so that full and at the top of the ramp it takes the most force and"
                        + " power. Elementary mechanics of rotation: D. Halliday, R. Resnick and J. Walker,"
                        + " Fundamentals of Physics, chapter on rotation (from memory). Mandrel, gears, friction,"
                        + " strip tension and the strip already off the coil come on top: a drive must be sized by"
                        + " those who build it. A negative margin is a shortfall."));
    }

    private List<String> lead(Optional<CoilDrive> coil) {
        List<String> lead = new ArrayList<>();
        lead.add(
                "A hand calculation with the numbers of the line. The simulation takes the accelerations as given; whether a"
                        + " drive can deliver them is seen here.");
        coil.ifPresent(found -> lead.add("To speed up a full coil of " + texts.of(Kind.MASS, found.mass()) + " at "
                + given.text(Kind.ACCELERATION, found.acceleration()) + " takes "
                + texts.of(Kind.FORCE, found.force()) + " in the strip or " + texts.of(Kind.TORQUE, found.torque())
                + " at the mandrel, and " + texts.of(Kind.POWER, found.power()) + " as it reaches "
                + given.text(Kind.SPEED, found.speed()) + "." + verdict(found)));
        if (coil.isEmpty()) {
            lead.add("The drive that a coil needs is not calculated: "
                    + (Double.isInfinite(line.headAcceleration())
                            ? "no acceleration is given, and speeds that change at once ask for more than any drive"
                                    + " has."
                            : "no coil has diameters. Give outer-diameter and inner-diameter."));
        }
        double limit = line.accumulator().fillRateLimit();
        double over = line.entry().topSpeed() - line.slowestRatedSpeed();
        if (!line.practice().isOneStrip() && limit < over) {
            lead.add("The accumulator sets how fast it is filled, not the entry: of the " + texts.of(Kind.SPEED, over)
                    + " by which the entry could outrun the process only " + texts.of(Kind.SPEED, limit)
                    + " are used.");
        }
        if (hand.bending().isEmpty()) {
            lead.add(
                    "Whether the strip stays elastic over rolls and loops is not calculated: no radius, modulus and yield"
                            + " stress are described. Give bending.");
        }
        return lead;
    }

    private String verdict(CoilDrive found) {
        boolean known = drive.torque().isPresent() || drive.power().isPresent();
        if (!known) {
            return " What the drive can deliver was not given.";
        }
        boolean enough = drive.torque().orElse(Double.POSITIVE_INFINITY) >= found.torque()
                && drive.power().orElse(Double.POSITIVE_INFINITY) >= found.power();
        return enough ? " The drive as given can deliver that." : " The drive as given cannot deliver that.";
    }

    /** A line of the calculation. */
    private record Worked(String what, String formula, Cell result) {}

    /** Line by line, in SI, the results in the user's units. */
    private Table worked(CoilDrive found) {
        String radius = n(found.outer() / 2);
        List<Worked> rows = List.of(
                new Worked(
                        "Mass of the coil, " + found.coil().name(),
                        formula(
                                "m = L · ρ · w · t",
                                n(found.coil().meanLength()) + " · "
                                        + n(found.coil().density()) + " · "
                                        + n(found.coil().width()) + " · "
                                        + n(found.coil().thickness())),
                        Cell.of(Value.of(
                                found.mass(), Notation.of(Unit.KILOGRAM).with(Rounding.GIVEN)))),
                new Worked(
                        "Moment of inertia about the mandrel",
                        formula(
                                "J = m · (Ro² + Ri²) / 2",
                                n(found.mass()) + " · (" + radius + "² + " + n(found.inner() / 2) + "²) / 2"),
                        Cell.of(Value.of(
                                found.inertia(),
                                Notation.PLAIN.with(Rounding.GIVEN).called("kg m²")))),
                new Worked(
                        "Torque at the mandrel",
                        formula(
                                "M = J · a / Ro",
                                n(found.inertia()) + " · " + n(found.acceleration()) + " / " + radius),
                        both(found.torque(), Unit.NEWTON_METRE, Kind.TORQUE)),
                new Worked(
                        "Force in the strip",
                        formula("F = M / Ro", n(found.torque()) + " / " + radius),
                        both(found.force(), Unit.NEWTON, Kind.FORCE)),
                new Worked(
                        "Power at the end of the ramp",
                        formula("P = F · v", n(found.force()) + " · " + n(found.speed())),
                        both(found.power(), Unit.WATT, Kind.POWER)));
        return TableMaker.<Worked>of("To speed up the coil that takes the most (numbers in m, kg, s)")
                .words("What", Worked::what)
                .words("Formula, and with its numbers", Worked::formula)
                .with(Column.words("Result"), Worked::result)
                .of(rows);
    }

    /** A line may end before the second equals sign alone. */
    private static String formula(String letters, String numbers) {
        return letters.replace(' ', GAP) + " =" + GAP + numbers.replace(' ', GAP);
    }

    private String n(double si) {
        return given.plain(si).text();
    }

    /** In {@code unit}, in which it is calculated, and in the user's. */
    private Cell both(double si, Unit unit, Kind kind) {
        Value exact = Value.of(si, Notation.of(unit).with(Rounding.GIVEN));
        Value shown = texts.value(kind, si);
        return shown.notation().unit().equals(Optional.of(unit)) ? Cell.of(exact) : new Cell.Twice(exact, shown);
    }

    /** What there is against what is needed. */
    private record Held(String name, Margin margin) {}

    private Optional<Table> against(CoilDrive found) {
        List<Held> rows = new ArrayList<>();
        drive.torque()
                .ifPresent(torque ->
                        rows.add(new Held("Torque of the uncoiler", new Margin(Kind.TORQUE, torque, found.torque()))));
        drive.power()
                .ifPresent(power -> rows.add(
                        new Held("Power of the uncoiler's drive", new Margin(Kind.POWER, power, found.power()))));
        return table("The drive as given", rows);
    }

    private Optional<Table> moving() {
        List<Held> rows = new ArrayList<>();
        CarriageSpeed.of(line).ifPresent(carriage -> {
            rows.add(new Held("Carriage, filling with the entry at top speed", carriage.filling()));
            rows.add(new Held("Carriage, emptying with the entry standing", carriage.emptying()));
        });
        if (!line.practice().isOneStrip()) {
            double over = line.entry().topSpeed() - line.slowestRatedSpeed();
            rows.add(new Held(
                    "Fill-rate limit, against all of the entry's lead",
                    new Margin(Kind.SPEED, line.accumulator().fillRateLimit(), over)));
            hand.storage()
                    .ifPresent(storage -> rows.add(new Held(
                            "Capacity for a joint of mean time",
                            storage.toRunThrough().capacity())));
        }
        return table("Accumulator: strands, stroke and speeds", rows);
    }

    private Optional<Table> bending() {
        return table(
                "Smallest radius of rolls and loops, against the smallest that leaves the strip elastic",
                hand.bending().stream()
                        .limit(MOST_ROWS)
                        .map(check ->
                                new Held("Strip of " + given.text(Kind.THICKNESS, check.thickness()), check.radius()))
                        .toList());
    }

    private Optional<Table> table(String caption, List<Held> rows) {
        return some(held(TableMaker.of(caption), "", Held::name, Held::margin).of(rows));
    }

    private static Optional<Table> some(Table table) {
        return Optional.of(table).filter(any -> !any.rows().isEmpty());
    }

    /** Columns of what there is, what is needed and the margin, all three in one unit. */
    private <T> TableMaker<T> held(
            TableMaker<T> table, String heading, Function<T, String> name, Function<T, Margin> margin) {
        return table.words(heading, name)
                .cell("There is", row -> {
                    Margin held = margin.apply(row);
                    return Double.isInfinite(held.given())
                            ? Cell.of("no limit")
                            : Cell.of(Value.of(held.given(), notation(held)));
                })
                .cell("Needed", row -> {
                    Margin held = margin.apply(row);
                    return Cell.of(Value.of(held.needed(), notation(held).atLeast()));
                })
                .cell("Margin", row -> {
                    Margin held = margin.apply(row);
                    return Double.isInfinite(held.given())
                            ? Cell.none()
                            : Cell.of(Value.of(held.spare(), notation(held).atMost()));
                });
    }

    private Notation notation(Margin margin) {
        return texts.notation(margin.kind(), Math.max(finite(margin.given()), finite(margin.needed())));
    }

    private static double finite(double value) {
        return Double.isFinite(value) ? Math.abs(value) : 0;
    }

    private Optional<Table> welds() {
        List<WeldTravel> rows = WeldTravel.of(line).stream().limit(MOST_ROWS).toList();
        return some(TableMaker.<WeldTravel>of(
                        "Travel across the strip: is the speed one that this thickness can be welded or cut at?")
                .words("Work", WeldTravel::element)
                .cell("Strip thickness", weld -> given.cell(Kind.THICKNESS, weld.thickness()))
                .cell("Strip width", weld -> given.cell(Kind.WIDTH, weld.width()))
                .cell("Travel speed as given", weld -> given.cell(Kind.TRAVEL_SPEED, weld.speed()))
                .cell("Time across", weld -> Cell.of(texts.value(Kind.TIME, weld.time())))
                .of(rows));
    }

    private Optional<Table> preparation() {
        if (line.change().prepare().isEmpty()) {
            return Optional.empty();
        }
        List<HandCalculation> rows = IntStream.range(0, line.coils().size())
                .limit(MOST_ROWS)
                .mapToObj(kind -> HandCalculation.of(line, kind))
                .toList();
        TableMaker<HandCalculation> table =
                TableMaker.of("Time to prepare the next coil, before the process must stop");
        return Optional.of(held(
                        table,
                        "Coil that is running",
                        calculation -> calculation.coil().name(),
                        HandCalculation::preparationTime)
                .cell("From change to change", calculation -> Cell.of(texts.value(Kind.TIME, calculation.coilRun())))
                .of(rows));
    }
}
