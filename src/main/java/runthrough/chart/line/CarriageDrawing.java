package runthrough.chart.line;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import runthrough.chart.Palette;
import runthrough.chart.Pen;
import runthrough.plant.StorageForm;
import runthrough.quantity.Kind;
import runthrough.quantity.Units;

/** Strands with a carriage that moves along the line. */
record CarriageDrawing(StorageForm.Strands form) implements StorageDrawing {
    private static final double NEAR = 26;

    @Override
    public double width() {
        return form.stroke();
    }

    @Override
    public double height() {
        return 0.1;
    }

    @Override
    public double above(double scale) {
        return 66;
    }

    @Override
    public double below(double scale) {
        return 66 + 50;
    }

    @Override
    public Optional<String> scaled() {
        return Optional.of("stroke");
    }

    @Override
    public double draw(Pen pen, double x, double pass, double scale, Units units) {
        double between = Math.min(14, 110.0 / form.strands());
        double empty = x + NEAR;
        double full = empty + form.stroke() * scale;
        double half = between * form.strands() / 2;
        strands(pen, x, full, pass - half, between);
        double top = pass - half - 6;
        double high = 2 * half + between + 12;
        pen.box(full - 5, top, 10, high, Palette.CHANGE, Palette.PROCESS, Palette.THIN);
        pen.outline(new Rectangle2D.Double(empty - 5, top, 10, high), Palette.FAINT, Palette.DASHES);
        stroke(pen, empty, full, pass + half + between + 24, units);
        return full + 14;
    }

    /** The strands from fixed rolls at {@code x} to the full carriage and back, the first of them at {@code top} (px). */
    private void strands(Pen pen, double x, double full, double top, double between) {
        for (int i = 0; i <= form.strands(); i++) {
            double y = top + i * between;
            pen.line(x, y, full, y, Palette.LEVEL, Palette.THIN);
            pen.circle(i % 2 == 0 ? full : x, y + between / 2, between / 2, Color.WHITE, Palette.PROCESS, Palette.HAIR);
        }
    }

    private void stroke(Pen pen, double empty, double full, double y, Units units) {
        pen.dimension(empty, y, full, y);
        pen.text(
                form.strands() + " strands, stroke " + units.text(Kind.LENGTH, form.stroke()),
                (empty + full) / 2,
                y + 16,
                Pen.Side.MIDDLE,
                LineDrawing.SIZE,
                false,
                Palette.TEXT);
    }
}
