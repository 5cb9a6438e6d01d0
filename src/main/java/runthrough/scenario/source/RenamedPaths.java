package runthrough.scenario.source;

import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Carries a change of a list to all places of a scenario that name one of its items by a path, such as origins and alternatives.
 *
 * @param renamed a text as it reads after the change, if it is such a path, and itself otherwise
 */
public record RenamedPaths(UnaryOperator<String> renamed) {

    /** Where the part at {@code former} stands at {@code now}. */
    public static RenamedPaths moved(String former, String now) {
        return new RenamedPaths(text -> leadsTo(former, text) ? now + text.substring(former.length()) : text);
    }

    /** Where the element at {@code number}, from 1, of the list at {@code list} has another name. */
    public static RenamedPaths of(String list, int number, String former, String name) {
        String byNumber = list + "[" + number + "].";
        return new RenamedPaths(moved(list + "." + former, list + "." + name)
                .renamed
                .andThen(moved(byNumber + former, byNumber + name).renamed)::apply);
    }

    /**
     * Where the item at {@code number}, from 1, of the list at {@code list} is gone: those behind it move up, and no path by a number leads
     * to another than before.
     *
     * @param name of the item; empty where it has none
     */
    public static RenamedPaths without(String list, int number, Optional<String> name) {
        Pattern item = Pattern.compile(Pattern.quote(list) + "\\[(\\d{1,9})](.*)", Pattern.DOTALL);
        return new RenamedPaths(text -> {
            Matcher found = item.matcher(text);
            int place = found.matches() ? Integer.parseInt(found.group(1)) : 0;
            if (place == number) {
                return list
                        + name.map(own -> "." + own + found.group(2).replace("." + own, ""))
                                .orElse("[0]" + found.group(2));
            }
            return place > number ? list + "[" + (place - 1) + "]" + found.group(2) : text;
        });
    }

    /** Whether {@code text} is {@code path} or leads on from it. */
    public static boolean leadsTo(String path, String text) {
        return text.equals(path) || text.startsWith(path + ".");
    }

    /** {@code raw} with the paths in its keys and values as they read after the change. */
    public Raw in(Raw raw) {
        if (raw instanceof Raw.Mapping mapping) {
            return new Raw.Mapping(
                    mapping.entries().stream()
                            .map(entry -> new Raw.Entry(renamed.apply(entry.key()), entry.place(), in(entry.value())))
                            .toList(),
                    mapping.place());
        } else if (raw instanceof Raw.Sequence sequence) {
            return new Raw.Sequence(sequence.items().stream().map(this::in).toList(), sequence.place());
        }
        Raw.Scalar scalar = (Raw.Scalar) raw;
        return new Raw.Scalar(renamed.apply(scalar.text()), scalar.place());
    }
}
