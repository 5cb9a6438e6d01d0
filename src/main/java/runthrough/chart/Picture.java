package runthrough.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import org.jfree.chart.JFreeChart;

/** A drawing of fixed size. */
public final class Picture {
    private final JFreeChart chart;
    private final int width;
    private final int height;

    Picture(JFreeChart chart, int width, int height) {
        this.chart = chart;
        this.width = width;
        this.height = height;
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
        graphics.setPaint(Color.WHITE);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.scale(scale, scale);
        draw(graphics);
        graphics.dispose();
        return image;
    }

    void draw(Graphics2D graphics) {
        chart.draw(graphics, new Rectangle2D.Double(0, 0, width, height));
    }

    JFreeChart chart() {
        return chart;
    }
}
