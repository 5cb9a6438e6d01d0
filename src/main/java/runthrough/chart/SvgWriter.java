package runthrough.chart;

import java.awt.Dimension;
import java.io.StringWriter;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGGraphics2DIOException;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Writes a chart as SVG: text stays text, identifiers carry the chart's id, sizes are whole numbers with a view box. */
public final class SvgWriter {
    private static final String SVG = "http://www.w3.org/2000/svg";
    /** Decimals of a coordinate: a hundredth of a pixel is finer than any print. */
    private static final int DECIMALS = 2;

    /** As Batik writes a letter of two halves, such as an emoji. XML knows no halves. */
    private static final Pattern HALVES = Pattern.compile("&#x(d[89ab]..);&#x(d[c-f]..);");

    private SvgWriter() {}

    public static String svg(Chart chart) {
        Picture picture = chart.picture();
        SVGGraphics2D graphics = new SVGGraphics2D(context(chart.id()), false);
        graphics.setSVGCanvasSize(new Dimension(picture.width(), picture.height()));
        picture.draw(graphics);
        return written(graphics, labelled(graphics.getRoot(), chart), chart.id());
    }

    private static SVGGeneratorContext context(String id) {
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(emptyDocument());
        context.setComment("");
        context.setPrecision(DECIMALS);
        context.setIDGenerator(new NumberedIds(id));
        return context;
    }

    private static Document emptyDocument() {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            return factory.newDocumentBuilder().getDOMImplementation().createDocument(SVG, "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("no XML parser in this Java", e);
        }
    }

    private static Element labelled(Element root, Chart chart) {
        Picture picture = chart.picture();
        root.setAttribute("width", Integer.toString(picture.width()));
        root.setAttribute("height", Integer.toString(picture.height()));
        root.setAttribute("viewBox", "0 0 " + picture.width() + " " + picture.height());
        root.setAttribute("role", "img");
        root.setAttribute("aria-labelledby", chart.id() + "-title " + chart.id() + "-desc");
        Element description = element(root, "desc", chart.id() + "-desc", chart.alternative());
        root.insertBefore(description, root.getFirstChild());
        root.insertBefore(element(root, "title", chart.id() + "-title", chart.title()), description);
        return root;
    }

    private static Element element(Element root, String name, String id, String text) {
        Element element = root.getOwnerDocument().createElementNS(SVG, name);
        element.setAttribute("id", id);
        element.appendChild(root.getOwnerDocument().createTextNode(text));
        return element;
    }

    private static String written(SVGGraphics2D graphics, Element root, String id) {
        StringWriter out = new StringWriter();
        try {
            graphics.stream(root, out, true, true);
        } catch (SVGGraphics2DIOException e) {
            throw new IllegalStateException("a string takes any text", e);
        }
        String text = out.toString();
        return HALVES.matcher(text.substring(text.indexOf("<svg")))
                .replaceAll(SvgWriter::whole)
                .replace("\r\n", "\n")
                .replace("id=\"genericDefs\"", "id=\"" + id + "-shared\"")
                .replace("font-family:'DejaVu Sans'", "font-family:" + ChartFonts.CSS_FAMILY);
    }

    private static String whole(MatchResult halves) {
        return String.format(
                "&#x%x;",
                Character.toCodePoint(
                        (char) Integer.parseInt(halves.group(1), 16), (char) Integer.parseInt(halves.group(2), 16)));
    }

    /** Identifiers that count from 1 for each prefix and begin with the chart's id, so that charts share a document. */
    private static final class NumberedIds extends SVGIDGenerator {
        private final String chart;
        private final Map<String, Integer> counts = new TreeMap<>();

        NumberedIds(String chart) {
            this.chart = chart;
        }

        @Override
        public String generateID(String prefix) {
            return chart + "-" + prefix + counts.merge(prefix, 1, Integer::sum);
        }
    }
}
