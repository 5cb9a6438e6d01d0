package runthrough.report.document;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;

/** Where a line of a page may end: between words, but not before the slash of a unit, as the PDF library would by itself. */
final class WordBreaks implements FSTextBreaker {
    private final BreakIterator breaks = BreakIterator.getLineInstance(Locale.ROOT);

    @Override
    public int next() {
        return breaks.next();
    }

    @Override
    public void setText(String text) {
        breaks.setText(text);
    }
}
