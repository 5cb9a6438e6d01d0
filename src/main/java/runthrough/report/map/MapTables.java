package runthrough.report.map;

import java.util.function.ToDoubleFunction;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Value;
import runthrough.study.map.ClosedFormPoint;
import runthrough.study.map.MapAxis;
import runthrough.study.map.MapPoint;

/** The points of a map as a file: there are too many to be read. */
final class MapTables {
    private static final String FILE = "map-points.csv";

    private MapTables() {}

    static Table points(MapWords words) {
        MapAxis x = words.x();
        MapAxis y = words.y();
        return TableMaker.<MapPoint>of("Points that were run")
                .intoFile(FILE)
                .shownUpTo(0)
                .number(x.name(), MapWords.notation(x), point -> x.value(point.column()))
                .number(y.name(), MapWords.notation(y), point -> y.value(point.row()))
                .estimate("share run through", Notation.SHARE, false, "", point -> share(words, point))
                .count("coil changes", point -> measured(point, MapPoint.Measured::changes))
                .number("margin of capacity", Notation.SHARE, point -> margin(point, ClosedFormPoint::capacity))
                .number("margin of refill", Notation.SHARE, point -> margin(point, ClosedFormPoint::refill))
                .number("margin of preparation", Notation.SHARE, point -> margin(point, ClosedFormPoint::preparation))
                .words("not possible because", MapPoint::refusal)
                .of(words.map().points());
    }

    private static Value share(MapWords words, MapPoint point) {
        return point.measured()
                .map(found -> words.texts().value(Kind.SHARE, found.share()))
                .orElse(Value.of(Double.NaN, Notation.SHARE));
    }

    private static double margin(MapPoint point, ToDoubleFunction<ClosedFormPoint> which) {
        return measured(point, found -> which.applyAsDouble(found.closedForm()));
    }

    private static double measured(MapPoint point, ToDoubleFunction<MapPoint.Measured> what) {
        return point.measured().map(what::applyAsDouble).orElse(Double.NaN);
    }
}
