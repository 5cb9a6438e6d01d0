package runthrough.simulation.work;

import runthrough.plant.CoilChange;
import runthrough.plant.Line;
import runthrough.simulation.random.CoilFeed;
import runthrough.simulation.random.RandomNumbers;
import runthrough.simulation.records.WorkRecord.WorkList;

/** The three lists of work of a line, with their random numbers. */
public final class WorkLists {
    private final WorkQueue prepare;
    private final WorkQueue tail;
    private final WorkQueue join;

    /** The work of {@code line} on the coils of {@code feed}. */
    public WorkLists(Line line, CoilFeed feed, RandomNumbers numbers) {
        CoilChange work = line.work();
        prepare = new WorkQueue(line.practice(), WorkList.PREPARE, work.prepare(), 0, feed, numbers);
        tail = new WorkQueue(line.practice(), WorkList.TAIL, work.tail(), 0, feed, numbers);
        join = new WorkQueue(line.practice(), WorkList.JOIN, work.join(), work.joinShorterBy(), feed, numbers);
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
