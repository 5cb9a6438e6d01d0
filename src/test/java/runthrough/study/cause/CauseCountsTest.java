package runthrough.study.cause;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import runthrough.simulation.records.WorkRecord.WorkList;

class CauseCountsTest {
    private static final Reason.Element WELD = new Reason.Element(WorkList.JOIN, 2, "weld");
    private static final Reason LONG = Reason.of(Cause.ELEMENT_TOOK_LONG, WELD);
    private static final Reason PEOPLE = Reason.of(Cause.WAITING_FOR_PEOPLE);
    private static final Reason PRACTICE = Reason.of(Cause.PRACTICE);

    @Test
    void countsOfReplicationsAddUp() {
        CauseCounts counts = new CauseCounts(Map.of(Cause.WAITING_FOR_PEOPLE, 3L, Cause.NOT_THE_JOINT, 2L))
                .plus(new CauseCounts(Map.of(Cause.WAITING_FOR_PEOPLE, 4L, Cause.BOTH_WAITS, 1L)));

        assertThat(counts.counts())
                .isEqualTo(Map.of(Cause.WAITING_FOR_PEOPLE, 7L, Cause.NOT_THE_JOINT, 2L, Cause.BOTH_WAITS, 1L));
        assertThat(counts.count(Cause.WAITING_FOR_PEOPLE)).isEqualTo(7);
        assertThat(counts.count(Cause.PRACTICE)).isZero();
        assertThat(counts.total()).isEqualTo(10);
        assertThat(counts.main()).contains(Cause.WAITING_FOR_PEOPLE);
    }

    @Test
    void ofEqualCountsTheFirstInTheOrderOfTrialIsTheMainOne_noneWhereNothingStopped() {
        assertThat(new CauseCounts(Map.of(Cause.NOT_THE_JOINT, 2L, Cause.WAITING_FOR_PEOPLE, 2L)).main())
                .contains(Cause.WAITING_FOR_PEOPLE);
        assertThat(new CauseCounts(Map.of(Cause.NOT_THE_JOINT, 0L)).main()).isEmpty();
        assertThat(CauseCounts.none().main()).isEmpty();
    }

    @Test
    void mostCoilChangesComeFirst_thenMostLostTime_thenTheOrderOfTrial() {
        NamedCauses causes = new NamedCauses();
        NamedCauses.Count few = new NamedCauses.Count(Reason.of(Cause.NOT_THE_JOINT), 1, 1, 90);
        NamedCauses.Count people = new NamedCauses.Count(PEOPLE, 3, 1, 10);
        NamedCauses.Count slow = new NamedCauses.Count(LONG, 3, 1, 20);
        NamedCauses.Count practice = new NamedCauses.Count(PRACTICE, 3, 1, 10);
        causes.add(List.of(few, people, slow, practice));

        assertThat(causes.list()).containsExactly(slow, practice, people, few);
    }

    /** The same cause by two elements. */
    @Test
    void byCauseElementsAddUp() {
        Reason other = Reason.of(Cause.ELEMENT_TOOK_LONG, new Reason.Element(WorkList.TAIL, 0, "shear"));
        NamedCauses causes = new NamedCauses();
        causes.add(List.of(new NamedCauses.Count(LONG, 3, 1, 20), new NamedCauses.Count(other, 2, 1, 20)));

        assertThat(causes.byCause()).isEqualTo(new CauseCounts(Map.of(Cause.ELEMENT_TOOK_LONG, 5L)));
    }

    @Test
    void aCauseIsSaidWithItsElement() {
        assertThat(LONG.words()).isEqualTo("element took long: weld");
        assertThat(PEOPLE.words()).isEqualTo("waiting for people");
        assertThat(WELD.path()).isEqualTo("join/weld");
    }

    /** One element was waited for; to prepare sooner takes all of them. */
    @Test
    void ofPreparationAllIsRemoved_ofTheJointTheElement() {
        Reason waited = Reason.of(Cause.WAITING_FOR_PREPARATION, new Reason.Element(WorkList.PREPARE, 1, "load"));

        assertThat(waited.removed()).isEqualTo(new Reason(Cause.WAITING_FOR_PREPARATION, Optional.empty()));
        assertThat(LONG.removed()).isEqualTo(LONG);
    }
}
