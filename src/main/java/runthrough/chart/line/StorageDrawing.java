package runthrough.chart.line;

import java.util.Optional;
import runthrough.chart.Pen;
import runthrough.plant.StorageForm;
import runthrough.quantity.Units;

/** An accumulator in its form, drawn full, and dashed where it is when empty. */
sealed interface StorageDrawing permits CarriageDrawing, LoopsDrawing, PlainDrawing, SpiralDrawing, TowerDrawing {
    /** Width of what is to scale (m), {@code >= 0}. */
    double width();

    /** Height of what is to scale (m), {@code > 0}. */
    double height();

    /** What of it is to scale, in words. */
    Optional<String> scaled();

    /** How far it reaches above the strip's path (px). */
    double above(double scale);

    /** How far it reaches below the strip's path (px), with its dimensions. */
    double below(double scale);

    /**
     * Draws it from {@code x} on, the strip coming and going at {@code pass} (px).
     *
     * @param scale px for a metre
     * @return where the strip leaves (px)
     */
    double draw(Pen pen, double x, double pass, double scale, Units units);

    static StorageDrawing of(StorageForm form) {
        if (form instanceof StorageForm.Strands strands) {
            return strands.vertical() ? new TowerDrawing(strands) : new CarriageDrawing(strands);
        } else if (form instanceof StorageForm.FreeLoop loop) {
            return new LoopsDrawing(loop);
        } else if (form instanceof StorageForm.Spiral spiral) {
            return new SpiralDrawing(spiral);
        }
        return new PlainDrawing(form.capacity());
    }
}
