package runthrough.chart.line;

import java.awt.Color;
import java.awt.geom.Path2D;
import java.util.Optional;
import runthrough.chart.Palette;
import runthrough.chart.Pen;
import runthrough.plant.Catenary;
import runthrough.plant.StorageForm;
import runthrough.quantity.Kind;
import runthrough.quantity.Units;

/** Loops that hang in a pit. */
record LoopsDrawing(StorageForm.FreeLoop form) implements StorageDrawing {
    private static final int POINTS = 40;

    @Override
    public double width() {
        return form.loops() * form.span();
    }

    @Override
    public double height() {
        return 1.4 * form.greatestSag();
    }

    @Override
    public double above(double scale) {
        return 8;
    }

    @Override
    public double below(double scale) {
        return form.greatestSag() * scale + 40;
    }

    @Override
    public Optional<String> scaled() {
        return Optional.of("span and sag");
    }

    @Override
    public double draw(Pen pen, double x, double pass, double scale, Units units) {
        double span = form.span() * scale;
        for (int i = 0; i < form.loops(); i++) {
            double from = x + i * span;
            pen.outline(loop(from, pass, span, form.greatestSag() * scale), Palette.LEVEL, Palette.BOLD);
            pen.outline(loop(from, pass, span, form.leastSag() * scale), Palette.FAINT, Palette.DASHES);
            pen.circle(from, pass + 5, 5, Color.WHITE, Palette.PROCESS, Palette.THIN);
            pen.circle(from + span, pass + 5, 5, Color.WHITE, Palette.PROCESS, Palette.THIN);
        }
        dimensions(pen, x, pass, scale, units);
        return x + form.loops() * span;
    }

    /** Sag and span, at the first loop. */
    private void dimensions(Pen pen, double x, double pass, double scale, Units units) {
        double span = form.span() * scale;
        double deep = pass + form.greatestSag() * scale;
        double middle = x + span / 2;
        pen.dimension(middle, pass, middle, deep);
        pen.text(
                "sag " + units.text(Kind.LENGTH, form.greatestSag()),
                middle + 7,
                deep - 10,
                Pen.Side.RIGHT_OF,
                LineDrawing.SIZE,
                false,
                Palette.TEXT);
        pen.dimension(x, deep + 16, x + span, deep + 16);
        pen.text(
                "span " + units.text(Kind.LENGTH, form.span()),
                middle,
                deep + 32,
                Pen.Side.MIDDLE,
                LineDrawing.SIZE,
                false,
                Palette.TEXT);
    }

    /** A catenary, all of its lengths in px; its form does not depend on the unit. */
    private static Path2D loop(double x, double y, double span, double sag) {
        double arc = Catenary.arc(span, sag);
        // From arc and sag: a = (arc^2/4 - sag^2) / (2 sag).
        double a = sag == 0 ? Double.POSITIVE_INFINITY : (arc * arc / 4 - sag * sag) / (2 * sag);
        Path2D path = new Path2D.Double();
        for (int i = 0; i <= POINTS; i++) {
            double along = span * i / POINTS;
            double u = along - span / 2;
            double down = Double.isInfinite(a) ? 0 : sag - a * (Math.cosh(u / a) - 1);
            if (i == 0) {
                path.moveTo(x + along, y + down);
            } else {
                path.lineTo(x + along, y + down);
            }
        }
        return path;
    }
}
