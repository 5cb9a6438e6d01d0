package runthrough.report.limits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.report.StudyWords;
import runthrough.report.write.CsvWriter;
import runthrough.study.limits.Limits;
import runthrough.study.limits.LineLimit;

/** The limits of a line as a CSV file: a row each, in the user's units. */
final class LimitsCsv {
    private final Limits limits;
    private final StudyWords words;

    private LimitsCsv(Limits limits, StudyWords words) {
        this.limits = limits;
        this.words = words;
    }

    static String of(Limits limits, StudyWords words) {
        return new LimitsCsv(limits, words).text();
    }

    private String text() {
        List<List<String>> rows = new ArrayList<>();
        limits.limits().forEach(limit -> rows.add(row(limit)));
        limits.counts()
                .forEach(limit -> rows.add(List.of(
                        LimitWords.name(limit.what()),
                        "",
                        Integer.toString(limit.present()),
                        cell(limit.smallest()),
                        "",
                        "",
                        cell(limit.sure()),
                        cell(limit.closedForm()),
                        "")));
        return CsvWriter.of(
                List.of(
                        "limit",
                        "unit",
                        "now",
                        "value",
                        "low",
                        "high",
                        "shown to meet",
                        "hand calculation",
                        "limiting factor"),
                rows);
    }

    private List<String> row(LineLimit limit) {
        Optional<Unit> unit = limit.what() == LineLimit.What.JOINT_CYCLE_TIME_FACTOR
                ? Optional.empty()
                : Optional.of(
                        limit.what().kind() == Kind.TIME
                                ? Unit.SECOND
                                : words.units().unit(limit.what().kind()));
        return List.of(
                LimitWords.name(limit.what()),
                unit.map(Unit::symbol).orElse("times the present time"),
                cell(unit, OptionalDouble.of(limit.present())),
                cell(unit, limit.crossing().value()),
                cell(unit, limits.chance() ? limit.crossing().low() : OptionalDouble.empty()),
                cell(unit, limits.chance() ? limit.crossing().high() : OptionalDouble.empty()),
                cell(unit, limit.crossing().sure()),
                cell(
                        unit,
                        limit.neighbour()
                                .map(near -> OptionalDouble.of(near.value()))
                                .orElse(OptionalDouble.empty())),
                LimitWords.limitingFactor(limit).orElse(""));
    }

    private static String cell(Optional<Unit> unit, OptionalDouble si) {
        double value = si.orElse(Double.NaN);
        return CsvWriter.number(unit.map(u -> u.fromSi(value)).orElse(value));
    }

    private static String cell(OptionalInt number) {
        return number.isPresent() ? Integer.toString(number.getAsInt()) : "";
    }
}
