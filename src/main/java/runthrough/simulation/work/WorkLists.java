package runthrough.simulation.work;

import java.util.List;
import runthrough.plant.CoilChange;
import runthrough.plant.Line;
import runthrough.simulation.random.CoilFeed;
import runthrough.simulation.random.RowDraws;
import runthrough.simulation.random.Streams;
import runthrough.simulation.records.WorkRecord.WorkList;

/** The three lists of work of a line, with their random numbers. */
public final class WorkLists {
    private final WorkQueue prepare;
    private final WorkQueue tail;
    private final WorkQueue join;

    /** The work of {@code line} on the coils of {@code feed}. */
    public WorkLists(Line line, CoilFeed feed, Streams streams) {
        CoilChange work = line.work();
        List<RowDraws> rows = RowDraws.of(work, streams, line.entry().uncoilers());
        prepare = new WorkQueue(WorkList.PREPARE, work.prepare(), feed, streams, rows);
        tail = new WorkQueue(WorkList.TAIL, work.tail(), feed, streams, rows);
        join = new WorkQueue(WorkList.JOIN, work.join(), feed, streams, rows);
    }

    WorkQueue prepare() {
        return prepare;
    }

    WorkQueue tail() {
        return tail;
    }

    WorkQueue join() {
        return join;
    }
}
