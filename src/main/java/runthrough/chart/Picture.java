package runthrough.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import org.jfree.chart.JFreeChart;

/** A drawing of fixed size. The same strokes make the picture of a page on the screen, of a printed page and of a slide. */
public final class Picture {
    private final Drawing drawing;
    private final int width;
    private final int height;

    /** A drawing of {@code width} by {@code height} (px). */
    public Picture(Drawing drawing, int width, int height) {
        this.drawing = drawing;
        this.width = width;
        this.height = height;
    }

    /** A chart, fitted into {@code width} by {@code height} (px). */
    public Picture(JFreeChart chart, int width, int height) {
        this(new OfChart(chart, width, height), width, height);
    }

    /** What puts the strokes down. */
    public interface Drawing {
        /** Draws from the origin on, in px at scale 1. */
        void draw(Graphics2D graphics);
    }

    private record OfChart(JFreeChart chart, int width, int height) implements Drawing {
        @Override
        public void draw(Graphics2D graphics) {
            // It changes as it is drawn, and pages for a screen are made beside those for paper.
            synchronized (chart) {
                chart.draw(graphics, new Rectangle2D.Double(0, 0, width, height));
            }
        }
    }

    /** Width (px at scale 1), a whole number. */
    public int width() {
        return width;
    }

    /** Height (px at scale 1), a whole number. */
    public int height() {
        return height;
    }

    /** The drawing as pixels, {@code scale} times its size; {@code scale > 0}. */
    public BufferedImage pixels(double scale) {
        BufferedImage image = new BufferedImage(
                (int) Math.round(width * scale), (int) Math.round(height * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setPaint(Color.WHITE);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.scale(scale, scale);
        draw(graphics);
        graphics.dispose();
        return image;
    }

    /** Draws it from the origin on, in px at scale 1. */
    public void draw(Graphics2D graphics) {
        drawing.draw(graphics);
    }

    /** The chart that it is a picture of; only for those that are. */
    public JFreeChart chart() {
        return ((OfChart) drawing).chart();
    }
}
