package runthrough.chart.line;

import java.awt.Color;
import java.util.Optional;
import runthrough.chart.Palette;
import runthrough.chart.Pen;
import runthrough.plant.StorageForm;
import runthrough.quantity.Kind;
import runthrough.quantity.Units;

/** Wraps of a floor spiral, from above. */
record SpiralDrawing(StorageForm.Spiral form) implements StorageDrawing {
    @Override
    public double width() {
        return form.fullDiameter();
    }

    @Override
    public double height() {
        return 1.15 * form.fullDiameter();
    }

    @Override
    public double above(double scale) {
        return form.fullDiameter() * scale / 2;
    }

    @Override
    public double below(double scale) {
        return form.fullDiameter() * scale / 2 + 36;
    }

    @Override
    public Optional<String> scaled() {
        return Optional.of("wraps, seen from above");
    }

    @Override
    public double draw(Pen pen, double x, double pass, double scale, Units units) {
        double full = form.fullDiameter() * scale / 2;
        double empty = form.emptyDiameter() * scale / 2;
        double middle = x + full;
        pen.circle(middle, pass, full, Color.WHITE, Palette.LEVEL, Palette.BOLD);
        pen.circle(middle, pass, (2 * full + empty) / 3, Color.WHITE, Palette.LEVEL, Palette.THIN);
        pen.circle(middle, pass, (full + 2 * empty) / 3, Color.WHITE, Palette.LEVEL, Palette.THIN);
        pen.circle(middle, pass, empty, Color.WHITE, Palette.FAINT, Palette.DASHES);
        double y = pass + full + 14;
        pen.dimension(x, y, x + 2 * full, y);
        diameter(pen, form.fullDiameter(), middle, y + 16, units);
        diameter(pen, form.emptyDiameter(), middle, pass - 4, units);
        pen.dimension(middle - empty, pass + 4, middle + empty, pass + 4);
        return x + 2 * full;
    }

    private static void diameter(Pen pen, double diameter, double x, double y, Units units) {
        pen.text(units.text(Kind.DIAMETER, diameter), x, y, Pen.Side.MIDDLE, LineDrawing.SIZE, false, Palette.TEXT);
    }
}
