package runthrough.chart.document;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import runthrough.chart.ChartFonts;
import runthrough.chart.Palette;
import runthrough.chart.Pen;
import runthrough.chart.Picture;
import runthrough.quantity.Notation;
import runthrough.quantity.Numbers;

/**
 * The whole answer in one picture, large enough for the back of a room: the share that runs through against the target,
 * or what a year comes to where no change can run through, and what a coil change takes from the accumulator against what it can
 * give.
 */
final class SummaryChart implements Picture.Drawing {
    static final int WIDTH = 1600;
    static final int SLIDE_HEIGHT = 900;
    private static final int HEADLINE = 290;
    private static final double BELOW_HEADLINE = 40;
    private static final double LEFT = 60;
    private static final double RIGHT = WIDTH - 60;
    private static final double AXIS_LEFT = 440;
    private static final double AXIS_RIGHT = 1290;
    private static final double ROW = 58;
    private static final double CLOSE_ROW = 46;
    /** More rows than this stand closer. */
    private static final int ROOMY_ROWS = 4;

    private static final float SIZE = 28;
    private static final int MOST_TICKS = 8;
    /** More alternatives than this have no room. */
    static final int MOST_ROWS = 6;

    private static final int STRIP = 168;

    private final SummaryData data;
    private final ChartFonts fonts;
    private final boolean slide;
    private final int height;

    private SummaryChart(SummaryData data, ChartFonts fonts, boolean slide) {
        this.data = data;
        this.fonts = fonts;
        this.slide = slide;
        this.height = slide ? SLIDE_HEIGHT : bodyHeight(data);
    }

    /** The picture alone, at the size of a slide, headline and all. */
    static Picture slide(SummaryData data, ChartFonts fonts) {
        return new Picture(new SummaryChart(data, fonts, true), WIDTH, SLIDE_HEIGHT);
    }

    /** The same without its headline, for a page that has one. */
    static Picture onPage(SummaryData data, ChartFonts fonts) {
        SummaryChart chart = new SummaryChart(data, fonts, false);
        return new Picture(chart, WIDTH, chart.height);
    }

    private static int bodyHeight(SummaryData data) {
        int strip = data.strip().isPresent() ? STRIP : 0;
        return data.years().isEmpty()
                ? (int) (70 + shown(data).size() * row(data) + 70) + strip
                : YearBars.height(data) + strip;
    }

    private static List<SummaryData.Share> shown(SummaryData data) {
        return data.shares().subList(0, Math.min(MOST_ROWS, data.shares().size()));
    }

    /** Height of a row. */
    private static double row(SummaryData data) {
        return shown(data).size() > ROOMY_ROWS ? CLOSE_ROW : ROW;
    }

    @Override
    public void draw(Graphics2D graphics) {
        Pen pen = new Pen(graphics, fonts);
        graphics.setPaint(Color.WHITE);
        graphics.fillRect(0, 0, WIDTH, height);
        double y = 44;
        if (slide) {
            headline(pen);
            y = HEADLINE + Math.max(BELOW_HEADLINE, (SLIDE_HEIGHT - HEADLINE - bodyHeight(data)) / 2.0);
        }
        y = data.years().isEmpty() ? shares(pen, y) : new YearBars(pen, data.years()).draw(y);
        double from = y;
        data.strip().ifPresent(strip -> strip(pen, strip, from + 46));
    }

    private void headline(Pen pen) {
        pen.text(pen.cut(data.title(), RIGHT - LEFT, 32, false), LEFT, 74, Pen.Side.RIGHT_OF, 32, false, Palette.FAINT);
        pen.text(data.sign() + " " + data.word(), LEFT, 166, Pen.Side.RIGHT_OF, 72, true, Palette.TEXT);
        double y = 226;
        List<String> lines = pen.wrapped(data.sentence(), RIGHT - LEFT, 32, false);
        for (String line : lines.subList(0, Math.min(2, lines.size()))) {
            pen.text(line, LEFT, y, Pen.Side.RIGHT_OF, 32, false, Palette.TEXT);
            y += 44;
        }
    }

    /** Draws the shares from {@code top} on and gives where they end. */
    private double shares(Pen pen, double top) {
        List<SummaryData.Share> rows = shown(data);
        String more = rows.size() < data.shares().size()
                ? ", " + rows.size() + " of " + data.shares().size()
                : "";
        pen.text(
                "Share of coil changes that run through" + more,
                LEFT,
                top,
                Pen.Side.RIGHT_OF,
                SIZE,
                true,
                Palette.TEXT);
        double low = low(rows);
        double height = row(data);
        double bottom = top + 26 + rows.size() * height;
        ticks(pen, low, top + 26, bottom);
        double y = top + 26 + height / 2;
        for (SummaryData.Share row : rows) {
            share(pen, row, y, low);
            y += height;
        }
        double target = at(data.target(), low);
        pen.line(target, top + 10, target, bottom, Palette.LIMIT, new BasicStroke(4, 0, 0, 10, new float[] {14, 8}, 0));
        pen.text(
                "target " + Notation.GIVEN_SHARE.text(data.target()),
                Math.min(target, RIGHT - 130),
                top,
                Pen.Side.MIDDLE,
                SIZE,
                true,
                Palette.LIMIT);
        return bottom + 44;
    }

    /** The left end of the axis: what is worst, with some room, on a whole number of percent. */
    private double low(List<SummaryData.Share> rows) {
        double least = Stream.concat(
                        rows.stream().map(row -> Math.min(row.mean(), row.low())), Stream.of(data.target()))
                .mapToDouble(share -> share)
                .min()
                .orElseThrow();
        double room = Math.max(0.01, 1.25 * (1 - least));
        double step = step(room);
        return Math.max(0, 1 - Math.ceil(room / step) * step);
    }

    /** The distance of ticks for a range of {@code range}: 1, 2 or 5 times a power of ten, four to eight of them. */
    private static double step(double range) {
        double power = Math.pow(10, Math.floor(Math.log10(range / 4)));
        return DoubleStream.of(1, 2, 5)
                .map(times -> times * power)
                // A whole number of steps that rounding has changed stays one.
                .filter(step -> range / step <= MOST_TICKS + 1e-6)
                .findFirst()
                .orElse(10 * power);
    }

    private static double at(double share, double low) {
        return AXIS_LEFT + (AXIS_RIGHT - AXIS_LEFT) * (share - low) / (1 - low);
    }

    private static void ticks(Pen pen, double low, double top, double bottom) {
        double step = step(1 - low);
        long steps = Math.round((1 - low) / step);
        for (long i = 0; i <= steps; i++) {
            double share = low + i * step;
            double x = at(share, low);
            pen.line(x, top, x, bottom, Palette.GRID, Palette.SOLID);
            String label = Numbers.text(Math.round(1e6 * share) / 1e4, 6) + " %";
            pen.text(label, x, bottom + 32, Pen.Side.MIDDLE, 24, false, Palette.FAINT);
        }
    }

    private static void share(Pen pen, SummaryData.Share row, double y, double low) {
        pen.text(
                pen.cut(row.name(), AXIS_LEFT - LEFT - 24, SIZE, row.today()),
                LEFT,
                y + 10,
                Pen.Side.RIGHT_OF,
                SIZE,
                row.today(),
                Palette.TEXT);
        Color colour = row.today() ? Palette.PROCESS : Palette.LEVEL;
        pen.line(at(row.low(), low), y, at(row.high(), low), y, colour, new BasicStroke(6, 0, 0));
        for (double end : new double[] {row.low(), row.high()}) {
            pen.line(at(end, low), y - 12, at(end, low), y + 12, colour, new BasicStroke(4, 0, 0));
        }
        pen.circle(at(row.mean(), low), y, 12, row.today() ? Palette.PROCESS : Color.WHITE, colour, new BasicStroke(4));
        pen.text(row.text(), RIGHT, y + 10, Pen.Side.LEFT_OF, SIZE, row.today(), Palette.TEXT);
    }

    private void strip(Pen pen, SummaryData.Strip strip, double top) {
        pen.text("Strip that a coil change takes", LEFT, top, Pen.Side.RIGHT_OF, SIZE, true, Palette.TEXT);
        double most = 1.04 * Math.max(strip.usable(), strip.most());
        double wide = (RIGHT - LEFT) / most;
        double y = top + 24;
        pen.box(LEFT, y, strip.usable() * wide, 44, Palette.ENOUGH, Palette.EDGE, Palette.SOLID);
        if (strip.most() > strip.usable()) {
            pen.box(
                    LEFT + strip.usable() * wide,
                    y,
                    (strip.most() - strip.usable()) * wide,
                    44,
                    Palette.RUN_OUT,
                    Palette.LIMIT,
                    Palette.SOLID);
        }
        double give = LEFT + strip.usable() * wide;
        pen.line(give, y - 12, give, y + 56, Palette.LIMIT, new BasicStroke(5, 0, 0));
        marks(pen, strip, wide, y);
        double width = pen.width(strip.usableText(), SIZE, true);
        double from = Math.min(Math.max(give, LEFT + 540), RIGHT - width);
        pen.text(strip.usableText(), from, top, Pen.Side.RIGHT_OF, SIZE, true, Palette.LIMIT);
    }

    /** Lengths to point at, named below; a name that would lie on another moves aside. */
    private static void marks(Pen pen, SummaryData.Strip strip, double wide, double y) {
        double free = LEFT;
        double after = strip.marks().stream()
                .mapToDouble(mark -> pen.width(mark.text(), 25, false) + 26)
                .sum();
        for (SummaryData.Mark mark : strip.marks()) {
            double x = LEFT + mark.metres() * wide;
            Path2D pointer = new Path2D.Double();
            pointer.moveTo(x, y + 46);
            pointer.lineTo(x - 11, y + 66);
            pointer.lineTo(x + 11, y + 66);
            pointer.closePath();
            pen.filled(pointer, Palette.PROCESS, Palette.PROCESS, Palette.THIN);
            double width = pen.width(mark.text(), 25, false);
            // What stands behind it must find room, too.
            double at = Math.min(Math.max(x - width / 2, free), RIGHT + 26 - after);
            after -= width + 26;
            pen.text(mark.text(), at, y + 98, Pen.Side.RIGHT_OF, 25, false, Palette.TEXT);
            free = at + width + 26;
        }
    }
}
