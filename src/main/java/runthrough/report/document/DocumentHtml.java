package runthrough.report.document;

import java.util.Map;
import runthrough.report.write.Templates;

/** The document as HTML: the one template, for a screen or as what its pages are made from. */
final class DocumentHtml {
    private DocumentHtml() {}

    /** The whole file, well-formed XML; for a screen it needs nothing from elsewhere. */
    static String render(Document document, Edition edition) {
        return legible(Templates.render("document", Map.of("page", document, "edition", edition)));
    }

    /** What XML cannot hold, such as control characters in a title, becomes the sign for what cannot be shown. */
    private static String legible(String text) {
        StringBuilder legible = new StringBuilder(text.length());
        text.codePoints().map(c -> isXml(c) ? c : 0xFFFD).forEach(legible::appendCodePoint);
        return legible.toString();
    }

    /** The characters that XML 1.0 allows (W3C Recommendation, 5th edition, 2008, section 2.2). */
    private static boolean isXml(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || (c >= ' ' && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || c >= 0x10000;
    }
}
