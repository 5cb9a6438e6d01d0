package runthrough.simulation.random;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Line;
import runthrough.plant.MeasuredRows;
import runthrough.plant.Practice;
import runthrough.plant.WorkElement;
import runthrough.simulation.records.WorkRecord.WorkList;

/**
 * A source of randomness of a line, with random numbers of its own.
 *
 * @param kind what is random
 * @param list the list of work that it belongs to, if it belongs to one
 * @param element name of the element of work, or of the sheet of measured times, as the user calls it; empty where it is none
 * @param name of the source, see {@link SourceNames}, which its random numbers belong to
 */
public record RandomSource(Kind kind, Optional<WorkList> list, String element, String name) {

    /** What is random. */
    public enum Kind {
        /** Which kind of coil comes next. */
        COIL_KIND,
        /** Length of the coils. */
        COIL_LENGTH,
        /** Mass of the coils. */
        COIL_MASS,
        /** Which measured row, of times that come together, a coil change takes. */
        MEASURED_ROW,
        /** How long an element of work takes. */
        DURATION,
        /** Whether an element of work is done. */
        OCCURRENCE,
        /** Whether a joint is rejected. */
        REJECT,
        /** How long a process that stopped because strip was lacking waits until it starts again. */
        RESTART_DELAY,
        /** How long the process runs until a stop of its own. */
        OWN_RUNNING,
        /** How long it then stands. */
        OWN_STANDING,
        /** How long threading the line anew takes. */
        RETHREAD,
        /** Whether a joint breaks in the process section. */
        JOINT_BREAK,
        /** Where in the process section it breaks. */
        BREAK_PLACE,
        /** How long the repair takes. */
        BREAK_REPAIR
    }

    /** How people call it. */
    public String label() {
        String work = list.map(in -> element + " (" + in.name().toLowerCase(Locale.ROOT) + ")")
                .orElse(element);
        return switch (kind) {
            case COIL_KIND -> "which coil comes";
            case COIL_LENGTH -> "length of the coils";
            case COIL_MASS -> "mass of the coils";
            case MEASURED_ROW -> "row of measured times in " + element;
            case DURATION -> work;
            case OCCURRENCE -> work + ", whether done";
            case REJECT -> "rejects";
            case RESTART_DELAY -> "restart delay";
            case OWN_RUNNING -> "running time until process downtime";
            case OWN_STANDING -> "length of process downtime";
            case RETHREAD -> "rethread";
            case JOINT_BREAK -> "whether a joint breaks";
            case BREAK_PLACE -> "where a joint breaks";
            case BREAK_REPAIR -> "repair of a joint break";
        };
    }

    /** Every source that {@code line} has; those whose draws are always the same are none. */
    public static List<RandomSource> of(Line line) {
        List<RandomSource> sources = new ArrayList<>();
        addCoils(line, sources);
        addWork(line, sources);
        addProcess(line, sources);
        return List.copyOf(sources);
    }

    private static void addCoils(Line line, List<RandomSource> sources) {
        boolean mixed =
                line.coilSource() instanceof CoilSource.Mix mix && mix.shares().size() > 1;
        add(mixed, Kind.COIL_KIND, SourceNames.COIL_KIND, sources);
        if (line.coilSource().sizesVary()) {
            add(anyVaries(line, false), Kind.COIL_LENGTH, SourceNames.COIL_LENGTH, sources);
            add(anyVaries(line, true), Kind.COIL_MASS, SourceNames.COIL_MASS, sources);
        }
    }

    private static boolean anyVaries(Line line, boolean byMass) {
        return line.coils().stream()
                .map(Coil::size)
                .anyMatch(size -> !size.isConstant() && size instanceof CoilSize.ByMass == byMass);
    }

    private static void addWork(Line line, List<RandomSource> sources) {
        CoilChange work = line.work();
        Map<String, MeasuredRows> sheets = new LinkedHashMap<>();
        MeasuredRows.in(work).forEach(rows -> sheets.putIfAbsent(SourceNames.sheet(rows), rows));
        sheets.forEach((name, rows) -> {
            if (rows.count() > 1) {
                sources.add(new RandomSource(Kind.MEASURED_ROW, Optional.empty(), rows.source(), name));
            }
        });
        addElements(line, WorkList.PREPARE, work.prepare(), sources);
        if (line.practice() instanceof Practice.Rethread rethread) {
            add(!rethread.time().isConstant(), Kind.RETHREAD, SourceNames.RETHREAD, sources);
            return;
        }
        addElements(line, WorkList.TAIL, work.tail(), sources);
        addElements(line, WorkList.JOIN, work.join(), sources);
        add(work.reject().isRandom(), Kind.REJECT, SourceNames.REJECT, sources);
        add(!line.process().restartDelay().isConstant(), Kind.RESTART_DELAY, SourceNames.RESTART, sources);
    }

    private static void addElements(Line line, WorkList list, List<WorkElement> elements, List<RandomSource> sources) {
        List<SourceNames.OfElement> names = SourceNames.of(line.practice(), list, elements);
        for (int i = 0; i < elements.size(); i++) {
            SourceNames.OfElement name = names.get(i);
            if (elements.get(i).time().hasOwnDraws()) {
                sources.add(new RandomSource(Kind.DURATION, Optional.of(list), name.element(), name.time()));
            }
            if (elements.get(i).occurrence().isRandom()) {
                sources.add(new RandomSource(Kind.OCCURRENCE, Optional.of(list), name.element(), name.chance()));
            }
        }
    }

    private static void addProcess(Line line, List<RandomSource> sources) {
        line.process().downtime().ifPresent(stops -> {
            add(!stops.runningTime().isConstant(), Kind.OWN_RUNNING, SourceNames.DOWNTIME_RUNNING, sources);
            add(!stops.standingTime().isConstant(), Kind.OWN_STANDING, SourceNames.DOWNTIME_STANDING, sources);
        });
        line.process().jointBreak().filter(breaks -> breaks.chance() > 0).ifPresent(breaks -> {
            add(true, Kind.JOINT_BREAK, SourceNames.BREAK, sources);
            add(true, Kind.BREAK_PLACE, SourceNames.BREAK_PLACE, sources);
            add(!breaks.repair().isConstant(), Kind.BREAK_REPAIR, SourceNames.BREAK_REPAIR, sources);
        });
    }

    private static void add(boolean random, Kind kind, String name, List<RandomSource> sources) {
        if (random) {
            sources.add(new RandomSource(kind, Optional.empty(), "", name));
        }
    }
}
