package runthrough.chart.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.chart.Palette;
import runthrough.handcalc.Limit;
import runthrough.study.map.Field;
import runthrough.study.map.Field.Position;
import runthrough.study.map.Field.Segment;
import runthrough.study.map.MapAxis;
import runthrough.study.map.MapPoint;
import runthrough.study.map.ShareMap;

/**
 * Share run through over two numbers of the line, in bands; over it the contour of the target, the limit of the hand
 * calculation, and the line as it is. All areas are outlines of a few hundred corners each, so that a map of ten thousand points stays a small picture.
 */
public final class MapChart {
    private static final int HEIGHT = 660;
    private static final Color NOT_POSSIBLE = new Color(0xE4E6E9);
    private static final Color HATCH = new Color(0xA9AFB6);
    private static final Color HATCH_OF_MET = new Color(0x8FB6D3);

    private static final BasicStroke TARGET = new BasicStroke(3f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    private static final BasicStroke HALO = new BasicStroke(4.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    private static final BasicStroke HAND_CALCULATION = dashed(10, 5);
    private static final Map<Limit, BasicStroke> STROKES = Map.of(
            Limit.CAPACITY, HAND_CALCULATION, Limit.REFILL, dashed(3, 3), Limit.PREPARATION, dashed(10, 4, 2, 4));
    private static final Map<Limit, String> NAMES = Map.of(
            Limit.CAPACITY, "hand calculation: capacity",
            Limit.REFILL, "hand calculation: refill",
            Limit.PREPARATION, "hand calculation: preparation");

    private final ChartContext context;
    private final ShareMap map;
    private final MapAxis x;
    private final MapAxis y;
    private final LegendItemCollection legend = new LegendItemCollection();
    private final XYPlot plot;

    private MapChart(ChartContext context, ShareMap map) {
        this.context = context;
        this.map = map;
        this.x = map.plan().x();
        this.y = map.plan().y();
        this.plot = context.style().plot(axis(x), axis(y));
    }

    /** Share run through over two numbers. */
    public static Chart of(ShareMap map) {
        return new MapChart(ChartContext.of(map.request()), map).chart();
    }

    private static BasicStroke dashed(float... pattern) {
        return new BasicStroke(2.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, pattern, 0);
    }

    private NumberAxis axis(MapAxis side) {
        NumberAxis axis = context.style().axis(label(side));
        axis.setRange(side.shown(side.from()), side.shown(side.to()));
        return axis;
    }

    private static String label(MapAxis side) {
        return side.name().contains(".") ? side.label() : side.label().replace('-', ' ');
    }

    private Chart chart() {
        String title = "Where the line runs through, over " + name(x) + " and " + name(y);
        notPossible();
        bands();
        closedForm();
        target();
        own();
        String reading = reading();
        return new Chart(
                "map",
                title,
                reading,
                "A map with " + label(x) + " from left to right and " + label(y)
                        + " from bottom to top, in bands of the share"
                        + " of coil changes run through, the darker the worse, with the contour of the target, the limit of"
                        + " the hand calculation as a broken line and the line as it is as a point. " + reading,
                context.style().picture(title, plot, legend, HEIGHT));
    }

    private static String name(MapAxis side) {
        return side.name().contains(".") ? side.name() : side.name().replace('-', ' ');
    }

    /** Each band is painted over those below it, so that there are no seams between them. */
    private void bands() {
        List<LegendItem> items = new ArrayList<>();
        for (ShareBands.Band band : ShareBands.of(map.target())) {
            Shape area = area(map.shares(), band.from());
            plot.addAnnotation(ShapeAnnotation.area(area, band.colour()));
            items.add(0, ChartStyle.box(band.name(), band.colour()));
        }
        items.forEach(legend::add);
        hatchMet();
    }

    /** Lines falling to the right, so that where the target is met differs in a grey print from where it nearly is. */
    private void hatchMet() {
        hatch(area(map.shares(), map.target()), false, HATCH_OF_MET);
    }

    /** Grey, and hatched so that no print takes it for a share. */
    private void notPossible() {
        if (map.shares().shareKnown() >= 1) {
            return;
        }
        plot.setBackgroundPaint(NOT_POSSIBLE);
        hatch(unknown(), true, HATCH);
        legend.add(ChartStyle.box("not possible", NOT_POSSIBLE));
    }

    private Shape unknown() {
        Path2D area = new Path2D.Double(Path2D.WIND_NON_ZERO);
        for (int row = 0; row < map.shares().rows() - 1; row++) {
            for (int column = 0; column < map.shares().columns() - 1; column++) {
                if (map.shares().part(column, row, Double.NEGATIVE_INFINITY).isEmpty()) {
                    whole(area, column, column + 1, row);
                }
            }
        }
        return area;
    }

    private void hatch(Shape area, boolean rises, Color colour) {
        Path2D lines = Hatching.of(
                area, plot.getDomainAxis().getRange(), plot.getRangeAxis().getRange(), rises);
        plot.addAnnotation(ShapeAnnotation.line(lines, Palette.THIN, colour));
    }

    /** All squares where {@code field} is at least {@code level}; whole ones that stand side by side as one. */
    private Shape area(Field field, double level) {
        Path2D area = new Path2D.Double(Path2D.WIND_NON_ZERO);
        for (int row = 0; row < field.rows() - 1; row++) {
            int start = 0;
            for (int column = 0; column < field.columns() - 1; column++) {
                List<Position> part = field.part(column, row, level);
                boolean isWhole = part.size() == 4 && isWhole(field, column, row, level);
                if (!isWhole) {
                    whole(area, start, column, row);
                    start = column + 1;
                    outline(area, part);
                }
            }
            whole(area, start, field.columns() - 1, row);
        }
        return area;
    }

    private static boolean isWhole(Field field, int column, int row, double level) {
        return field.at(column, row) >= level
                && field.at(column + 1, row) >= level
                && field.at(column, row + 1) >= level
                && field.at(column + 1, row + 1) >= level;
    }

    private void whole(Path2D area, int from, int to, int row) {
        if (to > from) {
            outline(
                    area,
                    List.of(
                            new Position(from, row),
                            new Position(to, row),
                            new Position(to, row + 1),
                            new Position(from, row + 1)));
        }
    }

    private void outline(Path2D area, List<Position> corners) {
        if (!corners.isEmpty()) {
            line(area, corners);
            area.closePath();
        }
    }

    private void line(Path2D path, List<Position> positions) {
        boolean isFirst = true;
        for (Position position : positions) {
            double across = shown(x, position.x());
            double up = shown(y, position.y());
            if (isFirst) {
                path.moveTo(across, up);
            } else {
                path.lineTo(across, up);
            }
            isFirst = false;
        }
    }

    private static double shown(MapAxis side, double position) {
        return side.shown(side.from() + position * (side.to() - side.from()) / (side.points() - 1));
    }

    private void target() {
        List<Segment> contour = map.shares().contour(map.target());
        if (!contour.isEmpty()) {
            draw(contour, TARGET, Palette.PROCESS);
            legend.add(ChartStyle.line("target of " + ChartUnits.target(map.target()), Palette.PROCESS, TARGET));
        }
    }

    /** Where the closed forms leave no margin, by limiting factor. */
    private void closedForm() {
        Map<Long, MapPoint> points = new HashMap<>();
        map.points().forEach(point -> points.put(key(point.column(), point.row()), point));
        Map<Limit, List<Segment>> contours = new EnumMap<>(Limit.class);
        for (Segment piece : map.closedForm().contour(0)) {
            contours.computeIfAbsent(limitingFactor(piece, points), any -> new ArrayList<>())
                    .add(piece);
        }
        contours.forEach((limit, pieces) -> {
            draw(pieces, STROKES.getOrDefault(limit, HAND_CALCULATION), Palette.LEVEL);
            legend.add(ChartStyle.line(
                    NAMES.getOrDefault(limit, ""), Palette.LEVEL, STROKES.getOrDefault(limit, HAND_CALCULATION)));
        });
    }

    /** The limiting factor at the point nearest to the piece in its margin. */
    private static Limit limitingFactor(Segment piece, Map<Long, MapPoint> points) {
        int column = (int) Math.floor((piece.from().x() + piece.to().x()) / 2);
        int row = (int) Math.floor((piece.from().y() + piece.to().y()) / 2);
        return Stream.of(key(column, row), key(column + 1, row), key(column, row + 1), key(column + 1, row + 1))
                .flatMap(key -> Optional.ofNullable(points.get(key)).stream())
                .flatMap(point -> point.measured().stream())
                .min(Comparator.comparingDouble(
                        found -> Math.abs(found.closedForm().least())))
                .map(found -> found.closedForm().limitingFactor())
                .orElse(Limit.CAPACITY);
    }

    private static long key(int column, int row) {
        return ((long) row << Integer.SIZE) + column;
    }

    /** Over a white line, so that it is seen on dark and on light. */
    private void draw(List<Segment> contour, BasicStroke stroke, Color colour) {
        Path2D path = new Path2D.Double();
        Chains.of(contour).forEach(line -> line(path, line));
        plot.addAnnotation(ShapeAnnotation.line(path, HALO, Color.WHITE));
        plot.addAnnotation(ShapeAnnotation.line(path, stroke, colour));
    }

    private void own() {
        map.own().ifPresent(own -> {
            plot.addAnnotation(new PointAnnotation(shown(x, own.x()), shown(y, own.y())));
            legend.add(PointAnnotation.legend("the line as it is"));
        });
    }

    private String reading() {
        ShareMap.Parts parts = map.parts();
        String where = map.own().isPresent()
                ? "the line as it is lies at " + x.text(map.plan().ownX().orElseThrow()) + " and "
                        + y.text(map.plan().ownY().orElseThrow()) + ", with "
                        + context.units().share(map.present().share().mean()) + " run through"
                : "the line as it is lies beside the map";
        return "The target of " + ChartUnits.target(map.target()) + " is met on "
                + context.units().share(parts.meets()) + " of the map, and the hand calculation finds enough on "
                + context.units().share(parts.enoughByClosedForms()) + "; " + where + ".";
    }
}
