/**
 * Charts of a study: drawn with JFreeChart, written as SVG, each with a sentence that says what it shows.
 *
 * <p>Main types: {@link runthrough.chart.verdict.Charts} (all charts of a study), {@link runthrough.chart.Chart} (picture, reading,
 * alternative text), {@link runthrough.chart.ChartFonts} (the one font).
 *
 * <p>Units: SI in, the user's units on axes and in readings.
 *
 * <p>What every chart keeps:
 *
 * <ul>
 *   <li>Its data are the trace and the records themselves; a parabola is sampled until the eye cannot tell, a jump is
 *       vertical, and thinning never loses a peak. A reading is computed from the same data.
 *   <li>The legend stands below the data. Nothing is shown by colour alone: lines differ by their dashes, marks by their
 *       shape, bars by how dark they are, so that a grey print and a colour-blind reader see the same.
 *   <li>Colours are opaque and sizes whole numbers with a view box: some renderers of SVG fail on anything else.
 *   <li>The same data give the same bytes. Identifiers count from 1 under the chart's own prefix, numbers do not depend on
 *       the machine's language, and text is measured with the bundled font.
 * </ul>
 *
 * <p>Text stays text, so that it can be searched, read aloud and escaped by the XML writer. It is measured with DejaVu Sans,
 * and a document that shows the charts embeds that font once, so that they look the same on every machine; a chart opened
 * on its own falls back on a similar font. Text as outlines would look the same without a font, at several times the size
 * and readable to eyes only.
 *
 * <p>The embedded parts of the fonts ({@code *.subset.woff2}) hold Latin, Greek, Cyrillic and the signs used here. They were
 * made from the bundled fonts with fontTools: {@code pyftsubset DejaVuSans.ttf
 * --unicodes=U+0020-007E,U+00A0-017F,U+0370-03FF,U+0400-045F,U+2010-2027,U+202F,U+2030,U+2032-2033,U+2070-209C,U+20AC,U+2190-2193,U+2208,U+2212,U+221A,U+221E,U+2248,U+2260,U+2264-2265,U+25A0,U+25B2,U+25BC,U+25C6,U+25CF,U+2713,U+2717,U+26A0
 * --flavor=woff2 --layout-features= --no-hinting}. Any other character is shown in the reader's own font.
 *
 * <p>Colours: M. Okabe and K. Ito, Color Universal Design (2008), darkened where a thin line needs it.
 */
@NullMarked
package runthrough.chart;

import org.jspecify.annotations.NullMarked;
