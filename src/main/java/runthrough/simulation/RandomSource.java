package runthrough.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilSource;
import runthrough.plant.Line;
import runthrough.plant.MeasuredRows;
import runthrough.plant.Practice;
import runthrough.plant.WorkElement;
import runthrough.simulation.WorkRecord.WorkList;

/**
 * A source of randomness of a line, with random numbers of its own.
 *
 * @param kind what is random
 * @param list the list of work that it belongs to, if it belongs to one
 * @param element name of the element of work as the user calls it; empty where it is none
 * @param number of its streams, the same whatever else the line has
 */
public record RandomSource(Kind kind, Optional<WorkList> list, String element, int number) {

    /** What is random. */
    public enum Kind {
        /** Which kind of coil comes next. */
        COIL_CHOICE,
        /** Length or mass of the coils. */
        COIL_SIZE,
        /** Which measured row, of times that come together, a coil change takes. */
        MEASURED_ROW,
        /** How long an element of work takes. */
        DURATION,
        /** Whether an element of work is done. */
        OCCURRENCE,
        /** Whether a joint is rejected. */
        REJECT,
        /** How long a process that stopped for want of strip waits until it starts again. */
        RESTART_DELAY,
        /** How long the process runs until a stop of its own. */
        OWN_RUNNING,
        /** How long it then stands. */
        OWN_STANDING,
        /** How long threading the line anew takes. */
        RETHREAD
    }

    /** How people call it. */
    public String label() {
        String work = list.map(in -> element + " (" + in.name().toLowerCase(Locale.ROOT) + ")")
                .orElse(element);
        return switch (kind) {
            case COIL_CHOICE -> "which coil comes";
            case COIL_SIZE -> "size of the coils";
            case MEASURED_ROW -> "row of measured times";
            case DURATION -> work;
            case OCCURRENCE -> work + ", whether done";
            case REJECT -> "rejects";
            case RESTART_DELAY -> "restart delay";
            case OWN_RUNNING -> "time until own stops";
            case OWN_STANDING -> "length of own stops";
            case RETHREAD -> "rethread";
        };
    }

    /** Every source that {@code line} has; those whose draws are always the same are none. */
    public static List<RandomSource> of(Line line) {
        List<RandomSource> sources = new ArrayList<>();
        addCoils(line, sources);
        addWork(line, sources);
        line.process().downtime().ifPresent(stops -> {
            add(!stops.runningTime().isConstant(), Kind.OWN_RUNNING, Source.OWN_RUNNING, sources);
            add(!stops.standingTime().isConstant(), Kind.OWN_STANDING, Source.OWN_STANDING, sources);
        });
        return List.copyOf(sources);
    }

    private static void addCoils(Line line, List<RandomSource> sources) {
        boolean mixed =
                line.coilSource() instanceof CoilSource.Mix mix && mix.shares().size() > 1;
        boolean alike = line.coils().stream().allMatch(coil -> coil.size().isConstant());
        add(mixed, Kind.COIL_CHOICE, Source.COIL_CHOICE, sources);
        add(!alike, Kind.COIL_SIZE, Source.COIL_SIZE, sources);
    }

    private static void addWork(Line line, List<RandomSource> sources) {
        CoilChange change = line.change();
        List<MeasuredRows> rows = MeasuredRows.in(change);
        for (int i = 0; i < rows.size(); i++) {
            add(rows.get(i).count() > 1, Kind.MEASURED_ROW, Source.rows(i), sources);
        }
        addElements(WorkList.PREPARE, change.prepare(), sources);
        if (line.practice() == Practice.RETHREAD) {
            add(!change.rethread().isConstant(), Kind.RETHREAD, Source.duration(WorkList.JOIN, 0), sources);
            return;
        }
        addElements(WorkList.TAIL, change.tail(), sources);
        addElements(WorkList.JOIN, change.join(), sources);
        add(change.reject().isRandom(), Kind.REJECT, Source.REJECT, sources);
        add(!line.process().restartDelay().isConstant(), Kind.RESTART_DELAY, Source.RESTART_DELAY, sources);
    }

    private static void addElements(WorkList list, List<WorkElement> elements, List<RandomSource> sources) {
        for (int i = 0; i < elements.size(); i++) {
            WorkElement element = elements.get(i);
            if (element.time().hasLuckOfItsOwn()) {
                sources.add(
                        new RandomSource(Kind.DURATION, Optional.of(list), element.name(), Source.duration(list, i)));
            }
            if (element.occurrence().isRandom()) {
                sources.add(
                        new RandomSource(Kind.OCCURRENCE, Optional.of(list), element.name(), Source.chance(list, i)));
            }
        }
    }

    private static void add(boolean random, Kind kind, int number, List<RandomSource> sources) {
        if (random) {
            sources.add(new RandomSource(kind, Optional.empty(), "", number));
        }
    }
}
