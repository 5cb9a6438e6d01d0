package runthrough.report.speeds;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Texts;
import runthrough.study.speed.SpeedCurve;
import runthrough.study.speed.SpeedPoint;

/** What comes out at each speed, as a table and as a file. */
final class SpeedTables {
    private static final String FILE = "output-against-speed.csv";

    private final List<SpeedPoint> points;
    private final Texts texts;

    private SpeedTables(SpeedCurve curve, Texts texts) {
        this.points = points(curve);
        this.texts = texts;
    }

    static Table of(SpeedCurve curve, Texts texts) {
        return new SpeedTables(curve, texts).table();
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
        return TableMaker.<SpeedPoint>of("What comes out, in the replications of the scenario")
                .intoFile(FILE)
                .number("speed", notation(Kind.SPEED, SpeedPoint::speed), SpeedPoint::speed)
                .fileNumber("factor", Notation.PLAIN, SpeedPoint::factor)
                .estimate("output", output, false, "", point -> texts.value(output, point.output()))
                .number("mass", notation(Kind.RATE_MASS, SpeedTables::mass), SpeedTables::mass)
                .number("yield", Notation.SHARE, point -> point.goodShare().mean())
                .fileNumber(
                        "share of rated",
                        Notation.SHARE,
                        point -> point.utilisation().mean())
                .estimate(
                        "run through",
                        Notation.SHARE,
                        false,
                        "",
                        point -> texts.value(Kind.SHARE, point.shareRunThrough()))
                .estimate("stops/8 h", Notation.PLAIN, false, "", point -> texts.plain(point.stopsPerShift()))
                .number("lost/8 h", notation(Kind.TIME, SpeedTables::lost), SpeedTables::lost)
                .of(points);
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
