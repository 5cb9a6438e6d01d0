package runthrough.chart.line;

import java.awt.Color;
import java.awt.geom.Path2D;
import java.util.Optional;
import runthrough.chart.Palette;
import runthrough.chart.Pen;
import runthrough.quantity.Kind;
import runthrough.quantity.Units;

/** Capacity alone was given. */
record PlainDrawing(double capacity) implements StorageDrawing {
    private static final double WIDE = 150;

    @Override
    public double width() {
        return 0;
    }

    @Override
    public double height() {
        return 0.1;
    }

    @Override
    public double above(double scale) {
        return 60;
    }

    @Override
    public double below(double scale) {
        return 88;
    }

    @Override
    public Optional<String> scaled() {
        return Optional.empty();
    }

    @Override
    public double draw(Pen pen, double x, double pass, double scale, Units units) {
        pen.box(x, pass - 60, WIDE, 120, Color.WHITE, Palette.PROCESS, Palette.DASHES);
        Path2D wave = new Path2D.Double();
        wave.moveTo(x, pass);
        for (int i = 0; i < 6; i++) {
            double at = x + i * WIDE / 6;
            double bend = i % 2 == 0 ? -70 : 70;
            wave.curveTo(at + WIDE / 18, pass + bend, at + WIDE / 9, pass + bend, at + WIDE / 6, pass);
        }
        pen.outline(wave, Palette.LEVEL, Palette.SOLID);
        pen.text(
                "holds " + units.text(Kind.LENGTH, capacity),
                x + WIDE / 2,
                pass + 80,
                Pen.Side.MIDDLE,
                LineDrawing.SIZE,
                false,
                Palette.TEXT);
        return x + WIDE;
    }
}
