package runthrough.chart.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;

/**
 * A shape in the units of the axes, filled or drawn. Its scale is that of the axes: the library takes it from the extent of the shape,
 * and a line that is straight along an axis has none.
 */
final class ShapeAnnotation extends AbstractXYAnnotation {
    private static final long serialVersionUID = 1L;

    private final transient Shape shape;
    private final transient Optional<BasicStroke> stroke;
    private final Color colour;

    private ShapeAnnotation(Shape shape, Optional<BasicStroke> stroke, Color colour) {
        this.shape = shape;
        this.stroke = stroke;
        this.colour = colour;
    }

    /** A line along {@code shape}. */
    static ShapeAnnotation line(Shape shape, BasicStroke stroke, Color colour) {
        return new ShapeAnnotation(shape, Optional.of(stroke), colour);
    }

    /** The inside of {@code shape}. */
    static ShapeAnnotation area(Shape shape, Color colour) {
        return new ShapeAnnotation(shape, Optional.empty(), colour);
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
        double left = domain.valueToJava2D(domain.getLowerBound(), area, plot.getDomainAxisEdge());
        double right = domain.valueToJava2D(domain.getUpperBound(), area, plot.getDomainAxisEdge());
        double bottom = range.valueToJava2D(range.getLowerBound(), area, plot.getRangeAxisEdge());
        double top = range.valueToJava2D(range.getUpperBound(), area, plot.getRangeAxisEdge());
        double across = (right - left) / domain.getRange().getLength();
        double up = (top - bottom) / range.getRange().getLength();
        Shape placed = new AffineTransform(
                        across, 0, 0, up, left - across * domain.getLowerBound(), bottom - up * range.getLowerBound())
                .createTransformedShape(shape);
        graphics.setPaint(colour);
        if (stroke.isPresent()) {
            graphics.setStroke(stroke.get());
            graphics.draw(placed);
        } else {
            graphics.fill(placed);
        }
    }
}
