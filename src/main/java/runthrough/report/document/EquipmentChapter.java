package runthrough.report.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.quantity.Units;
import runthrough.report.Table;

/** Whether the equipment can do what the line is described to do. */
final class EquipmentChapter {
    private static final char GAP = '\u00a0';
    private static final int DIGITS = 6;
    private static final int MOST_ROWS = 16;

    private final Line line;
    private final HandCalculation hand;
    private final Drive drive;
    private final Units units;

    private EquipmentChapter(SimulationRequest request, HandCalculation hand, Drive drive) {
        this.line = request.line();
        this.hand = hand;
        this.drive = drive;
        this.units = Units.of(request.resultsIn());
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
                        + " those who build it."));
    }

    private List<String> lead(Optional<CoilDrive> coil) {
        List<String> lead = new ArrayList<>();
        lead.add(
                "A hand calculation with the numbers of the line. The simulation takes the accelerations as given; whether a"
                        + " drive can deliver them is seen here.");
        coil.ifPresent(found -> lead.add("To speed up a full coil of " + units.text(Kind.MASS, found.mass()) + " at "
                + units.text(Kind.ACCELERATION, found.acceleration()).replaceAll("s2$", "s²") + " takes "
                + units.text(Kind.FORCE, found.force()) + " in the strip or " + units.text(Kind.TORQUE, found.torque())
                + " at the mandrel, and " + units.text(Kind.POWER, found.power()) + " as it reaches "
                + units.text(Kind.SPEED, found.speed()) + "." + verdict(found)));
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
            lead.add("The accumulator sets how fast it is filled, not the entry: of the " + units.text(Kind.SPEED, over)
                    + " by which the entry could outrun the process only " + units.text(Kind.SPEED, limit)
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

    /** Line by line, in SI, the results in the user's units. */
    private Table worked(CoilDrive found) {
        List<List<String>> rows = new ArrayList<>();
        double radius = found.outer() / 2;
        double bore = found.inner() / 2;
        rows.add(List.of(
                "Mass of the coil, " + found.coil().name(),
                formula(
                        "m = L · ρ · w · t",
                        n(found.coil().meanLength()) + " · "
                                + n(found.coil().density()) + " · "
                                + n(found.coil().width()) + " · "
                                + n(found.coil().thickness())),
                n(found.mass()) + " kg"));
        rows.add(List.of(
                "Moment of inertia about the mandrel",
                formula("J = m · (Ro² + Ri²) / 2", n(found.mass()) + " · (" + n(radius) + "² + " + n(bore) + "²) / 2"),
                n(found.inertia()) + " kg m²"));
        rows.add(List.of(
                "Torque at the mandrel",
                formula("M = J · a / Ro", n(found.inertia()) + " · " + n(found.acceleration()) + " / " + n(radius)),
                both(found.torque(), Unit.NEWTON_METRE, Kind.TORQUE)));
        rows.add(List.of(
                "Force in the strip",
                formula("F = M / Ro", n(found.torque()) + " / " + n(radius)),
                both(found.force(), Unit.NEWTON, Kind.FORCE)));
        rows.add(List.of(
                "Power at the end of the ramp",
                formula("P = F · v", n(found.force()) + " · " + n(found.speed())),
                both(found.power(), Unit.WATT, Kind.POWER)));
        return Table.words(
                "To speed up the coil that takes the most (numbers in m, kg, s)",
                List.of("What", "Formula, and with its numbers", "Result"),
                rows,
                false);
    }

    /** A line may end before the second equals sign alone. */
    private static String formula(String letters, String numbers) {
        return letters.replace(' ', GAP) + " =" + GAP + numbers.replace(' ', GAP);
    }

    private static String n(double si) {
        return Numbers.text(si, DIGITS);
    }

    private String both(double si, Unit unit, Kind kind) {
        String exact = n(unit.fromSi(si)) + " " + unit.symbol();
        String shown = units.unitFor(kind, si) == unit ? exact : exact + " = " + units.text(kind, si);
        return shown.replace(' ', GAP);
    }

    private Optional<Table> against(CoilDrive found) {
        List<List<String>> rows = new ArrayList<>();
        drive.torque()
                .ifPresent(torque ->
                        rows.add(margin("Torque of the uncoiler", new Margin(Kind.TORQUE, torque, found.torque()))));
        drive.power()
                .ifPresent(power -> rows.add(
                        margin("Power of the uncoiler's drive", new Margin(Kind.POWER, power, found.power()))));
        return table("The drive as given", rows);
    }

    private Optional<Table> moving() {
        List<List<String>> rows = new ArrayList<>();
        CarriageSpeed.of(line).ifPresent(carriage -> {
            rows.add(margin("Carriage, filling with the entry at top speed", carriage.filling()));
            rows.add(margin("Carriage, emptying with the entry standing", carriage.emptying()));
        });
        if (!line.practice().isOneStrip()) {
            double over = line.entry().topSpeed() - line.slowestRatedSpeed();
            rows.add(margin(
                    "Fill-rate limit, against all of the entry's lead",
                    new Margin(Kind.SPEED, line.accumulator().fillRateLimit(), over)));
            hand.storage()
                    .ifPresent(storage -> rows.add(margin("Capacity for a joint of mean time", storage.capacity())));
        }
        return table("Accumulator: strands, stroke and speeds", rows);
    }

    private Optional<Table> bending() {
        return table(
                "Smallest radius of rolls and loops, against the smallest that leaves the strip elastic",
                hand.bending().stream()
                        .limit(MOST_ROWS)
                        .map(check ->
                                margin("Strip of " + units.text(Kind.THICKNESS, check.thickness()), check.radius()))
                        .toList());
    }

    private Optional<Table> table(String caption, List<List<String>> rows) {
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(Table.words(caption, List.of("", "There is", "Needed", "Margin"), rows, true));
    }

    private List<String> margin(String name, Margin margin) {
        double size = Math.max(finite(margin.given()), finite(margin.needed()));
        Unit unit = units.unitFor(margin.kind(), size);
        String spare = units.text(Math.abs(margin.spare()), unit);
        return List.of(
                name,
                Double.isInfinite(margin.given()) ? "no limit" : units.text(margin.given(), unit),
                units.text(margin.needed(), unit),
                Double.isInfinite(margin.given()) ? "" : margin.isEnough() ? spare : spare + " missing");
    }

    private static double finite(double value) {
        return Double.isFinite(value) ? Math.abs(value) : 0;
    }

    private Optional<Table> welds() {
        List<List<String>> rows = WeldTravel.of(line).stream()
                .limit(MOST_ROWS)
                .map(weld -> List.of(
                        weld.element(),
                        units.text(Kind.THICKNESS, weld.thickness()),
                        units.text(Kind.WIDTH, weld.width()),
                        units.text(Kind.TRAVEL_SPEED, weld.speed()),
                        units.text(Kind.TIME, weld.time())))
                .toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(Table.words(
                        "Travel across the strip: is the speed one that this thickness can be welded or cut at?",
                        List.of("Work", "Strip thickness", "Strip width", "Travel speed as given", "Time across"),
                        rows,
                        true));
    }

    private Optional<Table> preparation() {
        if (line.change().prepare().isEmpty()) {
            return Optional.empty();
        }
        List<List<String>> rows = IntStream.range(0, line.coils().size())
                .limit(MOST_ROWS)
                .mapToObj(kind -> HandCalculation.of(line, kind))
                .map(calculation -> {
                    List<String> row =
                            new ArrayList<>(margin(calculation.coil().name(), calculation.preparationTime()));
                    row.add(units.text(Kind.TIME, calculation.coilRun()));
                    return List.copyOf(row);
                })
                .toList();
        return Optional.of(Table.words(
                "Time to prepare the next coil, before the process must stop",
                List.of("Coil that is running", "There is", "Needed", "Margin", "From change to change"),
                rows,
                true));
    }
}
