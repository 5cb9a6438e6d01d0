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
import runthrough.report.Table;

/** The work of a coil change as described, element by element. */
public final class WorkTable {
    private final InputTexts texts;
    private final boolean redone;
    /** Whether any element takes more than one person or may not be put down. */
    private final boolean peopled;

    private final List<List<String>> rows = new ArrayList<>();

    private WorkTable(CoilChange change, InputTexts texts) {
        this.texts = texts;
        this.redone = !(change.reject() instanceof Reject.Never);
        this.peopled = Stream.of(change.prepare(), change.tail(), change.join())
                .flatMap(List::stream)
                .anyMatch(element -> element.people() > 1 || !element.putDown());
    }

    public static Table of(Line line, InputTexts texts) {
        WorkTable table = new WorkTable(line.change(), texts);
        table.list("prepare", line.change().prepare());
        if (line.practice() instanceof Practice.Rethread rethread) {
            table.row(
                    "strip standing",
                    "rethread",
                    DistributionText.of(rethread.time(), Kind.TIME, texts),
                    "always",
                    "no",
                    "1");
        } else {
            table.list("tail, strip standing", line.change().tail());
            table.list("join, strip standing", line.change().join());
        }
        List<String> head = new ArrayList<>(List.of("Work", "Element", "Time", "Done"));
        if (table.redone) {
            head.add("Again after a reject");
        }
        if (table.peopled) {
            head.add("People");
        }
        return Table.words("Work of a coil change", head, table.rows, false);
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
        elements.forEach(element -> row(
                name,
                element.name(),
                time(element.time()),
                occurrence(element.occurrence()),
                element.redo() ? "yes" : "no",
                element.people() + (element.putDown() ? "" : ", not to be put down")));
    }

    private void row(String list, String name, String time, String done, String again, String people) {
        List<String> row = new ArrayList<>(List.of(list, name, time, done));
        if (redone) {
            row.add(again);
        }
        if (peopled) {
            row.add(people);
        }
        rows.add(List.copyOf(row));
    }

    private String time(WorkTime time) {
        String drawn = DistributionText.of(time.drawn(), Kind.TIME, texts);
        if (time instanceof WorkTime.Travel travel) {
            String across = "across the strip at " + speed(travel.speed());
            return time.drawn().isConstant() && time.drawn().mean() == 0 ? across : across + ", plus " + drawn;
        }
        return time instanceof WorkTime.FromRows from
                ? drawn + ", by rows of " + from.rows().source()
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

    private String occurrence(Occurrence occurrence) {
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

    private static String ordinal(int n) {
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
