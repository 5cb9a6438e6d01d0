package runthrough.scenario.source;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.CollectionNode;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * Writes into a YAML text where two readings of it differ, and nowhere else: comments, order and layout stay as the user made
 * them. Only a text that {@link YamlText} has read may come here, since that bounds its depth.
 */
public final class YamlEdit {
    /** More steps than any change takes that a person makes. */
    private static final int MOST_STEPS = 1000;

    private final int[] text;
    private final String changed;

    /** {@code text} with the first of its differences from {@code after} written into it. */
    private YamlEdit(String text, Raw before, Raw after) {
        this.text = text.codePoints().toArray();
        LoadSettings settings =
                LoadSettings.builder().setCodePointLimit(Integer.MAX_VALUE).build();
        Node root = new Compose(settings).composeString(text).orElseThrow();
        Splice splice = differ(root, before, after);
        changed = new String(this.text, 0, splice.start)
                + splice.with
                + new String(this.text, splice.end, this.text.length - splice.end);
    }

    /**
     * The text that reads as {@code after}, but for the order of keys. One difference is written after the other, each into
     * what the one before has left. Where a text is written in a way that this does not fit, all of it is written anew.
     *
     * @param text that reads as {@code before}
     * @throws java.util.concurrent.CancellationException when the thread is interrupted
     */
    public static String apply(String text, Raw before, Raw after) {
        String now = text;
        Raw is = before;
        for (int step = 0; !same(is, after); step++) {
            Interrupted.check("a text is changed");
            String next = new YamlEdit(now, is, after).changed;
            Optional<Raw> read = YamlText.read(new TextFile("", next), new Problems());
            if (read.isEmpty() || same(read.get(), is) || step == MOST_STEPS) {
                return anew(after);
            }
            now = next;
            is = read.get();
        }
        return now;
    }

    private static String anew(Raw whole) {
        return whole instanceof Raw.Mapping mapping && !mapping.entries().isEmpty()
                ? mapping.entries().stream()
                        .map(entry -> FlowText.of(entry) + "\n")
                        .collect(Collectors.joining())
                : FlowText.of(whole) + "\n";
    }

    /** What stands from {@code start} to {@code end}, counted in code points, gives way to {@code with}. */
    private record Splice(int start, int end, String with) {}

    /** The first difference between two parts that differ. */
    private Splice differ(Node node, Raw before, Raw after) {
        Optional<Splice> within = Optional.empty();
        if (node instanceof MappingNode mapping
                && before instanceof Raw.Mapping old
                && after instanceof Raw.Mapping now) {
            within = differ(mapping, old, now);
        } else if (node instanceof SequenceNode list
                && before instanceof Raw.Sequence old
                && after instanceof Raw.Sequence now) {
            within = differ(list, old.items(), now.items());
        }
        return within.orElseGet(() -> replace(node, after));
    }

    /** Whether both say the same, in whatever order of keys. */
    private static boolean same(Raw one, Raw other) {
        if (one instanceof Raw.Mapping mine && other instanceof Raw.Mapping others) {
            return mine.entries().size() == others.entries().size()
                    && mine.entries().stream()
                            .allMatch(entry -> find(others, entry.key())
                                    .filter(value -> same(entry.value(), value))
                                    .isPresent());
        } else if (one instanceof Raw.Sequence mine && other instanceof Raw.Sequence others) {
            return mine.items().size() == others.items().size()
                    && firstDifference(mine.items(), others.items())
                            == mine.items().size();
        }
        return FlowText.of(one).equals(FlowText.of(other));
    }

    private Splice replace(Node node, Raw after) {
        int start = start(node);
        int end = end(node);
        // A key without a value ends at its colon; a list may have its dashes below the first letter of its key.
        boolean isBare = start == end && start > 0 && text[start - 1] == ':';
        boolean isBelow = node instanceof SequenceNode list && isBlock(list) && blankBefore(start);
        return new Splice(start, end, (isBare ? " " : isBelow ? "  " : "") + FlowText.of(after));
    }

    // ---- keys
    // ----------------------------------------------------------------------------------------------------------

    /** A key that changed, went or came; empty when the whole has to be written anew. */
    private Optional<Splice> differ(MappingNode node, Raw.Mapping before, Raw.Mapping after) {
        List<Raw.Entry> old = before.entries();
        Optional<Splice> renamed = renamed(node, old, after.entries());
        if (renamed.isPresent()) {
            return renamed;
        }
        if (old.stream().noneMatch(entry -> find(after, entry.key()).isPresent())) {
            return Optional.empty();
        }
        for (int i = 0; i < old.size(); i++) {
            NodeTuple tuple = node.getValue().get(i);
            Raw.Entry entry = old.get(i);
            Optional<Raw> now = find(after, entry.key());
            if (now.isEmpty()) {
                return isBlock(node) && blankBefore(start(tuple.getKeyNode()))
                        ? Optional.of(removal(start(tuple.getKeyNode()), end(tuple.getValueNode())))
                        : Optional.empty();
            } else if (!same(entry.value(), now.get())) {
                return Optional.of(differ(tuple.getValueNode(), entry.value(), now.get()));
            }
        }
        return after.entries().stream()
                .filter(entry -> find(before, entry.key()).isEmpty())
                .findFirst()
                .map(entry -> insertion(node, FlowText.of(entry)));
    }

    /** The one key that has another one in its place, all others being where they were; what stands behind it may differ, too. */
    private static Optional<Splice> renamed(MappingNode node, List<Raw.Entry> old, List<Raw.Entry> now) {
        List<String> was = old.stream().map(Raw.Entry::key).toList();
        List<String> is = now.stream().map(Raw.Entry::key).toList();
        int[] places = was.size() == is.size()
                ? IntStream.range(0, was.size())
                        .filter(i -> !was.get(i).equals(is.get(i)))
                        .toArray()
                : new int[0];
        if (places.length != 1 || is.contains(was.get(places[0])) || was.contains(is.get(places[0]))) {
            return Optional.empty();
        }
        Node key = node.getValue().get(places[0]).getKeyNode();
        return Optional.of(new Splice(start(key), end(key), FlowText.scalar(is.get(places[0]))));
    }

    private static Optional<Raw> find(Raw.Mapping mapping, String key) {
        return mapping.entries().stream()
                .filter(entry -> entry.key().equals(key))
                .map(Raw.Entry::value)
                .findFirst();
    }

    private Splice insertion(MappingNode node, String entry) {
        NodeTuple last = node.getValue().get(node.getValue().size() - 1);
        if (isBlock(node)) {
            // Before a key there may be its question mark.
            int indent = text[start(node)] == '?'
                    ? column(node)
                    : column(node.getValue().get(0).getKeyNode());
            int at = lineEnd(end(last.getValueNode()));
            return new Splice(at, at, "\n" + " ".repeat(indent) + entry);
        }
        int at = end(last.getValueNode());
        return new Splice(at, at, ", " + entry);
    }

    // ---- lists
    // ---------------------------------------------------------------------------------------------------------

    private Optional<Splice> differ(SequenceNode node, List<Raw> before, List<Raw> after) {
        List<Node> nodes = node.getValue();
        if (before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        int first = firstDifference(before, after);
        if (before.size() == after.size()) {
            return Optional.of(differ(nodes.get(first), before.get(first), after.get(first)));
        }
        if (after.size() == before.size() + 1 && first == before.size()) {
            return Optional.of(addition(node, FlowText.of(after.get(first))));
        }
        if (after.size() == before.size() - 1 && isBlock(node)) {
            boolean isRest = isPrefix(after.subList(first, after.size()), before.subList(first + 1, before.size()));
            Node item = nodes.get(first);
            if (isRest && dashBefore(start(item))) {
                return Optional.of(removal(start(item), end(item)));
            }
        }
        return Optional.empty();
    }

    private static boolean isPrefix(List<Raw> part, List<Raw> whole) {
        return firstDifference(part, whole) == part.size();
    }

    private static int firstDifference(List<Raw> one, List<Raw> other) {
        int i = 0;
        while (i < one.size() && i < other.size() && same(one.get(i), other.get(i))) {
            i++;
        }
        return i;
    }

    private Splice addition(SequenceNode node, String item) {
        Node last = node.getValue().get(node.getValue().size() - 1);
        if (isBlock(node)) {
            int at = lineEnd(end(last));
            return new Splice(at, at, "\n" + " ".repeat(column(node)) + "- " + item);
        }
        return new Splice(end(last), end(last), ", " + item);
    }

    // ---- places
    // --------------------------------------------------------------------------------------------------------

    private static boolean isBlock(CollectionNode<?> node) {
        return node.getFlowStyle() == FlowStyle.BLOCK && !node.getValue().isEmpty();
    }

    private static int start(Node node) {
        return mark(node.getStartMark()).getIndex();
    }

    private static int column(Node node) {
        return mark(node.getStartMark()).getColumn();
    }

    /** Where the last letter of {@code node} has been: a block ends for the parser only where the next thing begins. */
    private static int end(Node node) {
        if (node instanceof CollectionNode<?> collection && isBlock(collection)) {
            return node instanceof MappingNode mapping
                    ? end(mapping.getValue().get(mapping.getValue().size() - 1).getValueNode())
                    : end(((SequenceNode) node)
                            .getValue()
                            .get(((SequenceNode) node).getValue().size() - 1));
        }
        return mark(node.getEndMark()).getIndex();
    }

    private static Mark mark(Optional<Mark> mark) {
        return mark.orElseThrow(() -> new IllegalStateException("marks are kept unless switched off"));
    }

    /** The lines from {@code start} to {@code end} go. */
    private Splice removal(int start, int end) {
        int last = lineEnd(end);
        boolean isPair = last + 1 < text.length && text[last] == '\r' && text[last + 1] == '\n';
        return new Splice(lineStart(start), Math.min(last + (isPair ? 2 : 1), text.length), "");
    }

    private int lineStart(int at) {
        int i = at;
        while (i > 0 && !isBreak(text[i - 1])) {
            i--;
        }
        return i;
    }

    private int lineEnd(int at) {
        // A block of text ends with its line feed.
        int i = at > 0 && isBreak(text[at - 1]) ? at - 1 : at;
        while (i < text.length && !isBreak(text[i])) {
            i++;
        }
        return i;
    }

    private static boolean isBreak(int letter) {
        return letter == '\n' || letter == '\r';
    }

    private boolean blankBefore(int at) {
        return new String(text, lineStart(at), at - lineStart(at)).isBlank();
    }

    private boolean dashBefore(int at) {
        return new String(text, lineStart(at), at - lineStart(at)).matches(" *- *");
    }
}
