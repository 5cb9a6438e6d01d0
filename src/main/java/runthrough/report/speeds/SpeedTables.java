package runthrough.report.speeds;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.speed.SpeedCurve;
import runthrough.study.speed.SpeedPoint;

/** What comes out at each speed, as a table and as a file. */
final class SpeedTables {
    private static final String FILE = "output-against-speed.csv";

    private final List<SpeedPoint> points;
    private final List<Row> rows;
    private final boolean isPartly;
    private final Texts texts;

    private SpeedTables(SpeedCurve curve, Texts texts) {
        this.points = points(curve);
        this.rows = Stream.concat(
                        points.stream().map(point -> new Row(point.speed(), Optional.of(point), "")),
                        curve.notPossible().stream().map(one -> new Row(one.speed(), Optional.empty(), one.why())))
                .sorted(Comparator.comparingDouble(Row::speed))
                .toList();
        this.isPartly = !curve.notPossible().isEmpty();
        this.texts = texts;
    }

    /** A speed, and what comes out at it or why the line cannot be run so. */
    private record Row(double speed, Optional<SpeedPoint> point, String why) {
        double number(ToDoubleFunction<SpeedPoint> of) {
            return point.map(of::applyAsDouble).orElse(Double.NaN);
        }

        Value value(Function<SpeedPoint, Value> of) {
            return point.map(of).orElse(Value.plain(Double.NaN));
        }
    }

    static Table of(SpeedCurve curve, Texts texts) {
        return new SpeedTables(curve, texts).table();
    }

    /** A speed to be set: rounded down, for a little faster much less may come out. */
    static Value speed(Texts texts, double speed) {
        return Value.of(speed, texts.notation(Kind.SPEED, speed).atMost());
    }

    /** The points of the range, and the peak among them. */
    static List<SpeedPoint> points(SpeedCurve curve) {
        return Stream.concat(curve.points().stream(), Stream.of(curve.peak().at()))
                .distinct()
                .sorted(Comparator.comparingDouble(SpeedPoint::speed))
                .toList();
    }

    /** Intervals and what follows from the rest are in the file alone: a terminal has no room for them. */
    private Table table() {
        Notation output = notation(Kind.RATE_LENGTH, point -> point.output().mean());
        Notation speed = texts.notation(
                        Kind.SPEED, rows.stream().mapToDouble(Row::speed).max().orElse(1))
                .atMost();
        TableMaker<Row> table = TableMaker.<Row>of("What comes out, in the replications of the scenario")
                .intoFile(FILE)
                .number("speed", speed, Row::speed)
                .fileNumber("factor", Notation.PLAIN, row -> row.number(SpeedPoint::factor))
                .estimate(
                        "output",
                        output,
                        false,
                        "not possible",
                        row -> row.value(point -> texts.value(output, point.output())))
                .fileNumber("mass", notation(Kind.RATE_MASS, SpeedTables::mass), row -> row.number(SpeedTables::mass))
                .number(
                        "yield",
                        Notation.SHARE,
                        row -> row.number(point -> point.goodShare().mean()))
                .fileNumber(
                        "share of rated",
                        Notation.SHARE,
                        row -> row.number(point -> point.utilisation().mean()))
                .estimate(
                        "run through",
                        Notation.SHARE,
                        false,
                        "",
                        row -> row.value(point -> texts.value(Kind.SHARE, point.shareRunThrough())))
                .estimate(
                        "stops/8 h",
                        Notation.PLAIN,
                        false,
                        "",
                        row -> row.value(point -> texts.plain(point.stopsPerShift())))
                .number("lost/8 h", notation(Kind.TIME, SpeedTables::lost), row -> row.number(SpeedTables::lost));
        return (isPartly ? table.fileWords("why not possible", Row::why) : table).of(rows);
    }

    private Notation notation(Kind kind, ToDoubleFunction<SpeedPoint> si) {
        return texts.notation(kind, points.stream().mapToDouble(si).max().orElse(1));
    }

    private static double mass(SpeedPoint point) {
        return point.massFlow().mean();
    }

    private static double lost(SpeedPoint point) {
        return point.lostTimePerShift().mean();
    }
}
