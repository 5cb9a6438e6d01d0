package runthrough.simulation.random;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.simulation.records.WorkRecord.WorkList;
import umontreal.ssj.rng.MRG32k3a;

/**
 * The random numbers of one replication, written out as a table so that the replication can be worked through by other means: for each
 * source of randomness the values in the order in which a run draws them. A run may need fewer.
 *
 * <p>Sources, with the unit of their values: {@code coil kind} (place in {@code line.coils()}, from 0), {@code coil usable
 * length} (m; not above 0 where it is shorter than its crops), {@code reject} (1 when the pass is rejected, 0 when it is good), {@code restart delay}, {@code own running
 * time}, {@code own standing time}, {@code rethread} (s), and for each element, by its list and its place there from 1,
 * {@code prepare 1 time} (s; what is drawn, without the time of a travel) and, where it is random, {@code prepare 1
 * done} (1 or 0). Coil n has value n, whether or not it is used. For measured rows, by their place in {@code
 * MeasuredRows.in(line.change())} from 1, {@code rows 1} (which row coil change n takes, from 0) and {@code rows 1 again} (which
 * the n-th pass that makes a joint again takes); an element that is measured draws its own {@code time} only for a blank.
 */
public final class DrawTable {
    private static final String HEADER = "source,draw,value\n";

    private final Line line;
    private final Streams streams;
    private final int coils;
    private final int draws;

    /**
     * The random numbers that {@code line} meets in replication {@code index}, from 0, under {@code seed}.
     *
     * @param coils how many coils to draw, {@code >= 1}
     * @param draws how many values to draw from every other source, {@code >= 1}
     */
    public DrawTable(Line line, long seed, int index, int coils, int draws) {
        this.line = line;
        this.streams = new Streams(seed, index);
        this.coils = coils;
        this.draws = draws;
    }

    /**
     * Writes the table as CSV, with a header and full precision.
     *
     * @throws runthrough.simulation.records.SimulationException when a time is drawn that is below zero
     */
    public void writeTo(Appendable out) throws IOException {
        out.append(HEADER);
        writeCoils(out);
        writeRows(out);
        if (line.practice() instanceof Practice.Rethread rethread) {
            writeElements(out, WorkList.PREPARE, line.change().prepare());
            writeValues(out, "rethread", rethread.time(), Source.duration(WorkList.JOIN, 0));
        } else {
            writeElements(out, WorkList.PREPARE, line.change().prepare());
            writeElements(out, WorkList.TAIL, line.change().tail());
            writeElements(out, WorkList.JOIN, line.change().join());
            if (line.change().reject() instanceof Reject.Chance chance) {
                writeChances(out, "reject", chance.p(), Source.REJECT);
            }
            writeValues(out, "restart delay", line.process().restartDelay(), Source.RESTART_DELAY);
        }
        if (line.process().downtime().isPresent()) {
            var stops = line.process().downtime().orElseThrow();
            writeValues(out, "own running time", stops.runningTime(), Source.OWN_RUNNING);
            writeValues(out, "own standing time", stops.standingTime(), Source.OWN_STANDING);
        }
    }

    private void writeRows(Appendable out) throws IOException {
        List<RowDraws> all = RowDraws.of(line.change(), streams, 0);
        for (int i = 0; i < all.size(); i++) {
            String source = "rows " + (i + 1);
            for (int number = 1; number <= coils; number++) {
                writeRow(out, source, number, all.get(i).row(number, 1));
            }
            for (int number = 1; number <= draws; number++) {
                writeRow(out, source + " again", number, all.get(i).nextAgain());
            }
        }
    }

    private void writeCoils(Appendable out) throws IOException {
        CoilFeed feed = new CoilFeed(line, streams, 0);
        // Not asked of the feed: a coil shorter than its crops is an error only when it comes to run.
        MRG32k3a size = streams.stream(Source.COIL_SIZE);
        for (int number = 1; number <= coils; number++) {
            writeRow(out, "coil kind", number, feed.kind(number));
            writeRow(out, "coil usable length", number, feed.coil(number).usableLength(size.nextDouble()));
        }
    }

    private void writeElements(Appendable out, WorkList list, List<WorkElement> elements) throws IOException {
        for (int i = 0; i < elements.size(); i++) {
            String source = list.name().toLowerCase(Locale.ROOT) + " " + (i + 1);
            writeValues(out, source + " time", elements.get(i).time().drawn(), Source.duration(list, i));
            if (elements.get(i).occurrence() instanceof Occurrence.Chance chance) {
                writeChances(out, source + " done", chance.p(), Source.chance(list, i));
            }
        }
    }

    private void writeValues(Appendable out, String source, Distribution distribution, int stream) throws IOException {
        Sampler sampler = new Sampler(source, distribution, streams, stream);
        for (int number = 1; number <= draws; number++) {
            writeRow(out, source, number, sampler.next(number, 1));
        }
    }

    private void writeChances(Appendable out, String source, double chance, int stream) throws IOException {
        MRG32k3a uniform = streams.stream(stream);
        for (int number = 1; number <= draws; number++) {
            writeRow(out, source, number, uniform.nextDouble() < chance ? 1 : 0);
        }
    }

    private static void writeRow(Appendable out, String source, int number, double value) throws IOException {
        out.append(source)
                .append(',')
                .append(Integer.toString(number))
                .append(',')
                .append(Double.toString(value))
                .append('\n');
    }
}
