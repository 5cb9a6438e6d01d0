package runthrough.chart.line;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import runthrough.chart.Palette;
import runthrough.chart.Pen;
import runthrough.plant.StorageForm;
import runthrough.quantity.Kind;
import runthrough.quantity.Units;

/** Strands with a carriage that moves up and down. */
record TowerDrawing(StorageForm.Strands form) implements StorageDrawing {
    private static final double WIDE = 190;
    private static final double NEAR = 24;

    @Override
    public double width() {
        return 0;
    }

    @Override
    public double height() {
        return 1.5 * form.stroke();
    }

    @Override
    public double above(double scale) {
        return NEAR + form.stroke() * scale + 4;
    }

    @Override
    public double below(double scale) {
        return 44;
    }

    @Override
    public Optional<String> scaled() {
        return Optional.of("stroke");
    }

    @Override
    public double draw(Pen pen, double x, double pass, double scale, Units units) {
        double between = Math.min(16, WIDE / form.strands());
        double wide = between * form.strands();
        double low = pass + 4;
        double empty = low - NEAR;
        double full = empty - form.stroke() * scale;
        strands(pen, x, low, full, between);
        pen.box(x - 6, full - 5, wide + 12, 10, Palette.CHANGE, Palette.PROCESS, Palette.THIN);
        pen.outline(new Rectangle2D.Double(x - 6, empty - 5, wide + 12, 10), Palette.FAINT, Palette.DASHES);
        double at = x + wide + 18;
        stroke(pen, at, empty, full, units);
        pen.text(
                form.strands() + " strands",
                x + wide / 2,
                low + 34,
                Pen.Side.MIDDLE,
                LineDrawing.SIZE,
                false,
                Palette.TEXT);
        pen.line(x + wide, pass, at + 60, pass, Palette.LEVEL, Palette.BOLD);
        return at + 60;
    }

    /** The strands from fixed rolls at {@code low} to the full carriage and back, the first of them at {@code x} (px). */
    private void strands(Pen pen, double x, double low, double full, double between) {
        for (int i = 0; i <= form.strands(); i++) {
            double at = x + i * between;
            pen.line(at, low, at, full, Palette.LEVEL, Palette.THIN);
            if (i < form.strands()) {
                pen.circle(
                        at + between / 2,
                        i % 2 == 0 ? full : low,
                        between / 2,
                        Color.WHITE,
                        Palette.PROCESS,
                        Palette.HAIR);
            }
        }
    }

    private void stroke(Pen pen, double x, double empty, double full, Units units) {
        pen.dimension(x, empty, x, full);
        pen.text(
                units.text(Kind.LENGTH, form.stroke()),
                x + 8,
                (empty + full) / 2,
                Pen.Side.RIGHT_OF,
                LineDrawing.SIZE,
                false,
                Palette.TEXT);
    }
}
