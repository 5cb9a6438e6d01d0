package runthrough.chart.verdict;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import runthrough.plant.CoilChange;
import runthrough.plant.Line;
import runthrough.plant.WorkElement;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.WorkRecord;
import runthrough.simulation.records.WorkRecord.WorkList;

/**
 * The work elements of one coil change as bars over time, a row for each element in order of the three lists, and a row for
 * waiting where there was any. A redone element has several bars in its row, and work in the same row that
 * counts by another coil change is a bar of another sort.
 */
final class WorkBars {

    /** What a bar stands for; the order is that of the legend. */
    enum Sort {
        PREPARE,
        TAIL,
        JOIN,
        WAITING,
        OTHER_CHANGE
    }

    /**
     * A bar.
     *
     * @param row from 0, the first at the top
     * @param start (s of simulated time)
     * @param end (s)
     */
    record Bar(Sort sort, int row, double start, double end) {}

    private final CoilChange described;
    private final boolean rethread;
    private final ChangeRecord change;
    private final double from;
    private final double to;
    private final List<String> rows = new ArrayList<>();
    private final List<Bar> bars = new ArrayList<>();
    private final Set<Integer> doneBefore = new LinkedHashSet<>();

    /** Bars of {@code change} from all work of its replication, as far as it lies between {@code from} and {@code to} (s). */
    WorkBars(Line line, ChangeRecord change, List<WorkRecord> work, double from, double to) {
        this.described = line.change();
        this.rethread = !line.practice().hasJoiner();
        this.change = change;
        this.from = from;
        this.to = to;
        described.prepare().forEach(element -> rows.add(element.name()));
        if (rethread) {
            rows.add("rethread");
        } else {
            Stream.of(described.tail(), described.join())
                    .flatMap(List::stream)
                    .map(WorkElement::name)
                    .forEach(rows::add);
        }
        work.forEach(this::add);
        if (change.waiting() > 0) {
            waits(work.stream().filter(this::isFirstPass).toList());
        }
    }

    private void add(WorkRecord record) {
        boolean own = record.change() == change.number();
        double end = Double.isNaN(record.end()) ? to : record.end();
        if (own && end <= from) {
            doneBefore.add(row(record));
        }
        if (record.start() < to && end > from) {
            Sort sort = own ? Sort.valueOf(record.list().name()) : Sort.OTHER_CHANGE;
            bars.add(new Bar(sort, row(record), Math.max(from, record.start()), Math.min(to, end)));
        }
    }

    private int row(WorkRecord record) {
        int tails = rethread ? 0 : described.tail().size();
        return switch (record.list()) {
            case PREPARE -> record.element();
            case TAIL -> described.prepare().size() + record.element();
            case JOIN -> described.prepare().size() + tails + record.element();
        };
    }

    private boolean isFirstPass(WorkRecord record) {
        return record.change() == change.number() && record.pass() == 1;
    }

    /** From the tail's stop until tail work begins, and from its end until the joint begins. */
    private void waits(List<WorkRecord> firstPass) {
        double tailBegun = edge(firstPass, WorkList.TAIL, true);
        double tailDone = edge(firstPass, WorkList.TAIL, false);
        double joinBegun = edge(firstPass, WorkList.JOIN, true);
        double standing = change.tailStopped();
        boolean tails = !Double.isNaN(tailBegun);
        rows.add("waiting");
        addWait(standing, tailBegun);
        addWait(tails ? tailDone : standing, joinBegun);
    }

    private void addWait(double start, double end) {
        if (end > start) {
            bars.add(new Bar(Sort.WAITING, rows.size() - 1, Math.max(from, start), Math.min(to, end)));
        }
    }

    /** When the first of a list begins, or the last of it ends; NaN when it was empty. */
    private static double edge(List<WorkRecord> work, WorkList list, boolean first) {
        double edge = Double.NaN;
        for (WorkRecord record : work) {
            if (record.list() == list) {
                double time = first ? record.start() : record.end();
                edge = Double.isNaN(edge) || (first ? time < edge : time > edge) ? time : edge;
            }
        }
        return edge;
    }

    /** Names of the rows, from the top. */
    List<String> rows() {
        return List.copyOf(rows);
    }

    /** All bars. */
    List<Bar> bars() {
        return List.copyOf(bars);
    }

    /** Rows without a bar whose work was done before what is shown. */
    List<Integer> rowsDoneBefore() {
        return emptyRows().stream().filter(doneBefore::contains).toList();
    }

    /** Rows without a bar whose work is not done at this coil change. */
    List<Integer> rowsNotDone() {
        return emptyRows().stream().filter(row -> !doneBefore.contains(row)).toList();
    }

    private List<Integer> emptyRows() {
        return IntStream.range(0, rows.size())
                .filter(row -> bars.stream().noneMatch(bar -> bar.row() == row))
                .boxed()
                .toList();
    }

    /** What was waited for. */
    String waitedFor() {
        return change.waitingForPeople() == 0
                ? "preparation"
                : change.waitingForPreparation() == 0 ? "people" : "preparation and people";
    }

    /** Start of what is shown (s). */
    double from() {
        return from;
    }

    boolean isRethread() {
        return rethread;
    }
}
