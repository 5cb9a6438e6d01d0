package runthrough.chart.line;

import java.awt.Color;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import runthrough.chart.ChartFonts;
import runthrough.chart.Palette;
import runthrough.chart.Pen;
import runthrough.chart.Picture;
import runthrough.plant.Coil;
import runthrough.plant.CoilSize;
import runthrough.plant.Line;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.quantity.Units;

/**
 * The section drawn: uncoilers, joiner, accumulator, process. Coils and what moves in the accumulator are drawn to one scale;
 * what has no length in the description is not, and the drawing says so.
 */
public final class LineDrawing implements Picture.Drawing {
    static final int WIDTH = 900;
    static final float SIZE = 12.5f;
    private static final double LEFT = 24;
    private static final double GAP = 44;
    private static final double JOINER = 64;
    private static final double PROCESS = 130;
    /** What the parts to scale share between them (px). */
    private static final double ROOM = WIDTH - 2 * LEFT - 3 * GAP - JOINER - PROCESS - 20;

    private static final double HEIGHT_ROOM = 190;
    /** Where a coil's inner diameter is not given (m). Common practice, no source. */
    private static final double USUAL_CORE = 0.508;

    private final Line line;
    private final Units units;
    private final ChartFonts fonts;
    private final StorageDrawing storage;
    private final double coil;
    private final double scale;
    /** Where the strip runs (px from the top). */
    private final double pass;
    /** Where the drawing ends and its words begin (px from the top). */
    private final double drawn;

    private LineDrawing(SimulationRequest request, ChartFonts fonts) {
        this.line = request.line();
        this.units = Units.of(request.resultsIn());
        this.fonts = fonts;
        this.storage = StorageDrawing.of(line.accumulator().form());
        this.coil = largestDiameter(line);
        double wide = 1.3 * coil * Math.min(2, line.entry().uncoilers()) + storage.width();
        double high = Math.max(1.1 * coil, storage.height());
        this.scale = DoubleStream.of(ROOM / wide, HEIGHT_ROOM / high, 120 / coil)
                .min()
                .orElseThrow();
        boolean stores = !line.practice().isOneStrip();
        this.pass = 44 + Math.max(50, stores ? storage.above(scale) + 18 : 0);
        this.drawn = pass + Math.max(coil * scale + 50, stores ? storage.below(scale) : 60) + 34;
    }

    /** The drawing of the line of {@code request}. */
    public static Picture picture(SimulationRequest request, ChartFonts fonts) {
        LineDrawing drawing = new LineDrawing(request, fonts);
        return new Picture(drawing, WIDTH, drawing.height());
    }

    private int height() {
        return (int) drawn + 12;
    }

    /** The outer diameter of the largest coil (m); of coils given by length or mass, wound without air on a usual core. */
    private static double largestDiameter(Line line) {
        return line.coils().stream().mapToDouble(LineDrawing::diameter).max().orElseThrow();
    }

    private static double diameter(Coil coil) {
        return coil.outerDiameter()
                .orElseGet(() -> CoilSize.outerDiameter(USUAL_CORE, coil.thickness(), coil.meanLength(), 1));
    }

    private static double core(Coil coil) {
        return coil.coreDiameter().orElse(USUAL_CORE);
    }

    @Override
    public void draw(Graphics2D graphics) {
        Pen pen = new Pen(graphics, fonts);
        graphics.setPaint(Color.WHITE);
        graphics.fillRect(0, 0, WIDTH, height());
        double x = uncoilers(pen);
        x = joiner(pen, x + GAP);
        x = accumulator(pen, x);
        process(pen, x);
        scaleBar(pen);
    }

    private double uncoilers(Pen pen) {
        int shown = Math.min(2, line.entry().uncoilers());
        double radius = coil * scale / 2;
        Coil largest = line.coils().stream()
                .reduce((a, b) -> diameter(b) > diameter(a) ? b : a)
                .orElseThrow();
        double y = pass + radius + 10;
        double x = LEFT + radius;
        for (int i = 0; i < shown; i++) {
            pen.circle(x, y, radius, i == shown - 1 ? Palette.ENOUGH : Color.WHITE, Palette.EDGE, Palette.SOLID);
            pen.circle(x, y, core(largest) * scale / 2, Color.WHITE, Palette.EDGE, Palette.THIN);
            if (i < shown - 1) {
                x += 2.6 * radius;
            }
        }
        number(pen, 1, x - radius, y - radius - 16);
        pen.line(x, y - radius, x + radius + GAP, pass, Palette.LEVEL, Palette.BOLD);
        if (largest.coreDiameter().isPresent()) {
            double below = y + radius + 14;
            pen.dimension(x - radius, below, x + radius, below);
            pen.text(units.text(Kind.DIAMETER, coil), x, below + 16, Pen.Side.MIDDLE, SIZE, false, Palette.TEXT);
        }
        return x + radius;
    }

    private double joiner(Pen pen, double x) {
        pen.line(x, pass, x + JOINER + GAP, pass, Palette.LEVEL, Palette.BOLD);
        pen.box(x, pass - 30, JOINER, 22, Palette.CHANGE, Palette.PROCESS, Palette.THIN);
        pen.box(x, pass + 8, JOINER, 22, Palette.CHANGE, Palette.PROCESS, Palette.THIN);
        number(pen, 2, x + JOINER / 2, pass - 46);
        return x + JOINER + GAP;
    }

    private double accumulator(Pen pen, double x) {
        if (line.practice().isOneStrip()) {
            pen.line(x, pass, x + 30, pass, Palette.LEVEL, Palette.BOLD);
            return x + 30;
        }
        double end = storage.draw(pen, x, pass, scale, units);
        number(pen, 3, (x + end) / 2, pass - storage.above(scale) - 20);
        pen.line(end, pass, end + GAP, pass, Palette.LEVEL, Palette.BOLD);
        return end + GAP;
    }

    private void process(Pen pen, double x) {
        pen.box(x, pass - 34, PROCESS, 68, Palette.CHANGE, Palette.PROCESS, Palette.SOLID);
        pen.text("process", x + PROCESS / 2, pass + 5, Pen.Side.MIDDLE, 13, true, Palette.TEXT);
        number(pen, line.practice().isOneStrip() ? 3 : 4, x + PROCESS / 2, pass - 52);
        pen.line(x + PROCESS, pass, x + PROCESS + 16, pass, Palette.LEVEL, Palette.BOLD);
    }

    private static void number(Pen pen, int number, double x, double y) {
        pen.circle(x, y, 11, Color.WHITE, Palette.PROCESS, Palette.SOLID);
        pen.text(Integer.toString(number), x, y + 4.8, Pen.Side.MIDDLE, 13, true, Palette.TEXT);
    }

    /** A round length of at most 140 px. */
    private void scaleBar(Pen pen) {
        Unit unit = units.unit(Kind.LENGTH);
        double most = unit.fromSi(140 / scale);
        double power = Math.pow(10, Math.floor(Math.log10(most)));
        double round = (most >= 5 * power ? 5 : most >= 2 * power ? 2 : 1) * power;
        double length = unit.toSi(round) * scale;
        double y = drawn - 8;
        double x = WIDTH - LEFT - length;
        pen.line(x, y, x + length, y, Palette.PROCESS, Palette.BOLD);
        pen.line(x, y - 4, x, y + 4, Palette.PROCESS, Palette.THIN);
        pen.line(x + length, y - 4, x + length, y + 4, Palette.PROCESS, Palette.THIN);
        pen.text(
                units.text(Kind.LENGTH, unit.toSi(round)),
                x + length / 2,
                y - 7,
                Pen.Side.MIDDLE,
                SIZE,
                false,
                Palette.TEXT);
        boolean isWound =
                line.coils().stream().allMatch(each -> each.coreDiameter().isPresent());
        List<String> scaled =
                new ArrayList<>(List.of(isWound ? "coil" : "coil (as wound without air on a core of 508 mm, 20 in)"));
        storage.scaled().ifPresent(scaled::add);
        pen.text(
                "To scale: " + String.join(", ", scaled) + ". Not to scale: all else.",
                x - 14,
                y + 4,
                Pen.Side.LEFT_OF,
                SIZE,
                false,
                Palette.FAINT);
    }
}
