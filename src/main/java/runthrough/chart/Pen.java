package runthrough.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Draws lines, circles, dimensions and text, in px. */
public final class Pen {
    private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);
    private static final double ARROW = 6;

    private final Graphics2D graphics;
    private final ChartFonts fonts;

    public Pen(Graphics2D graphics, ChartFonts fonts) {
        this.graphics = graphics;
        this.fonts = fonts;
    }

    /** Where a text stands to its point. */
    public enum Side {
        LEFT_OF,
        MIDDLE,
        RIGHT_OF
    }

    public void line(double x1, double y1, double x2, double y2, Color colour, BasicStroke stroke) {
        outline(new Line2D.Double(x1, y1, x2, y2), colour, stroke);
    }

    public void circle(double x, double y, double radius, Color fill, Color edge, BasicStroke stroke) {
        filled(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius), fill, edge, stroke);
    }

    public void box(double x, double y, double width, double height, Color fill, Color edge, BasicStroke stroke) {
        filled(new Rectangle2D.Double(x, y, width, height), fill, edge, stroke);
    }

    public void filled(Shape shape, Color fill, Color edge, BasicStroke stroke) {
        graphics.setPaint(fill);
        graphics.fill(shape);
        outline(shape, edge, stroke);
    }

    public void outline(Shape shape, Color colour, BasicStroke stroke) {
        graphics.setPaint(colour);
        graphics.setStroke(stroke);
        graphics.draw(shape);
    }

    /** A dimension line with an arrow at either end. */
    public void dimension(double x1, double y1, double x2, double y2) {
        line(x1, y1, x2, y2, Palette.FAINT, Palette.THIN);
        double angle = Math.atan2(y2 - y1, x2 - x1);
        tip(x1, y1, angle);
        tip(x2, y2, angle + Math.PI);
    }

    private void tip(double x, double y, double angle) {
        Path2D tip = new Path2D.Double();
        tip.moveTo(x, y);
        for (double side : new double[] {0.35, -0.35}) {
            tip.lineTo(x + ARROW * Math.cos(angle + side), y + ARROW * Math.sin(angle + side));
        }
        tip.closePath();
        graphics.setPaint(Palette.FAINT);
        graphics.fill(tip);
    }

    public void text(String text, double x, double y, Side side, float size, boolean bold, Color colour) {
        Font font = font(size, bold);
        double shift =
                side == Side.RIGHT_OF ? 0 : side == Side.MIDDLE ? width(text, size, bold) / 2 : width(text, size, bold);
        graphics.setFont(font);
        graphics.setPaint(colour);
        graphics.drawString(text, (float) (x - shift), (float) y);
    }

    /** Width of {@code text} (px). */
    public double width(String text, float size, boolean bold) {
        return font(size, bold).getStringBounds(text, MEASURE).getWidth();
    }

    /** {@code text} in lines of at most {@code width} px, broken between words. */
    public List<String> wrapped(String text, double width, float size, boolean bold) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, size, bold) > width) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    /** {@code text}, cut to {@code width} px. */
    public String cut(String text, double width, float size, boolean bold) {
        if (width(text, size, bold) <= width) {
            return text;
        }
        int end = text.codePointCount(0, text.length());
        while (end > 1 && width(beginning(text, end) + "...", size, bold) > width) {
            end--;
        }
        return beginning(text, end) + "...";
    }

    private static String beginning(String text, int codePoints) {
        return text.substring(0, text.offsetByCodePoints(0, codePoints));
    }

    private Font font(float size, boolean bold) {
        return bold ? fonts.bold(size) : fonts.regular(size);
    }
}
