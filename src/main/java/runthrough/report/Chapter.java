package runthrough.report;

import java.util.List;
import java.util.stream.Stream;
import runthrough.chart.Chart;

/**
 * A part of an answer that pages have under a heading of its own.
 *
 * @param id unique in the answer; lower-case letters, digits and hyphens
 * @param title of its heading
 * @param blocks what stands there, in order
 */
public record Chapter(String id, String title, List<Block> blocks) {
    public Chapter {
        blocks = List.copyOf(blocks);
    }

    /** A chapter of paragraphs. */
    public static Chapter of(String id, String title, List<String> paragraphs) {
        return new Chapter(
                id,
                title,
                List.<Block>copyOf(paragraphs.stream().map(Paragraph::new).toList()));
    }

    /** A chapter of tables. */
    public static Chapter ofTables(String id, String title, List<Table> tables) {
        return new Chapter(
                id, title, List.<Block>copyOf(tables.stream().map(Grid::new).toList()));
    }

    /** The same with more behind it. */
    public Chapter and(Stream<? extends Block> more) {
        return new Chapter(id, title, Stream.concat(blocks.stream(), more).toList());
    }

    /** What a chapter is made of. */
    public sealed interface Block {}

    /** A paragraph. */
    public record Paragraph(String text) implements Block {}

    /** A heading within a chapter. */
    public record Heading(String text) implements Block {}

    /** A list of points. */
    public record Points(List<String> points) implements Block {
        public Points {
            points = List.copyOf(points);
        }
    }

    /** Text whose lines and spaces are kept, such as a part of a scenario. */
    public record Kept(String text) implements Block {}

    /** A table. */
    public record Grid(Table table) implements Block {}

    /** A picture. */
    public record Drawing(Chart chart) implements Block {}
}
