package runthrough.chart.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.LegendItem;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import runthrough.chart.Palette;

/** A mark that keeps its size whatever the axes, and stands on top of all that was drawn before it. */
final class PointAnnotation extends AbstractXYAnnotation {
    private static final long serialVersionUID = 1L;
    private static final BasicStroke EDGE = new BasicStroke(2.4f);
    private static final Shape RING = new Ellipse2D.Double(-7, -7, 14, 14);

    private final double x;
    private final double y;

    /** A mark at {@code x} and {@code y} on the axes. */
    PointAnnotation(double x, double y) {
        this.x = x;
        this.y = y;
    }

    static LegendItem legend(String name) {
        return new LegendItem(name, null, null, null, RING, Color.WHITE, EDGE, Palette.PROCESS);
    }

    @Override
    public void draw(
            Graphics2D graphics,
            XYPlot plot,
            Rectangle2D area,
            ValueAxis domain,
            ValueAxis range,
            int index,
            PlotRenderingInfo info) {
        double across = domain.valueToJava2D(x, area, plot.getDomainAxisEdge());
        double up = range.valueToJava2D(y, area, plot.getRangeAxisEdge());
        Shape mark = AffineTransform.getTranslateInstance(across, up).createTransformedShape(RING);
        graphics.setPaint(Color.WHITE);
        graphics.fill(mark);
        graphics.setPaint(Palette.PROCESS);
        graphics.setStroke(EDGE);
        graphics.draw(mark);
    }
}
