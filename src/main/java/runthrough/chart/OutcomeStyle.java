package runthrough.chart;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import runthrough.simulation.records.Outcome;

/** How what came of a coil change is shown: the graver the darker, and each with a shape of its own. */
public enum OutcomeStyle {
    RAN_THROUGH("ran through", Palette.ENOUGH),
    SLOWED("slowed", Palette.SLOWED),
    STOPPED("stopped", Palette.SHORT);

    private final String label;
    private final Color colour;

    OutcomeStyle(String label, Color colour) {
        this.label = label;
        this.colour = colour;
    }

    public static OutcomeStyle of(Outcome outcome) {
        return valueOf(outcome.name());
    }

    public String label() {
        return label;
    }

    public Color colour() {
        return colour;
    }

    public Shape shape() {
        return switch (this) {
            case RAN_THROUGH -> new Ellipse2D.Double(-3.2, -3.2, 6.4, 6.4);
            case SLOWED -> polygon(0, -5, 5, 0, 0, 5, -5, 0);
            case STOPPED -> polygon(-5, 4.4, 0, -5, 5, 4.4);
        };
    }

    private static Shape polygon(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        path.closePath();
        return path;
    }
}
