package runthrough.report.lever;

import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.quantity.UnitSystem;
import runthrough.quantity.Units;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.lever.Lever;
import runthrough.study.lever.LeverAnswer;
import runthrough.study.lever.LeverChange;

/**
 * Levers in words. A value is written with every digit that was tried, so that whoever sets it gets what is promised; a time above
 * 90 s in whole seconds, rounded to the side on which the target is met.
 *
 * @param system the user's units
 * @param inShifts whether people come in shifts
 */
public record LeverWords(UnitSystem system, boolean inShifts) {
    /** More digits than any number of steps has. */
    private static final int DIGITS = 7;

    private static final int FEW_DIGITS = 4;

    /** What is said where a run is too short. */
    public static final String TOO_SHORT = "seen, not shown: the run is too short";

    /** The same behind what was seen. */
    public static final String NOT_SHOWN = " (" + TOO_SHORT + ")";

    /** Those of the line of {@code request}, in its units. */
    public static LeverWords of(SimulationRequest request) {
        return new LeverWords(
                request.resultsIn(), request.line().change().shifts().isPresent());
    }

    /** What a lever is called. */
    public static String name(Lever lever) {
        return switch (lever.what()) {
            case CAPACITY -> "accumulator capacity";
            case JOINT_CYCLE_TIME -> "joint cycle time, off every pass";
            case PROCESS_SPEED -> "process speed";
            case REJECTS -> "rejected joints";
            case CREW -> "crew";
            case UNCOILERS -> "uncoilers";
            case ENTRY_TOP_SPEED -> "entry top speed";
            case COIL_LENGTH -> "mean coil length";
            case ELEMENT -> "time off " + lever.element().orElseThrow().name();
        };
    }

    /** A value of a lever as a file takes it. */
    public String number(Lever lever, double si) {
        return number(lever.what().kind(), si);
    }

    private String number(Optional<Kind> kind, double si) {
        return figure(kind, si) + kind.map(known -> " " + unit(known).symbol()).orElse("");
    }

    /** A value of such a kind, or a number of people or uncoilers, to be read; {@code mode} says to which side a time is rounded. */
    public String shown(Optional<Kind> kind, double si, RoundingMode mode) {
        Notation time = Notation.time(si).towards(mode);
        return kind.filter(Kind.TIME::equals).isPresent() && time.isClock() ? time.text(si) : read(kind, si);
    }

    /** A value of {@code lever}, to be read; seconds off a pass without their sign. */
    public String shown(Lever lever, double si) {
        return shown(lever.what().kind(), unsigned(lever, si), safeSide(lever, si));
    }

    /** More off is on the safe side, and so is less of what is added. */
    private static RoundingMode safeSide(Lever lever, double si) {
        boolean isOff = lever.what() == Lever.What.ELEMENT || (lever.what() == Lever.What.JOINT_CYCLE_TIME && si <= 0);
        return isOff ? RoundingMode.CEILING : RoundingMode.FLOOR;
    }

    /** The same without its unit. */
    private String figure(Optional<Kind> kind, double si) {
        return figure(kind, si, DIGITS);
    }

    private String figure(Optional<Kind> kind, double si, int digits) {
        return kind.map(known -> Numbers.thousandsApart(Numbers.text(unit(known).fromSi(si), digits)))
                .orElseGet(() -> Long.toString(Math.round(si)));
    }

    /** For people: whole strands are no round steps in every unit, and of as many digits nobody reads the last. */
    private String legible(Optional<Kind> kind, double si) {
        String exact = figure(kind, si);
        return exact.chars().filter(Character::isDigit).count() >= DIGITS ? figure(kind, si, FEW_DIGITS) : exact;
    }

    private String read(Optional<Kind> kind, double si) {
        return legible(kind, si) + kind.map(known -> " " + unit(known).symbol()).orElse("");
    }

    private Unit unit(Kind kind) {
        return Units.of(system).unit(kind);
    }

    /** A value of {@code answer}'s lever as a file takes it; seconds off a pass without their sign. */
    public String value(LeverAnswer answer, double si) {
        return value(answer.lever(), si);
    }

    /** The same of {@code lever}. */
    public String value(Lever lever, double si) {
        return number(lever, unsigned(lever, si));
    }

    private static double unsigned(Lever lever, double si) {
        return isTimeOff(lever) ? Math.abs(si) : si;
    }

    /** The present value, as it is known and not in steps. */
    public String present(LeverAnswer answer) {
        return present(answer.lever(), answer.present());
    }

    private String present(Lever lever, double si) {
        return lever.what()
                .kind()
                .map(kind -> Numbers.thousandsApart(Numbers.text(unit(kind).fromSi(si))) + " "
                        + unit(kind).symbol())
                .orElseGet(() -> number(lever, si));
    }

    private static boolean isTimeOff(Lever lever) {
        return lever.what() == Lever.What.JOINT_CYCLE_TIME || lever.what() == Lever.What.ELEMENT;
    }

    /** What would meet the target: "a process speed of 29.1 m/min, instead of 45 m/min". */
    public String sentence(LeverAnswer answer) {
        return answer.status() == LeverAnswer.Status.ENOUGH
                ? change(answer, answer.value().orElseThrow()) + interval(answer) + cost("; ", answer.cost())
                : name(answer.lever()) + ": " + words(answer.status());
    }

    private String change(LeverAnswer answer, double value) {
        return change(answer.lever(), answer.present(), value, strands(answer.strand(), value));
    }

    /** {@code lever} set to {@code value} where it is {@code present} now: "a crew of 3, instead of 2". */
    public String change(Lever lever, double present, double value) {
        return change(lever, present, value, "");
    }

    /** {@code change} in words: "4.5 s off every pass of the join work". */
    String change(LeverChange change) {
        return change(change.lever(), change.present(), change.value(), strands(change.strand(), change.value()));
    }

    private String change(Lever lever, double present, double value, String strands) {
        String text = shown(lever, value);
        String instead = ", instead of " + present(lever, present);
        return switch (lever.what()) {
            case CAPACITY -> "an accumulator that holds " + text + strands + instead;
            case JOINT_CYCLE_TIME ->
                value <= 0 ? text + " off every pass of the join work" : text + " more on every pass of the join work";
            case PROCESS_SPEED -> "a process speed of " + text + instead;
            case REJECTS -> "rejects at " + text + " of joints" + instead;
            case CREW ->
                "a crew of " + text + instead
                        + (inShifts ? " in the largest shift, and as many more in every other" : "");
            case UNCOILERS -> text + " uncoilers" + instead;
            case ENTRY_TOP_SPEED -> "an entry that reaches " + text + instead;
            case COIL_LENGTH -> "coils of " + text + " on average" + instead;
            case ELEMENT -> text + " off \"" + lever.element().orElseThrow().name() + "\" each time that it is done";
        };
    }

    private static String strands(OptionalDouble strand, double capacity) {
        return strand.isEmpty() ? "" : " (" + Math.round(capacity / strand.getAsDouble()) + " strands)";
    }

    /** What slower running costs, behind {@code before}: "; good output is then 1700 m/h, now 1800 m/h"; nothing where it costs none. */
    public String cost(String before, Optional<LeverAnswer.Cost> cost) {
        Texts texts = new Texts(system, true);
        return cost.map(output -> {
                    Value now = texts.value(Kind.RATE_LENGTH, output.now());
                    String then = texts.value(Kind.RATE_LENGTH, output.with()).textLike(now);
                    return before + "good output is then " + then + ", now " + now.text();
                })
                .orElse("");
    }

    private String interval(LeverAnswer answer) {
        return interval(answer, "95 % interval ");
    }

    /** The interval of a value in brackets, behind {@code name}; that it is not shown, or nothing where it has none. */
    String interval(LeverAnswer answer, String name) {
        OptionalDouble low = answer.crossing().orElseThrow().low();
        OptionalDouble high = answer.crossing().orElseThrow().high();
        if (!answer.isShown()) {
            return NOT_SHOWN;
        }
        if (low.isEmpty() || high.isEmpty() || low.getAsDouble() == high.getAsDouble()) {
            return "";
        }
        double one = low.getAsDouble();
        double other = high.getAsDouble();
        boolean isJoint = answer.lever().what() == Lever.What.JOINT_CYCLE_TIME;
        if (isJoint && one < 0 && other > 0) {
            return " (" + name + shown(answer.lever(), one) + " off to " + shown(answer.lever(), other) + " more)";
        }
        boolean turned = isJoint && other <= 0;
        return " (" + name + range(answer.lever(), turned ? other : one, turned ? one : other) + ")";
    }

    private String range(Lever lever, double from, double to) {
        double low = unsigned(lever, from);
        double high = unsigned(lever, to);
        Notation time = Notation.time(Math.max(low, high)).towards(safeSide(lever, from));
        return isTimeOff(lever) && time.isClock()
                ? time.range(low, high, 0)
                : legible(lever.what().kind(), low) + " to " + read(lever.what().kind(), high);
    }

    /** What came of a lever that is not set. */
    public static String words(LeverAnswer.Status status) {
        return switch (status) {
            case NONE_NEEDED -> "no change is needed";
            case ENOUGH -> "enough";
            case NONE_IS_ENOUGH -> "no value is enough";
            case DOES_NOT_APPLY -> "would change nothing";
        };
    }
}
