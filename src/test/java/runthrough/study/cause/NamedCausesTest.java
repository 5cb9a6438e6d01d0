package runthrough.study.cause;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NamedCausesTest {
    private static final Reason PEOPLE = Reason.of(Cause.WAITING_FOR_PEOPLE);

    @Test
    void coilChangesStopsAndLostTimeOfACauseAddUpOverReplications() {
        // Rule CAUSE-9: 3 + 4 coil changes, 2 + 5 starved stops, 10 + 20.5 s.
        NamedCauses causes = new NamedCauses();
        causes.add(List.of(new NamedCauses.Count(PEOPLE, 3, 2, 10)));
        causes.add(List.of(new NamedCauses.Count(PEOPLE, 4, 5, 20.5)));

        assertThat(causes.list()).containsExactly(new NamedCauses.Count(PEOPLE, 7, 7, 30.5));
    }
}
