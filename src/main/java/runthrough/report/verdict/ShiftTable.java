package runthrough.report.verdict;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Unit;
import runthrough.report.Cell;
import runthrough.report.Column;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.ShiftOutcome;
import runthrough.study.Verdict;
import runthrough.study.statistics.Estimate;

/**
 * Coil changes by the shift in which they begin. Counts, lost time and paid hours are those of all replications together.
 */
final class ShiftTable {
    private final RunThroughResult result;
    private final List<ShiftOutcome> shifts;
    private final Texts texts;

    private ShiftTable(RunThroughResult result) {
        this.result = result;
        this.shifts = result.verdict().shifts();
        this.texts = result.texts();
    }

    static Table of(RunThroughResult result) {
        return new ShiftTable(result).table();
    }

    private Table table() {
        TableMaker<ShiftOutcome> table = TableMaker.<ShiftOutcome>of(
                        "Coil changes by the shift in which they begin; shares and means are those over replications")
                .words("Shift", ShiftOutcome::name)
                .count("Changes", shift -> shift.changes().total())
                .estimate("Run through", Notation.SHARE, result.verdict().chance(), "", this::share)
                .count("Slowed", shift -> shift.changes().slowed())
                .count("Stopped", shift -> shift.changes().stopped());
        String joint = result.joint();
        mean(
                table,
                joint.substring(0, 1).toUpperCase(Locale.ROOT) + joint.substring(1),
                ShiftOutcome.Means::jointCycleTime);
        mean(table, "Waiting for preparation", ShiftOutcome.Means::waitingForPreparation);
        mean(table, "Waiting for people", ShiftOutcome.Means::waitingForPeople);
        time(table, "Lost time", ShiftOutcome::lostTime);
        table.number("Paid hours", Notation.of(Unit.HOUR), ShiftOutcome::paidTime)
                .fileNumber("Starved stops", Notation.PLAIN, ShiftOutcome::starvedStops)
                .fileNumber("Mean strip drawn", texts.notation(Kind.LENGTH), ShiftTable::stripDrawn)
                .fileNumber("Mean refill time", Notation.SECONDS, ShiftTable::refillTime);
        margin(table, result.margin(), storage -> Optional.of(storage.spare()));
        if (shifts.stream()
                .anyMatch(shift -> shift.storage()
                        .flatMap(ShiftOutcome.Storage::spareWithoutStop)
                        .isPresent())) {
            margin(table, "margin without a stop", ShiftOutcome.Storage::spareWithoutStop);
        }
        return table.intoFile("shifts.csv").of(shifts);
    }

    private static double stripDrawn(ShiftOutcome shift) {
        return shift.storage().map(storage -> storage.stripDrawn().mean()).orElse(Double.NaN);
    }

    private static double refillTime(ShiftOutcome shift) {
        return shift.storage()
                .flatMap(ShiftOutcome.Storage::refillTime)
                .map(Estimate::mean)
                .orElse(Double.NaN);
    }

    /** The margin at the target, as strip, as time and as speed. */
    private void margin(
            TableMaker<ShiftOutcome> table, String name, Function<ShiftOutcome.Storage, Optional<Verdict.Spare>> of) {
        String heading = name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1) + " at the target";
        table.fileNumber(heading, texts.notation(Kind.LENGTH), at(of, Verdict.Spare::metres))
                .fileNumber(heading + " as time", Notation.SECONDS, at(of, Verdict.Spare::seconds))
                .fileNumber(heading + " as speed", texts.notation(Kind.SPEED), at(of, Verdict.Spare::speed));
    }

    private static ToDoubleFunction<ShiftOutcome> at(
            Function<ShiftOutcome.Storage, Optional<Verdict.Spare>> of, ToDoubleFunction<Verdict.Spare> value) {
        return shift -> shift.storage().flatMap(of).map(value::applyAsDouble).orElse(Double.NaN);
    }

    private void mean(TableMaker<ShiftOutcome> table, String heading, Function<ShiftOutcome.Means, Estimate> of) {
        time(table, heading, shift -> mean(shift, of));
    }

    /** A time, for people in one notation for all shifts, in the file always in seconds. */
    private void time(TableMaker<ShiftOutcome> table, String heading, ToDoubleFunction<ShiftOutcome> of) {
        Notation shown = time(of);
        table.with(
                        new Column(heading, Column.Holds.NUMBERS, Optional.of(shown), Column.Place.PAGE),
                        shift -> Cell.of(Value.of(of.applyAsDouble(shift), shown)))
                .fileNumber(heading, Notation.SECONDS, of);
    }

    /** Not a number where no coil change began in the shift. */
    private static double mean(ShiftOutcome shift, Function<ShiftOutcome.Means, Estimate> of) {
        return shift.means().map(of).map(Estimate::mean).orElse(Double.NaN);
    }

    private Value share(ShiftOutcome shift) {
        return shift.means()
                .map(means -> texts.value(Notation.SHARE, means.shareRunThrough()))
                .orElseGet(() -> Value.of(Double.NaN, Notation.SHARE));
    }

    /** One notation for the times of all shifts. */
    private Notation time(ToDoubleFunction<ShiftOutcome> of) {
        return texts.notation(
                Kind.TIME,
                shifts.stream()
                        .mapToDouble(of)
                        .filter(time -> !Double.isNaN(time))
                        .max()
                        .orElse(0));
    }
}
