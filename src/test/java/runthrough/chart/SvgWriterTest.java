package runthrough.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

class SvgWriterTest {
    /** Java keeps such a letter in two halves; a name may well hold one. */
    @Test
    void aLetterOfTwoHalvesIsWrittenWhole() throws Exception {
        String name = "thread \uD83E\uDDF5 \uD842\uDFB7 & Öl";
        Picture picture = new Picture(graphics -> graphics.drawString(name, 10, 20), 200, 40);

        String svg = SvgWriter.svg(new Chart("letters", name, "", name, picture));

        assertThat(DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new InputSource(new StringReader(svg)))
                        .getDocumentElement()
                        .getElementsByTagName("text")
                        .item(0)
                        .getTextContent()
                        .strip())
                .isEqualTo(name);
        assertThat(svg).contains("<title id=\"letters-title\"");
    }
}
