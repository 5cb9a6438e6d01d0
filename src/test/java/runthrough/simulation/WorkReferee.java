package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import runthrough.plant.Line;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.WorkRecord;
import runthrough.simulation.records.WorkRecord.WorkList;

/** Judges the work of a run by the rules: who may do what when, and what a joint cycle time is made of. */
final class WorkReferee {
    private final Line line;
    private final Replication run;

    WorkReferee(Line line, Replication run) {
        this.line = line;
        this.run = run;
    }

    void judge() {
        judgeOneAtATime(run.work().stream()
                .filter(work -> work.list() == WorkList.PREPARE && work.pass() == 1)
                .toList());
        if (line.change().crew() == 1) {
            judgeOneAtATime(run.work());
        }
        run.changes().forEach(this::judgeJoint);
        for (int i = 0; i < run.changes().size(); i++) {
            judgePreparation(run.changes().get(i), i);
        }
    }

    /** The parts of {@code work} in which people were at it: it rests while it is put down. */
    private static Stream<double[]> parts(WorkRecord work) {
        Stream.Builder<double[]> parts = Stream.builder();
        double from = work.start();
        for (WorkRecord.PutDown rest : work.putDown()) {
            parts.add(new double[] {from, rest.from()});
            from = rest.to();
        }
        return parts.add(new double[] {from, work.end()}).build();
    }

    private void judgeOneAtATime(List<WorkRecord> work) {
        List<double[]> sorted = work.stream()
                .flatMap(WorkReferee::parts)
                .sorted(Comparator.comparingDouble((double[] part) -> part[0]).thenComparingDouble(part -> part[1]))
                .toList();
        for (int i = 1; i < sorted.size(); i++) {
            assertThat(sorted.get(i)[0]).isGreaterThanOrEqualTo(sorted.get(i - 1)[1]);
        }
    }

    /** Joint cycle time = waiting + work with the strip standing; what is prepared again is waited for. */
    private void judgeJoint(ChangeRecord change) {
        List<WorkRecord> standing = run.work().stream()
                .filter(work -> work.change() == change.number())
                .filter(work -> work.list() != WorkList.PREPARE || work.pass() > 1)
                .toList();
        double worked = standing.stream()
                .filter(work -> work.list() != WorkList.PREPARE)
                .mapToDouble(work -> work.end() - work.start())
                .sum();
        assertThat(change.jointCycleTime())
                .isCloseTo(change.waiting() + worked, within(1e-9 * Math.max(1, change.released())));
        assertThat(change.waitingForPreparation()).isGreaterThanOrEqualTo(0);
        assertThat(change.waitingForPeople()).isGreaterThanOrEqualTo(0);
        assertThat(standing).allMatch(work -> work.start() >= change.tailStopped() && work.end() <= change.released());
        assertThat(standing).allMatch(work -> work.pass() <= change.passes());
        assertThat(standing).allMatch(work -> work.putDown().isEmpty());
        if (!line.practice().hasJoiner()) {
            assertThat(standing).hasSize(1);
        }
    }

    /** The coil joined at {@code change} was prepared in time, and not before there was an uncoiler for it. */
    private void judgePreparation(ChangeRecord change, int index) {
        List<WorkRecord> prepared = run.work().stream()
                .filter(work -> work.change() == change.number() && work.list() == WorkList.PREPARE && work.pass() == 1)
                .toList();
        assertThat(prepared).allMatch(work -> work.end() <= change.released());
        // Coil n + 1 stands where coil n + 1 - U did, gone by its T1 at the latest, and with no path not before it.
        int freed = index + 1 - line.entry().uncoilers();
        if (freed >= 0 && line.entry().uncoilerPath() == 0) {
            double gone = run.changes().get(freed).tailStopped();
            assertThat(prepared).allMatch(work -> work.start() >= gone);
        }
    }
}
