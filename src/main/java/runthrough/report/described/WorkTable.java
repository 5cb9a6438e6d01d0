package runthrough.report.described;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilDifference;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.TravelSpeed;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.quantity.Kind;
import runthrough.report.Cell;
import runthrough.report.Column;
import runthrough.report.Table;
import runthrough.report.TableMaker;

/** The work of a coil change as described, element by element. */
public final class WorkTable {
    /** What is done while the line runs. */
    static final String PREPARE = "prepare";

    /** What is done without a joiner. */
    static final String STANDING = "strip standing";

    private final InputTexts texts;
    private final boolean redone;
    /** Whether any element takes more than one person or may not be put down. */
    private final boolean peopled;

    private final List<Row> rows = new ArrayList<>();

    private WorkTable(CoilChange change, InputTexts texts) {
        this.texts = texts;
        this.redone = !(change.reject() instanceof Reject.Never);
        this.peopled = Stream.of(change.prepare(), change.tail(), change.join())
                .flatMap(List::stream)
                .anyMatch(element -> element.people() > 1 || !element.putDown());
    }

    /** An element of the work as the table has it. */
    record Row(String list, String name, Cell time, String done, boolean again, String people) {}

    public static Table of(Line line, InputTexts texts) {
        return read(line, texts).table();
    }

    /** The same as values. */
    static List<Row> rows(Line line, InputTexts texts) {
        return List.copyOf(read(line, texts).rows);
    }

    private static WorkTable read(Line line, InputTexts texts) {
        WorkTable table = new WorkTable(line.change(), texts);
        table.list(PREPARE, line.change().prepare());
        if (line.practice() instanceof Practice.Rethread rethread) {
            table.rows.add(new Row(STANDING, "rethread", texts.cell(Kind.TIME, rethread.time()), "always", false, "1"));
        } else {
            table.list("tail, " + STANDING, line.change().tail());
            table.list("join, " + STANDING, line.change().join());
        }
        return table;
    }

    private Table table() {
        TableMaker<Row> table = TableMaker.<Row>of("Work of a coil change")
                .words("Work", Row::list)
                .words("Element", Row::name)
                .with(Column.words("Time"), Row::time)
                .words("Done", Row::done);
        if (redone) {
            table.words("Again after a reject", row -> row.again() ? "yes" : "no");
        }
        if (peopled) {
            table.words("People", Row::people);
        }
        return table.of(rows);
    }

    /** How often a joint is rejected, in words. */
    public static String rejects(Reject reject, InputTexts texts) {
        if (reject instanceof Reject.Chance chance) {
            return "each with a chance of " + texts.text(Kind.SHARE, chance.p());
        } else if (reject instanceof Reject.Every every) {
            return "once at every " + ordinal(every.n()) + " coil change";
        }
        return "none";
    }

    private void list(String name, List<WorkElement> elements) {
        elements.forEach(element -> rows.add(new Row(
                name,
                element.name(),
                time(element),
                occurrence(element.occurrence(), texts),
                element.redo(),
                element.people() + (element.putDown() ? "" : ", not to be put down"))));
    }

    /** What is said of {@code element} beside its name and time, in words: "when the width differs; 2 people"; empty where nothing is. */
    public static String beside(WorkElement element, InputTexts texts) {
        return Stream.of(
                        element.occurrence() instanceof Occurrence.Always
                                ? ""
                                : occurrence(element.occurrence(), texts),
                        element.people() == 1 ? "" : element.people() + " people",
                        element.putDown() ? "" : "not to be put down",
                        element.off() == 0 ? "" : texts.text(Kind.TIME, element.off()) + " off each time")
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; "));
    }

    private Cell time(WorkElement element) {
        Cell time = time(element.time());
        return element.off() == 0
                ? time
                : Cell.of(time.text() + ", " + texts.text(Kind.TIME, element.off()) + " off each time");
    }

    private Cell time(WorkTime time) {
        Cell drawn = texts.cell(Kind.TIME, time.drawn());
        if (time instanceof WorkTime.Travel travel) {
            String across = "across the strip at " + speed(travel.speed());
            boolean isAll = time.drawn().isConstant() && time.drawn().mean() == 0;
            return Cell.of(isAll ? across : across + ", plus " + drawn.text());
        }
        return time instanceof WorkTime.FromRows from
                ? Cell.of(drawn.text() + ", by rows of " + from.rows().source())
                : drawn;
    }

    private String speed(TravelSpeed speed) {
        if (speed instanceof TravelSpeed.ByThickness table) {
            return table.rows().stream()
                    .map(row -> texts.text(Kind.TRAVEL_SPEED, row.speed()) + " for "
                            + texts.text(Kind.THICKNESS, row.thickness()))
                    .collect(Collectors.joining(", "));
        }
        return texts.text(Kind.TRAVEL_SPEED, ((TravelSpeed.Constant) speed).speed());
    }

    private static String occurrence(Occurrence occurrence, InputTexts texts) {
        if (occurrence instanceof Occurrence.Every every) {
            return "every " + ordinal(every.n());
        } else if (occurrence instanceof Occurrence.Chance chance) {
            return "with a chance of " + texts.text(Kind.SHARE, chance.p());
        } else if (occurrence instanceof Occurrence.When when) {
            return "when the "
                    + when.differences().stream().map(CoilDifference::words).collect(Collectors.joining(" or the "))
                    + " differs";
        }
        return "always";
    }

    static String ordinal(int n) {
        int tens = n % 100;
        String end = tens >= 11 && tens <= 13
                ? "th"
                : switch (n % 10) {
                    case 1 -> "st";
                    case 2 -> "nd";
                    case 3 -> "rd";
                    default -> "th";
                };
        return n + end;
    }
}
