package runthrough.report.map;

import runthrough.quantity.Dimension;
import runthrough.quantity.Notation;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.map.MapAxis;
import runthrough.study.map.ShareMap;
import runthrough.study.map.ShareMap.Way;

/**
 * The axes and the parts of a map in words and as values.
 *
 * @param map that is described
 * @param texts for its numbers
 */
record MapWords(ShareMap map, Texts texts) {

    MapAxis x() {
        return map.plan().x();
    }

    MapAxis y() {
        return map.plan().y();
    }

    MapAxis along(Way way) {
        return way.isAlongX() ? x() : y();
    }

    /** How the number along an axis is called in a sentence. */
    static String called(MapAxis axis) {
        return axis.name().contains(".") ? axis.name() : axis.name().replace('-', ' ');
    }

    /** How the values along an axis are written in a column. */
    static Notation notation(MapAxis axis) {
        return axis.unit().map(Notation::of).orElse(Notation.PLAIN);
    }

    /** A value (SI) along an axis; a time as people read times. */
    static Value value(MapAxis axis, double si) {
        boolean isTime =
                axis.unit().filter(unit -> unit.dimension() == Dimension.TIME).isPresent();
        return Value.of(si, isTime ? Notation.time(si) : notation(axis));
    }

    static String text(MapAxis axis, double si) {
        return value(axis, si).text();
    }

    static String range(MapAxis axis) {
        return called(axis) + " from " + text(axis, axis.from()) + " to " + text(axis, axis.to());
    }

    /** A part of the map by area, to a thousandth: no map is finer. */
    static Value part(double share) {
        double rounded = Math.rint(share * 1000) / 1000;
        return Value.of(
                share > 0 && rounded == 0 ? 0.001 : share < 1 && rounded == 1 ? 0.999 : rounded, Notation.SHARE);
    }

    String target() {
        return Texts.target(map.target());
    }
}
