package runthrough.report.map;

import java.util.List;
import java.util.Optional;
import runthrough.handcalc.Limit;
import runthrough.report.JsonShape;
import runthrough.study.cause.Cause;
import runthrough.study.map.MapAxis;
import runthrough.study.map.MapPoint;
import runthrough.study.map.ShareMap;
import runthrough.study.map.ShareMap.Way;

/** JSON of a map. Values along the axes are SI, or plain numbers where they have no unit. */
final class MapDocument {
    private static final JsonShape<MapAxis> AXIS = JsonShape.<MapAxis>named("axis")
            .text("path", "Path of the number in the scenario, or name of the figure.", MapAxis::name)
            .optionalText(
                    "unit_si",
                    "SI unit of the values; % for shares from 0 to 1; null for plain numbers.",
                    axis -> axis.unit().map(unit -> unit.dimension().base().symbol()))
            .number("from", "Least value.", MapAxis::from)
            .number("to", "Greatest value.", MapAxis::to)
            .count("points", "How many values, evenly spaced.", MapAxis::points);

    private static final JsonShape<MapPoint.Measured> MEASURED = JsonShape.<MapPoint.Measured>named("measured")
            .estimate("share_run_through", "Share of coil changes run through.", MapPoint.Measured::share)
            .count("coil_changes", "Coil changes of all replications.", MapPoint.Measured::changes)
            .number(
                    "margin_capacity",
                    "Margin of capacity by the closed forms, as a share of it; negative when it is not enough.",
                    found -> found.closedForm().capacity())
            .number(
                    "margin_refill",
                    "The same for refill before the next change.",
                    found -> found.closedForm().refill())
            .number(
                    "margin_preparation",
                    "The same for the preparation of the next coil.",
                    found -> found.closedForm().preparation())
            .word(
                    "limiting_factor",
                    "Which of them is the least.",
                    Limit.class,
                    found -> found.closedForm().limitingFactor());

    /** A point with its place on the axes. */
    private record Placed(double x, double y, MapPoint point) {}

    private static final JsonShape<Placed> POINT = JsonShape.<Placed>named("point")
            .number("x", "Value on the x axis.", Placed::x)
            .number("y", "Value on the y axis.", Placed::y)
            .optional(
                    "measured",
                    "What it gave; null where no line can be so.",
                    MEASURED,
                    placed -> placed.point().measured())
            .optionalText(
                    "refusal",
                    "Why no line can be so; null where it can.",
                    placed -> Optional.of(placed.point().refusal()).filter(text -> !text.isEmpty()));

    private static final JsonShape<ShareMap.Parts> PARTS = JsonShape.<ShareMap.Parts>named("parts")
            .number("possible", "Where a line can be so.", ShareMap.Parts::possible)
            .number("meets", "Where the target is met by simulation.", ShareMap.Parts::meets)
            .number(
                    "enough_in_hand_calculation",
                    "Where the closed forms see enough.",
                    ShareMap.Parts::enoughByClosedForms)
            .number(
                    "hand_calculation_only",
                    "Where the closed forms see enough and the target is missed.",
                    ShareMap.Parts::closedFormsOnly)
            .number(
                    "simulated_only",
                    "Where the target is met and the closed forms do not see enough.",
                    ShareMap.Parts::simulatedOnly);

    static final JsonShape<ShareMap> SHAPE = JsonShape.<ShareMap>named("map")
            .number("target", "Share of coil changes that should run through.", ShareMap::target)
            .in("x_axis", "From left to right.", AXIS, map -> map.plan().x())
            .in("y_axis", "From bottom to top.", AXIS, map -> map.plan().y())
            .in("parts", "How much of the map is what, by area, from 0 to 1.", PARTS, ShareMap::parts)
            .optionalNumber(
                    "own_x",
                    "The line's own value on the x axis; null where it has none.",
                    map -> map.plan().ownX())
            .optionalNumber(
                    "own_y", "The same on the y axis.", map -> map.plan().ownY())
            .in("present", "What the line as it is gives.", MEASURED, ShareMap::present)
            .optionalNumber(
                    "target_left",
                    "Value on the x axis at which the target is first lost or met, going left from the line as it is; null"
                            + " where there is none. That of the lever or limit where the axis is one, which may lie beside the"
                            + " map; else read off the grid.",
                    map -> map.limit(Way.LEFT))
            .optionalNumber("target_right", "The same going right.", map -> map.limit(Way.RIGHT))
            .optionalNumber("target_down", "The same on the y axis, going down.", map -> map.limit(Way.DOWN))
            .optionalNumber("target_up", "The same going up.", map -> map.limit(Way.UP))
            .optionalWord(
                    "cause_missed_in_hand_calculation",
                    "What most failures are attributed to where the closed forms see enough and the target is missed.",
                    Cause.class,
                    ShareMap::causeMissedByClosedForms)
            .list("points", "The points that were run, row by row from the bottom.", POINT, MapDocument::points);

    private MapDocument() {}

    private static List<Placed> points(ShareMap map) {
        return map.points().stream()
                .map(point -> new Placed(
                        map.plan().x().value(point.column()), map.plan().y().value(point.row()), point))
                .toList();
    }
}
