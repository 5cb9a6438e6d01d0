package runthrough.chart;

/**
 * A finished chart: the picture, and in words what it shows.
 *
 * @param id unique among the charts of a report; letters, digits and hyphens, used as prefix of identifiers in the picture
 * @param title as drawn above the picture
 * @param reading one sentence that says what the chart shows, with numbers from the same data
 * @param alternative what a reader who cannot see the picture should know of it
 * @param picture the picture itself
 */
public record Chart(String id, String title, String reading, String alternative, Picture picture) {

    public Chart {
        if (!id.matches("[a-z][a-z0-9-]*")) {
            throw new IllegalArgumentException("chart id = " + id + "; must be lower-case letters, digits, hyphens");
        }
    }

    /** The picture as an SVG element to stand in a document or alone in a file; the same bytes each time. */
    public String svg() {
        return SvgWriter.svg(this);
    }
}
