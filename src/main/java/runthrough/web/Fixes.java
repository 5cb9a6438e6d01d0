package runthrough.web;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.LineFigure;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.Kind;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.quantity.Units;
import runthrough.study.StudyListener;
import runthrough.study.limits.LimitsStudy;
import runthrough.study.limits.LineLimit;
import runthrough.study.search.Crossing;
import runthrough.study.sizing.Sizing;
import runthrough.study.sizing.SizingStudy;

/**
 * What would let a line meet its target, each on its own; or, where it meets it, how far each number could go.
 *
 * @param words what the list is about
 */
record Fixes(String words, List<Fix> fixes) {
    private static final int DIGITS = 3;

    Fixes {
        fixes = List.copyOf(fixes);
    }

    /** One of them, with the changes that make it; none where nothing on the page can. */
    record Fix(String words, List<Ask.Part> changes) {}

    static Fixes of(SimulationRequest request, int threads, StudyListener listener) {
        if (request.line().practice().isOneStrip()) {
            return new Fixes(
                    "Entry and process are one strip, so every coil change stops the process. Only a joiner with an accumulator"
                            + " between it and the process lets the line run through.",
                    List.of());
        }
        SimulationRequest quick = Effort.of(request, 1);
        double target = Effort.target(request);
        List<Fix> fixes = new ArrayList<>();
        Units units = Units.of(request.resultsIn());
        Sizing sizing = new SizingStudy(quick, Effort.sizing(quick)).run(threads, part(listener, 0, 0.3));
        capacity(sizing, units).ifPresent(fixes::add);
        for (LineLimit limit : new LimitsStudy(quick, target)
                .run(threads, part(listener, 0.3, 1))
                .limits()) {
            fix(limit, request, units).ifPresent(fixes::add);
        }
        boolean meets = sizing.present()
                .flatMap(Sizing.Point::share)
                .filter(share -> share.mean() >= target)
                .isPresent();
        String asked = units.number(target, Unit.PERCENT) + " %";
        return new Fixes(
                meets
                        ? "The line meets its target of " + asked + ". It still would, each change on its own:"
                        : fixes.isEmpty()
                                ? "Nothing that was tried on its own meets the target of " + asked + "."
                                : "Each of these on its own meets the target of " + asked + ":",
                fixes);
    }

    private static StudyListener part(StudyListener whole, double from, double to) {
        return new StudyListener() {
            @Override
            public void progress(int done, int total) {
                double share = total > 0 ? (double) done / total : 0;
                whole.progress((int) (1000 * (from + (to - from) * share)), 1000);
            }

            @Override
            public boolean cancelled() {
                return whole.cancelled();
            }
        };
    }

    private static Optional<Fix> capacity(Sizing sizing, Units units) {
        if (sizing.answer() != Sizing.Answer.FOUND) {
            return Optional.empty();
        }
        double value = sizing.sure().or(sizing::smallest).orElseThrow().capacity();
        Setting setting = Setting.of(Kind.LENGTH, value, RoundingMode.CEILING, units);
        return Optional.of(new Fix(
                "An accumulator that holds " + setting.text + ", instead of "
                        + units.text(
                                Kind.LENGTH,
                                sizing.request().line().accumulator().capacity()),
                List.of(new Ask.Part(LineFigure.USABLE_CAPACITY.path(), setting.text))));
    }

    private static Optional<Fix> fix(LineLimit limit, SimulationRequest request, Units units) {
        Crossing crossing = limit.crossing();
        OptionalDouble known = crossing.sure().isPresent() ? crossing.sure() : crossing.value();
        if (crossing.found() != Crossing.Found.CROSSED || known.isEmpty()) {
            return Optional.empty();
        }
        double value = known.getAsDouble();
        return switch (limit.what()) {
            case PROCESS_SPEED -> {
                Setting setting = Setting.of(Kind.SPEED, value, RoundingMode.FLOOR, units);
                yield Optional.of(new Fix(
                        "A process speed of " + setting.text + ", instead of "
                                + units.text(Kind.SPEED, limit.present()),
                        List.of(new Ask.Part(LineFigure.RATED_SPEED.path(), setting.text))));
            }
            case JOINT_TIME_FACTOR -> {
                LineFigure standing = LineFigure.standingTime(request.line());
                OptionalDouble now = standing.of(request.line());
                if (now.isEmpty()) {
                    yield Optional.empty();
                }
                double least = standing.least(request.line());
                double mean = least + (now.getAsDouble() - least) * value;
                Setting setting = Setting.in(Unit.SECOND, mean, RoundingMode.FLOOR);
                yield Optional.of(new Fix(
                        "Joints that take " + setting.text + " on average, instead of "
                                + Numbers.text(now.getAsDouble(), DIGITS) + " s",
                        List.of(new Ask.Part(standing.path(), setting.text))));
            }
            case ENTRY_TOP_SPEED -> {
                Setting setting = Setting.of(Kind.SPEED, value, RoundingMode.CEILING, units);
                yield Optional.of(new Fix(
                        "An entry that reaches " + setting.text + ", instead of "
                                + units.text(Kind.SPEED, limit.present()),
                        List.of(new Ask.Part("entry.top-speed", setting.text))));
            }
            case JOINT_TIME_ADDED, COIL_LENGTH -> Optional.empty();
        };
    }

    /** A value written so that a person would write it, rounded to the safe side. */
    private record Setting(String text) {
        static Setting of(Kind kind, double si, RoundingMode mode, Units units) {
            return in(units.unit(kind), si, mode);
        }

        static Setting in(Unit unit, double si, RoundingMode mode) {
            BigDecimal rounded = BigDecimal.valueOf(unit.fromSi(si)).round(new MathContext(DIGITS, mode));
            return new Setting(rounded.stripTrailingZeros().toPlainString() + " " + unit.symbol());
        }
    }
}
