package runthrough.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import runthrough.plant.Catenary;
import runthrough.plant.StorageForm;
import runthrough.quantity.Kind;
import runthrough.quantity.Units;

/** An accumulator in its form, drawn full, and dashed where it is when empty. */
interface StorageDrawing {
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
            return strands.vertical() ? new Tower(strands) : new Carriage(strands);
        } else if (form instanceof StorageForm.FreeLoop loop) {
            return new Loops(loop);
        } else if (form instanceof StorageForm.Spiral spiral) {
            return new Wraps(spiral);
        }
        return new Plain(form.capacity());
    }

    /** Strands with a carriage that moves along the line. */
    record Carriage(StorageForm.Strands form) implements StorageDrawing {
        private static final double NEAR = 26;

        @Override
        public double width() {
            return form.stroke();
        }

        @Override
        public double height() {
            return 0.1;
        }

        @Override
        public double above(double scale) {
            return 66;
        }

        @Override
        public double below(double scale) {
            return 66 + 50;
        }

        @Override
        public Optional<String> scaled() {
            return Optional.of("stroke");
        }

        @Override
        public double draw(Pen pen, double x, double pass, double scale, Units units) {
            double between = Math.min(14, 110.0 / form.strands());
            double empty = x + NEAR;
            double full = empty + form.stroke() * scale;
            double half = between * form.strands() / 2;
            for (int i = 0; i <= form.strands(); i++) {
                double y = pass - half + i * between;
                pen.line(x, y, full, y, Palette.LEVEL, Palette.THIN);
                pen.circle(
                        i % 2 == 0 ? full : x,
                        y + between / 2,
                        between / 2,
                        Color.WHITE,
                        Palette.PROCESS,
                        Palette.HAIR);
            }
            pen.box(
                    full - 5,
                    pass - half - 6,
                    10,
                    2 * half + between + 12,
                    Palette.CHANGE,
                    Palette.PROCESS,
                    Palette.THIN);
            pen.outline(
                    new Rectangle2D.Double(empty - 5, pass - half - 6, 10, 2 * half + between + 12),
                    Palette.FAINT,
                    Palette.DASHES);
            double y = pass + half + between + 24;
            pen.dimension(empty, y, full, y);
            pen.text(
                    form.strands() + " strands, stroke " + units.text(Kind.LENGTH, form.stroke()),
                    (empty + full) / 2,
                    y + 16,
                    Pen.Side.MIDDLE,
                    12.5f,
                    false,
                    Palette.TEXT);
            return full + 14;
        }
    }

    /** Strands with a carriage that moves up and down. */
    record Tower(StorageForm.Strands form) implements StorageDrawing {
        private static final double WIDE = 190;
        private static final double NEAR = 24;

        @Override
        public double width() {
            return 0;
        }

        @Override
        public double height() {
            return 1.5 * form.stroke();
        }

        @Override
        public double above(double scale) {
            return NEAR + form.stroke() * scale + 4;
        }

        @Override
        public double below(double scale) {
            return 44;
        }

        @Override
        public Optional<String> scaled() {
            return Optional.of("stroke");
        }

        @Override
        public double draw(Pen pen, double x, double pass, double scale, Units units) {
            double between = Math.min(16, WIDE / form.strands());
            double wide = between * form.strands();
            double low = pass + 4;
            double empty = low - NEAR;
            double full = empty - form.stroke() * scale;
            for (int i = 0; i <= form.strands(); i++) {
                double at = x + i * between;
                pen.line(at, low, at, full, Palette.LEVEL, Palette.THIN);
                if (i < form.strands()) {
                    pen.circle(
                            at + between / 2,
                            i % 2 == 0 ? full : low,
                            between / 2,
                            Color.WHITE,
                            Palette.PROCESS,
                            Palette.HAIR);
                }
            }
            pen.box(x - 6, full - 5, wide + 12, 10, Palette.CHANGE, Palette.PROCESS, Palette.THIN);
            pen.outline(new Rectangle2D.Double(x - 6, empty - 5, wide + 12, 10), Palette.FAINT, Palette.DASHES);
            double at = x + wide + 18;
            pen.dimension(at, empty, at, full);
            pen.text(
                    units.text(Kind.LENGTH, form.stroke()),
                    at + 8,
                    (empty + full) / 2,
                    Pen.Side.RIGHT_OF,
                    12.5f,
                    false,
                    Palette.TEXT);
            pen.text(form.strands() + " strands", x + wide / 2, low + 34, Pen.Side.MIDDLE, 12.5f, false, Palette.TEXT);
            pen.line(x + wide, pass, at + 60, pass, Palette.LEVEL, Palette.BOLD);
            return at + 60;
        }
    }

    /** Loops that hang in a pit. */
    record Loops(StorageForm.FreeLoop form) implements StorageDrawing {
        private static final int POINTS = 40;

        @Override
        public double width() {
            return form.loops() * form.span();
        }

        @Override
        public double height() {
            return 1.4 * form.greatestSag();
        }

        @Override
        public double above(double scale) {
            return 8;
        }

        @Override
        public double below(double scale) {
            return form.greatestSag() * scale + 40;
        }

        @Override
        public Optional<String> scaled() {
            return Optional.of("span and sag");
        }

        @Override
        public double draw(Pen pen, double x, double pass, double scale, Units units) {
            double span = form.span() * scale;
            for (int i = 0; i < form.loops(); i++) {
                double from = x + i * span;
                pen.outline(loop(from, pass, span, form.greatestSag() * scale), Palette.LEVEL, Palette.BOLD);
                pen.outline(loop(from, pass, span, form.leastSag() * scale), Palette.FAINT, Palette.DASHES);
                pen.circle(from, pass + 5, 5, Color.WHITE, Palette.PROCESS, Palette.THIN);
                pen.circle(from + span, pass + 5, 5, Color.WHITE, Palette.PROCESS, Palette.THIN);
            }
            double end = x + form.loops() * span;
            double deep = pass + form.greatestSag() * scale;
            double middle = x + span / 2;
            pen.dimension(middle, pass, middle, deep);
            pen.text(
                    "sag " + units.text(Kind.LENGTH, form.greatestSag()),
                    middle + 7,
                    deep - 10,
                    Pen.Side.RIGHT_OF,
                    12.5f,
                    false,
                    Palette.TEXT);
            pen.dimension(x, deep + 16, x + span, deep + 16);
            pen.text(
                    "span " + units.text(Kind.LENGTH, form.span()),
                    middle,
                    deep + 32,
                    Pen.Side.MIDDLE,
                    12.5f,
                    false,
                    Palette.TEXT);
            return end;
        }

        /** A catenary, all of its lengths in px; its form does not depend on the unit. */
        private static Path2D loop(double x, double y, double span, double sag) {
            double arc = Catenary.arc(span, sag);
            // From arc and sag: a = (arc^2/4 - sag^2) / (2 sag).
            double a = sag == 0 ? Double.POSITIVE_INFINITY : (arc * arc / 4 - sag * sag) / (2 * sag);
            Path2D path = new Path2D.Double();
            for (int i = 0; i <= POINTS; i++) {
                double along = span * i / POINTS;
                double u = along - span / 2;
                double down = Double.isInfinite(a) ? 0 : sag - a * (Math.cosh(u / a) - 1);
                if (i == 0) {
                    path.moveTo(x + along, y + down);
                } else {
                    path.lineTo(x + along, y + down);
                }
            }
            return path;
        }
    }

    /** Wraps of a floor spiral, from above. */
    record Wraps(StorageForm.Spiral form) implements StorageDrawing {
        @Override
        public double width() {
            return form.fullDiameter();
        }

        @Override
        public double height() {
            return 1.15 * form.fullDiameter();
        }

        @Override
        public double above(double scale) {
            return form.fullDiameter() * scale / 2;
        }

        @Override
        public double below(double scale) {
            return form.fullDiameter() * scale / 2 + 36;
        }

        @Override
        public Optional<String> scaled() {
            return Optional.of("wraps, seen from above");
        }

        @Override
        public double draw(Pen pen, double x, double pass, double scale, Units units) {
            double full = form.fullDiameter() * scale / 2;
            double empty = form.emptyDiameter() * scale / 2;
            double middle = x + full;
            BasicStroke hair = Palette.THIN;
            pen.circle(middle, pass, full, Color.WHITE, Palette.LEVEL, Palette.BOLD);
            pen.circle(middle, pass, (2 * full + empty) / 3, Color.WHITE, Palette.LEVEL, hair);
            pen.circle(middle, pass, (full + 2 * empty) / 3, Color.WHITE, Palette.LEVEL, hair);
            pen.circle(middle, pass, empty, Color.WHITE, Palette.FAINT, Palette.DASHES);
            double y = pass + full + 14;
            pen.dimension(x, y, x + 2 * full, y);
            pen.text(
                    units.text(Kind.DIAMETER, form.fullDiameter()),
                    middle,
                    y + 16,
                    Pen.Side.MIDDLE,
                    12.5f,
                    false,
                    Palette.TEXT);
            pen.text(
                    units.text(Kind.DIAMETER, form.emptyDiameter()),
                    middle,
                    pass - 4,
                    Pen.Side.MIDDLE,
                    12.5f,
                    false,
                    Palette.TEXT);
            pen.dimension(middle - empty, pass + 4, middle + empty, pass + 4);
            return x + 2 * full;
        }
    }

    /** Capacity alone was given. */
    record Plain(double capacity) implements StorageDrawing {
        private static final double WIDE = 150;

        @Override
        public double width() {
            return 0;
        }

        @Override
        public double height() {
            return 0.1;
        }

        @Override
        public double above(double scale) {
            return 60;
        }

        @Override
        public double below(double scale) {
            return 88;
        }

        @Override
        public Optional<String> scaled() {
            return Optional.empty();
        }

        @Override
        public double draw(Pen pen, double x, double pass, double scale, Units units) {
            pen.box(x, pass - 60, WIDE, 120, Color.WHITE, Palette.PROCESS, Palette.DASHES);
            Path2D wave = new Path2D.Double();
            wave.moveTo(x, pass);
            for (int i = 0; i < 6; i++) {
                double at = x + i * WIDE / 6;
                double bend = i % 2 == 0 ? -70 : 70;
                wave.curveTo(at + WIDE / 18, pass + bend, at + WIDE / 9, pass + bend, at + WIDE / 6, pass);
            }
            pen.outline(wave, Palette.LEVEL, Palette.SOLID);
            pen.text(
                    "holds " + units.text(Kind.LENGTH, capacity),
                    x + WIDE / 2,
                    pass + 80,
                    Pen.Side.MIDDLE,
                    12.5f,
                    false,
                    Palette.TEXT);
            return x + WIDE;
        }
    }
}
