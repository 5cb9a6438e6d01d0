package runthrough.web;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import runthrough.plant.LineFigure;
import runthrough.quantity.Dimension;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.quantity.UnitSystem;
import runthrough.quantity.Units;
import runthrough.scenario.Input;

/**
 * A number of the line as a field of the page.
 *
 * @param path by which it is changed
 * @param group of the form that it belongs to
 * @param name in words
 * @param quick whether it is among the few that people ask about first
 * @param si its value
 * @param shown the value with its unit, as the page shows it
 * @param written the value as it stands in the file
 * @param symbol of the unit it is shown in; empty for a plain number
 * @param per how many of that unit an SI unit is
 * @param low least value of its slider (SI)
 * @param high greatest value of its slider; no slider unless it is more than {@code low}: only what may be a lever has one
 * @param whole whether it counts something
 * @param from where the value came from, as the file says; empty where it does not
 * @param assumed whether that is an assumption, to be replaced
 */
record FieldView(
        String path,
        String group,
        String name,
        boolean quick,
        double si,
        String shown,
        String written,
        String symbol,
        double per,
        double low,
        double high,
        boolean whole,
        String from,
        boolean assumed) {

    private static final Set<Unit> US = Set.of(
            Unit.INCH,
            Unit.FOOT,
            Unit.YARD,
            Unit.FOOT_PER_SECOND,
            Unit.FOOT_PER_MINUTE,
            Unit.FOOT_PER_HOUR,
            Unit.INCH_PER_SECOND,
            Unit.INCH_PER_MINUTE,
            Unit.FOOT_PER_SECOND_SQUARED,
            Unit.FOOT_PER_MINUTE_PER_SECOND,
            Unit.INCH_PER_SECOND_SQUARED,
            Unit.POUND,
            Unit.SHORT_TON,
            Unit.LONG_TON,
            Unit.POUND_PER_CUBIC_INCH,
            Unit.POUND_PER_CUBIC_FOOT,
            Unit.POUND_PER_SQUARE_INCH,
            Unit.KILOPOUND_PER_SQUARE_INCH);

    /** Figures of the line that the page can write back into a scenario. */
    private static final List<LineFigure> FIGURES = List.of(
            LineFigure.RATED_SPEED, LineFigure.JOINT_CYCLE_TIME, LineFigure.RETHREAD_TIME, LineFigure.USABLE_CAPACITY);

    /** What people ask about first, in this order. */
    static final List<String> QUICK = List.of(
            LineFigure.RATED_SPEED.path(),
            LineFigure.JOINT_CYCLE_TIME.path(),
            LineFigure.RETHREAD_TIME.path(),
            LineFigure.USABLE_CAPACITY.path(),
            "entry.top-speed");

    /** Half and twice: as far as people move a number. */
    private static final double REACH = 2;

    /** All numbers of {@code draft} that the page shows, in their order. */
    static List<FieldView> all(PageScenario draft, UnitSystem system) {
        // Where each coil has a speed of its own, that of the process is asked for by none.
        boolean isIdle = draft.request()
                .filter(request -> request.line().coils().stream()
                        .allMatch(coil -> coil.processSpeed().isPresent()))
                .isPresent();
        return draft.file().inputs().stream()
                .filter(input -> !(isIdle && input.path().equals("process.speed")))
                .flatMap(input -> of(input, from(input, draft), system).stream())
                .toList();
    }

    private static String from(Input input, PageScenario draft) {
        return input.origin() == Input.Origin.WRITTEN
                ? draft.handover().originOf(input.path()).orElse("")
                : "";
    }

    /** The field for {@code input}; empty where the page cannot change it. */
    private static Optional<FieldView> of(Input input, String from, UnitSystem system) {
        Optional<LineFigure> figure = LineFigure.called(input.path());
        if (input.present().isEmpty() || (figure.isPresent() && !FIGURES.contains(figure.get()))) {
            return Optional.empty();
        }
        double si = input.present().getAsDouble();
        if (!Double.isFinite(si)) {
            return Optional.empty();
        }
        Optional<Unit> own = input.unit().filter(unit -> suits(unit, system) && figure.isEmpty());
        Optional<Unit> unit =
                own.or(() -> input.dimension().map(any -> Units.of(system).unitFor(kind(input), si)));
        String shown = own.isPresent() && input.origin() == Input.Origin.WRITTEN
                ? input.text()
                : unit.map(used -> Units.of(system).text(si, used)).orElse(input.text());
        boolean whole = input.numeric().isWhole();
        boolean quick = QUICK.contains(input.path());
        return Optional.of(new FieldView(
                input.path(),
                input.path().contains(".") ? input.path().replaceAll("[.\\[].*", "") : "figures",
                name(input.path()),
                quick,
                si,
                shown,
                input.origin() == Input.Origin.WRITTEN ? input.text() : shown,
                unit.map(Unit::symbol).orElse(""),
                unit.map(used -> used.fromSi(1)).orElse(1.0),
                quick ? si / REACH : isLever(input.path()) ? least(si, whole) : si,
                quick
                        ? si * REACH
                        : isLever(input.path()) ? (whole ? Math.max(si * REACH, si + 1) : Math.min(1, si * REACH)) : si,
                whole,
                from,
                Assumptions.is(from)));
    }

    /** Whether it acts on what a line may be limited by, beside what people ask about first. */
    private static boolean isLever(String path) {
        return path.equals("entry.uncoilers")
                || path.matches("coil-change\\.(reject\\.(chance|every)|(shifts\\.[^.]+\\.)?crew)");
    }

    private static double least(double si, boolean whole) {
        return whole ? Math.max(1, Math.floor(si / REACH)) : 0;
    }

    private static boolean suits(Unit unit, UnitSystem system) {
        boolean isNeutral = unit.dimension() == Dimension.TIME || unit.dimension() == Dimension.SHARE;
        return isNeutral || US.contains(unit) == (system == UnitSystem.US_CUSTOMARY);
    }

    /** How the page calls what {@code path} names. */
    static String name(String path) {
        String named = switch (path) {
            case "rated-speed" -> "process speed";
            case "joint-cycle-time" -> "joint cycle time, mean without waiting";
            case "rethread-time" -> "rethread time, mean without waiting";
            case "usable-capacity" -> "accumulator holds";
            case "entry.top-speed" -> "entry top speed";
            default ->
                path.replaceFirst("^[^.\\[]*\\.", "")
                        .replace('-', ' ')
                        // A point within a name, such as that of a coil of 1.5 mm, is part of it.
                        .replaceAll("(?<!\\d)\\.|\\.(?!\\d)", ", ");
        };
        return named.substring(0, 1).toUpperCase(Locale.ROOT) + named.substring(1);
    }

    /** What an input is about, and so how it is shown; by its name where its dimension leaves a choice. */
    static Kind kind(Input input) {
        String path = input.path();
        Optional<LineFigure> figure = LineFigure.called(path);
        if (figure.isPresent()) {
            return figure.get().kind();
        }
        return switch (input.dimension().orElseThrow()) {
            case LENGTH ->
                path.contains("thickness")
                        ? Kind.THICKNESS
                        : path.contains("width")
                                ? Kind.WIDTH
                                : path.contains("diameter") || path.contains("radius") ? Kind.DIAMETER : Kind.LENGTH;
            case SPEED -> path.contains("travel") ? Kind.TRAVEL_SPEED : Kind.SPEED;
            case ACCELERATION -> Kind.ACCELERATION;
            case TIME -> Kind.TIME;
            case MASS -> Kind.MASS;
            case DENSITY -> Kind.DENSITY;
            case STRESS -> Kind.STRESS;
            case SHARE -> Kind.SHARE;
            default -> Kind.RATE_MASS;
        };
    }
}
