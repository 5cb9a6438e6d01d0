package runthrough.chart.map;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import runthrough.chart.ChartUnits;

/**
 * Bands of shares run through, each with a colour: a pale blue where the target is met, and below it from pale yellow to dark
 * brown, the darker the worse. Lightness falls from band to band, so that they keep their order in a grey print and to every
 * eye.
 */
final class ShareBands {
    private static final Color MET = new Color(0xD5E8F5);

    /** From just below the target downwards. */
    private static final List<Color> MISSED = List.of(
            new Color(0xF8E3A8),
            new Color(0xF2C66B),
            new Color(0xDF9A3A),
            new Color(0xBD6A1E),
            new Color(0x8A3F12),
            new Color(0x55220C));

    private static final double[] STEPS = {0.99, 0.95, 0.9, 0.75, 0.5};

    private ShareBands() {}

    /**
     * A band.
     *
     * @param from least share in it
     * @param name in the legend
     */
    record Band(double from, Color colour, String name) {}

    /** The bands for {@code target}, in (0, 1), the worst first. */
    static List<Band> of(double target) {
        double[] below = DoubleStream.concat(DoubleStream.of(STEPS).filter(step -> step < target), DoubleStream.of(0))
                .toArray();
        List<Band> bands = new ArrayList<>();
        bands.add(new Band(target, MET, "target met: " + text(target) + " or more (hatched)"));
        double above = target;
        for (int i = 0; i < below.length; i++) {
            String name = below[i] == 0 ? "below " + text(above) : text(below[i]) + " to " + text(above);
            bands.add(0, new Band(below[i], MISSED.get(colour(i, below.length)), name));
            above = below[i];
        }
        return bands;
    }

    /** The whole range of colours, however few bands there are. */
    private static int colour(int index, int count) {
        return count == 1 ? MISSED.size() / 2 : index * (MISSED.size() - 1) / (count - 1);
    }

    private static String text(double share) {
        return ChartUnits.target(share);
    }
}
