package runthrough.report.document;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;

/**
 * Where a line of a page may end: between words, but not before the slash of a unit, as the PDF library would by itself, nor within a time
 * such as 3:13.
 */
final class WordBreaks implements FSTextBreaker {
    private final BreakIterator breaks = BreakIterator.getLineInstance(Locale.ROOT);
    private String text = "";

    @Override
    public int next() {
        int next = breaks.next();
        while (isWithinTime(next)) {
            next = breaks.next();
        }
        return next;
    }

    private boolean isWithinTime(int at) {
        return at > 1
                && at < text.length()
                && text.charAt(at - 1) == ':'
                && Character.isDigit(text.charAt(at - 2))
                && Character.isDigit(text.charAt(at));
    }

    @Override
    public void setText(String given) {
        text = given;
        breaks.setText(given);
    }
}
