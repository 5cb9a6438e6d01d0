package runthrough.scenario.log;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import runthrough.linelog.LineEvent;
import runthrough.linelog.LineEvent.What;
import runthrough.linelog.LineLog;
import runthrough.scenario.source.CsvRows;
import runthrough.scenario.source.Nearest;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/**
 * Reads a log, or reports everything that is wrong with it: the columns {@code time} and {@code event}, and if there are,
 * {@code coil} and {@code reason}, in any order. A stop of the line whose reason is {@code own} is process downtime and is
 * left out; its {@code line running} too.
 *
 * <p>What the log does not see both ends of, because it begins or ends in the midst of it, is left out with a warning.
 */
public final class LineLogReader {
    private static final long LARGEST_FILE = 200_000_000;
    private static final String TIME = "time";
    private static final String EVENT = "event";
    private static final String COIL = "coil";
    private static final String REASON = "reason";
    private static final String OWN = "own";
    private static final List<String> REASONS = List.of("strip", OWN);
    private static final List<String> COLUMNS = List.of(TIME, EVENT, COIL, REASON, "remark");

    private final CsvRows rows;
    private final Problems problems;
    private final Map<String, Integer> columns = new HashMap<>();
    private final EventTime times = new EventTime();
    private final List<LineEvent> events = new ArrayList<>();
    private @Nullable Place tail;
    private @Nullable Place stood;
    private double last;
    private boolean anyJoint;
    private boolean anyStop;
    private boolean downtime;

    private LineLogReader(CsvRows rows, Problems problems) {
        this.rows = rows;
        this.problems = problems;
    }

    /** Reads {@code path}. Never throws for what a file holds. */
    public static LineLogReading read(Path path) {
        Problems problems = new Problems();
        Optional<LineLog> log = CsvRows.open(
                        path, path.toString(), "log", LARGEST_FILE, "one row for each event", problems)
                .flatMap(rows -> read(rows, String.valueOf(path.getFileName()), problems));
        return log.isPresent() && problems.none()
                ? new LineLogReading.Accepted(log.get(), problems.warnings())
                : new LineLogReading.Refused(problems.errors(), problems.further());
    }

    private static Optional<LineLog> read(CsvRows opened, String name, Problems problems) {
        try (CsvRows rows = opened) {
            return new LineLogReader(rows, problems).log(name);
        } catch (IOException e) {
            throw new IllegalStateException("a file that was read is closed", e);
        }
    }

    private Optional<LineLog> log(String name) {
        if (!header()) {
            return Optional.empty();
        }
        while (rows.next()) {
            row();
        }
        if (tail != null) {
            problems.warning(
                    tail,
                    "",
                    What.TAIL_STOPPED.words(),
                    "the log ends before its joint is released",
                    "It is left out.");
        }
        LineLog log = LineLog.of(name, events, columns.containsKey(REASON));
        if (problems.none() && log.changes().isEmpty()) {
            problems.error(
                    Place.whole(rows.name()),
                    "",
                    "",
                    "has no whole coil change: a joint, and the tail that stops next",
                    "Give a longer log.");
        }
        return Optional.of(log);
    }

    private boolean header() {
        int before = problems.count();
        for (int i = 0; i < rows.header().size(); i++) {
            Raw.Scalar cell = rows.header().get(i);
            String name = plain(cell.text());
            if (!COLUMNS.contains(name)) {
                String remedy = Nearest.to(name, COLUMNS)
                        .map(nearest -> "Did you mean " + nearest + "?")
                        .orElse("Allowed columns are: " + String.join(", ", COLUMNS) + ".");
                problems.error(cell.place(), "", cell.text(), "is not a known column", remedy);
            } else if (columns.putIfAbsent(name, i) != null) {
                problems.error(cell.place(), "", cell.text(), "a second column of this name", "Keep only one.");
            }
        }
        Stream.of(TIME, EVENT)
                .filter(name -> !columns.containsKey(name))
                .forEach(name -> problems.error(
                        rows.header().get(0).place(), "", "", "the column " + name + " is missing", "Add it."));
        return problems.count() == before;
    }

    private void row() {
        String written = cell(TIME);
        EventTime.Read time = times.read(number(written));
        time.wrong().ifPresent(wrong -> problems.error(place(TIME), TIME, written, wrong.rule(), wrong.remedy()));
        Optional<What> what = what();
        Optional<String> reason = reason();
        last = time.wrong().isEmpty() ? time.seconds() : last;
        if (what.isPresent() && reason.isPresent()) {
            take(what.get(), last, reason.get());
        } else {
            goOnAfterUnknown();
        }
    }

    /** What comes next may be right, whatever this row was meant to be. */
    private void goOnAfterUnknown() {
        tail = null;
        stood = null;
        anyJoint = false;
        anyStop = false;
    }

    /** Between semicolons a decimal comma may stand. */
    private String number(String written) {
        return written.indexOf(':') >= 0 ? written.replace(',', '.') : rows.number(columns.getOrDefault(TIME, 0));
    }

    private Optional<What> what() {
        String written = plain(cell(EVENT));
        Optional<What> found = Stream.of(What.values())
                .filter(what -> what.words().equals(written))
                .findFirst();
        if (found.isEmpty()) {
            List<String> known = Stream.of(What.values()).map(What::words).toList();
            String remedy = Nearest.to(written, known)
                    .map(nearest -> "Did you mean " + nearest + "?")
                    .orElse("Known events are: " + String.join(", ", known) + ".");
            problems.error(place(EVENT), EVENT, cell(EVENT), "is not a known event", remedy);
        }
        return found;
    }

    private Optional<String> reason() {
        String written = plain(cell(REASON));
        if (written.isEmpty() || REASONS.contains(written)) {
            return Optional.of(written);
        }
        problems.error(
                place(REASON), REASON, cell(REASON), "must be strip, own or blank", "Say what the line stopped for.");
        return Optional.empty();
    }

    private void take(What what, double time, String reason) {
        boolean begins = what == What.TAIL_STOPPED || what == What.LINE_STOPPED;
        boolean isJoint = what == What.TAIL_STOPPED || what == What.JOINT_RELEASED;
        Place open = isJoint ? tail : stood;
        if (begins && open != null) {
            String partner = (isJoint ? What.JOINT_RELEASED : What.LINE_RUNNING).words();
            problems.error(
                    place(EVENT),
                    EVENT,
                    what.words(),
                    "the same came before, on line " + open.line() + ", without " + partner + " between",
                    "Add what is missing, or take out the row that is one too many.");
            return;
        }
        boolean seenBefore = isJoint ? anyJoint : anyStop;
        if (!begins && open == null) {
            String partner = (isJoint ? What.TAIL_STOPPED : What.LINE_STOPPED).words();
            if (seenBefore) {
                problems.error(
                        place(EVENT),
                        EVENT,
                        what.words(),
                        "no " + partner + " comes before it",
                        "Add what is missing, or take out the row that is one too many.");
            } else if (isJoint) {
                problems.warning(
                        place(EVENT), EVENT, what.words(), "the log begins in the midst of a joint", "It is left out.");
            }
            note(isJoint, null);
            return;
        }
        if (!isJoint) {
            downtime = begins ? reason.equals(OWN) : downtime;
        }
        if (isJoint || !downtime) {
            events.add(new LineEvent(time, what, cell(COIL)));
        }
        note(isJoint, begins ? place(EVENT) : null);
    }

    private void note(boolean isJoint, @Nullable Place begun) {
        if (isJoint) {
            tail = begun;
            anyJoint = true;
        } else {
            stood = begun;
            anyStop = true;
        }
    }

    private String cell(String column) {
        Integer index = columns.get(column);
        return index == null || index >= rows.cells() ? "" : rows.cell(index).strip();
    }

    private Place place(String column) {
        return rows.place(Math.min(columns.getOrDefault(column, 0), rows.cells() - 1));
    }

    private static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
    }
}
