package runthrough.simulation.random;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.MeasuredRows;
import runthrough.plant.Practice;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.simulation.records.WorkRecord.WorkList;

/**
 * The random numbers of one replication, written out as a table so that the replication can be worked through by other means: for
 * each source of randomness and each index and repeat that a run may ask for, the uniform number and the value that is made of it.
 * What is always the same is no source and has no rows. A run may need fewer, and for repeats more.
 *
 * <p>Sources are those of {@link RandomSource#of}, by their names. Values: {@code coil/kind} place in {@code line.coils()}, from 0;
 * {@code coil/length} m, with the crops; {@code coil/mass} kg; {@code sheet/NAME} the row taken, from 0 in the order of the sheet;
 * {@code .../time} s, what is drawn, without the time of a travel, and for what is measured only where its row is blank; {@code
 * .../chance}, {@code reject} and {@code break} 1 when it happens and 0 when not; {@code break/place} m beyond the begin of the
 * process section; all others s.
 */
public final class DrawTable {
    private static final String HEADER = "source,index,repeat,uniform,value\n";

    private final Line line;
    private final RandomNumbers numbers;
    private final int last;
    private final int repeats;
    private final boolean rejects;

    /**
     * The random numbers that {@code line} meets.
     *
     * @param numbers of the replication
     * @param last index of each source, {@code >= 1}
     * @param repeats how many times what may be done again at an index is done again, {@code >= 0}
     */
    public DrawTable(Line line, RandomNumbers numbers, int last, int repeats) {
        this.line = line;
        this.numbers = numbers;
        this.last = last;
        this.repeats = repeats;
        this.rejects = line.work().reject().meanExtraPasses() > 0;
    }

    /**
     * Writes the table as CSV, with a header and full precision.
     *
     * @throws runthrough.simulation.records.SimulationException when a time is drawn that is below zero
     */
    public void writeTo(Appendable out) throws IOException {
        out.append(HEADER);
        writeCoils(out);
        writeSheets(out);
        writeElements(out, WorkList.PREPARE, line.work().prepare());
        writeElements(out, WorkList.TAIL, line.work().tail());
        writeElements(out, WorkList.JOIN, line.work().join());
        if (line.work().reject() instanceof Reject.Chance chance) {
            writeChance(out, SourceNames.REJECT, chance.p(), repeats);
        }
        if (!(line.practice() instanceof Practice.Rethread)) {
            writeTimes(out, SourceNames.RESTART, line.process().restartDelay(), 0, repeats);
        }
        if (line.process().downtime().isPresent()) {
            var downtime = line.process().downtime().orElseThrow();
            writeTimes(out, SourceNames.DOWNTIME_RUNNING, downtime.runningTime(), 1, 0);
            writeTimes(out, SourceNames.DOWNTIME_STANDING, downtime.standingTime(), 1, 0);
        }
        if (line.process().jointBreak().filter(breaks -> breaks.chance() > 0).isPresent()) {
            var breaks = line.process().jointBreak().orElseThrow();
            writeChance(out, SourceNames.BREAK, breaks.chance(), 0);
            write(out, SourceNames.BREAK_PLACE, 1, 0, u -> u * breaks.length());
            writeTimes(out, SourceNames.BREAK_REPAIR, breaks.repair(), 1, 0);
        }
    }

    private void writeCoils(Appendable out) throws IOException {
        CoilFeed feed = new CoilFeed(line, numbers);
        if (line.coilSource() instanceof CoilSource.Mix mix && mix.shares().size() > 1) {
            SourceNumbers kind = numbers.source(SourceNames.COIL_KIND);
            for (int number = 1; number <= last; number++) {
                writeRow(out, kind, number, 0, feed.kind(number));
            }
        }
        writeSizes(out, feed, false, numbers.source(SourceNames.COIL_LENGTH));
        writeSizes(out, feed, true, numbers.source(SourceNames.COIL_MASS));
    }

    private void writeSizes(Appendable out, CoilFeed feed, boolean byMass, SourceNumbers source) throws IOException {
        for (int number = 1; number <= last; number++) {
            Coil coil = feed.coil(number);
            if (!coil.size().isConstant() && coil.size() instanceof CoilSize.ByMass == byMass) {
                double length = coil.length(source.uniform(number, 0));
                writeRow(out, source, number, 0, byMass ? length * coil.massPerMetre() : length);
            }
        }
    }

    private void writeSheets(Appendable out) throws IOException {
        List<String> written = new ArrayList<>();
        for (MeasuredRows rows : MeasuredRows.in(line.work())) {
            String name = SourceNames.sheet(rows);
            if (rows.count() > 1 && !written.contains(name)) {
                written.add(name);
                write(out, name, 1, rejects ? repeats : 0, u -> Math.floor(u * rows.count()));
            }
        }
    }

    private void writeElements(Appendable out, WorkList list, List<WorkElement> elements) throws IOException {
        List<SourceNames.OfElement> names = SourceNames.of(line.practice(), list, elements);
        for (int i = 0; i < elements.size(); i++) {
            WorkElement element = elements.get(i);
            int again = rejects && element.redo() ? repeats : 0;
            if (element.time().hasOwnDraws()) {
                writeTimes(out, names.get(i).time(), element.time().drawn(), 1, again);
            }
            if (element.occurrence() instanceof Occurrence.Chance chance) {
                writeChance(out, names.get(i).chance(), chance.p(), again);
            }
        }
    }

    private void writeTimes(Appendable out, String source, Distribution distribution, int first, int again)
            throws IOException {
        if (!distribution.isConstant()) {
            Sampler sampler = new Sampler(distribution, numbers.source(source));
            SourceNumbers uniform = numbers.source(source);
            for (int index = first; index <= last; index++) {
                for (int repeat = 0; repeat <= again; repeat++) {
                    writeRow(out, uniform, index, repeat, sampler.draw(index, repeat));
                }
            }
        }
    }

    private void writeChance(Appendable out, String source, double chance, int again) throws IOException {
        if (chance > 0 && chance < 1) {
            write(out, source, 1, again, u -> u < chance ? 1 : 0);
        }
    }

    private void write(Appendable out, String name, int first, int again, DoubleUnaryOperator value)
            throws IOException {
        SourceNumbers source = numbers.source(name);
        for (int index = first; index <= last; index++) {
            for (int repeat = 0; repeat <= again; repeat++) {
                writeRow(out, source, index, repeat, value.applyAsDouble(source.uniform(index, repeat)));
            }
        }
    }

    /** A name as the user gives it may hold what separates cells. */
    private static String inCell(String name) {
        return name.contains(",") || name.contains("\"") ? "\"" + name.replace("\"", "\"\"") + "\"" : name;
    }

    private static void writeRow(Appendable out, SourceNumbers source, int index, int repeat, double value)
            throws IOException {
        out.append(inCell(source.name()))
                .append(',')
                .append(Integer.toString(index))
                .append(',')
                .append(Integer.toString(repeat))
                .append(',')
                .append(Double.toString(source.uniform(index, repeat)))
                .append(',')
                .append(Double.toString(value))
                .append('\n');
    }
}
