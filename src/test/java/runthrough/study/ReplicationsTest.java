package runthrough.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static runthrough.study.Replications.TRACED_CHANGES;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import runthrough.plant.RunPlan;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeEye;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.SimulationException;
import runthrough.simulation.records.Trace;

class ReplicationsTest {
    private static final ChangeEye NOBODY = change -> {};

    private static final StudyOptions TRACED_FIRST = new StudyOptions(1, Detail.TRACE, Detail.CHANGES);

    private final List<String> asked = new ArrayList<>();

    @Test
    void theFirstHasItsOwnDetail() {
        Replications replications = of(new RunPlan.Extent.Changes(3), 3, TRACED_FIRST);

        assertThat(replications.run(0, NOBODY).trace()).isPresent();
        replications.run(1, NOBODY);
        assertThat(asked).containsExactly("0 TRACE of 3", "1 CHANGES of 3");
    }

    @Test
    void theFirstHasNoLessDetailThanTheOthers() {
        of(new RunPlan.Extent.Changes(3), 3, new StudyOptions(1, Detail.CHANGES, Detail.ELEMENTS))
                .run(0, NOBODY);

        assertThat(asked).containsExactly("0 ELEMENTS of 3");
    }

    @Test
    void ofALongOneOnlyTheBeginningIsTraced() {
        int changes = TRACED_CHANGES + 1;
        Replication first =
                of(new RunPlan.Extent.Changes(changes), changes, TRACED_FIRST).run(0, NOBODY);

        assertThat(asked).containsExactly("0 ELEMENTS of 2001", "0 TRACE of 2000");
        assertThat(first.changes()).hasSize(changes);
        assertThat(first.trace()).isPresent();
    }

    @Test
    void ofAGivenTimeItIsKnownOnlyAfterwardsHowLongItWas() {
        of(new RunPlan.Extent.Time(3600), 3, TRACED_FIRST).run(0, NOBODY);
        of(new RunPlan.Extent.Time(1e9), TRACED_CHANGES + 1, TRACED_FIRST).run(0, NOBODY);

        assertThat(asked)
                .containsExactly("0 ELEMENTS of time", "0 TRACE of time", "0 ELEMENTS of time", "0 TRACE of 2000");
    }

    @Test
    void aRunThatCannotGoOnSaysWhichReplication() {
        Runs.Maker failing = plan -> (index, detail, eye) -> {
            throw new SimulationException("coil 7 is 3 m long, its crops are 4 m");
        };
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(3), 0, 50, 1, 0.9);

        assertThatThrownBy(() -> new Replications(plan, failing, TRACED_FIRST).run(4, NOBODY))
                .isInstanceOf(StudyException.class)
                .hasMessage("replication 5 of 50: coil 7 is 3 m long, its crops are 4 m");
    }

    /** Replications of {@code changes} coil changes each, that write down what they were asked for. */
    private Replications of(RunPlan.Extent extent, int changes, StudyOptions options) {
        ChangeRecord[] all = new ChangeRecord[changes];
        Arrays.fill(all, HandMade.ranThrough(40));
        Runs.Maker maker = plan -> (index, detail, eye) -> {
            String length = plan.extent() instanceof RunPlan.Extent.Changes given ? "" + given.changes() : "time";
            asked.add(index + " " + detail + " of " + length);
            Replication made = HandMade.hour(index, all);
            Optional<Trace> trace =
                    detail == Detail.TRACE ? Optional.of(new Trace(List.of(), HandMade.CAPACITY)) : Optional.empty();
            return new Replication(index, made.totals(), made.changes(), made.work(), trace);
        };
        return new Replications(new RunPlan(extent, 0, 2, 1, 0.9), maker, options);
    }
}
