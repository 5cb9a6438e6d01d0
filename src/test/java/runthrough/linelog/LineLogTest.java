package runthrough.linelog;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.linelog.LineEvent.What.JOINT_RELEASED;
import static runthrough.linelog.LineEvent.What.LINE_RUNNING;
import static runthrough.linelog.LineEvent.What.LINE_STOPPED;
import static runthrough.linelog.LineEvent.What.TAIL_STOPPED;

import java.util.List;
import org.junit.jupiter.api.Test;

class LineLogTest {

    private static LineEvent at(double time, LineEvent.What what) {
        return new LineEvent(time, what, "C" + (int) time);
    }

    /** Joint 100 to 160; the process stands from 140 to 190, 30 s beyond the release. Joint 1000 to 1050; no stop. */
    private static final LineLog LOG = LineLog.of(
            "a log",
            List.of(
                    at(100, TAIL_STOPPED),
                    at(140, LINE_STOPPED),
                    at(160, JOINT_RELEASED),
                    at(190, LINE_RUNNING),
                    at(1000, TAIL_STOPPED),
                    at(1050, JOINT_RELEASED),
                    at(1900, TAIL_STOPPED)),
            false);

    @Test
    void aJointLastsFromTailStoppedToReleased_andIsNamedByTheCoilThatEnds() {
        assertThat(LOG.jointCycleTimes()).containsExactly(60, 50);
        assertThat(LOG.joints()).extracting(LineLog.Joint::coil).containsExactly("C100", "C1000");
    }

    @Test
    void aCoilChangeReachesToTheNextTail() {
        assertThat(LOG.changes()).hasSize(2);
        assertThat(LOG.changes()).extracting(LineLog.Change::coilRun).containsExactly(840.0, 850.0);
        assertThat(LOG.changes()).extracting(LineLog.Change::cycle).containsExactly(900.0, 900.0);
        assertThat(LOG.changes()).extracting(LineLog.Change::ranThrough).containsExactly(false, true);
        assertThat(LOG.ranThrough()).isEqualTo(1);
    }

    @Test
    void restartIsTimedFromTheReleaseOfTheJoint() {
        assertThat(LOG.changes().get(0).untilRestart()).isEqualTo(30);
        assertThat(LOG.changes().get(1).untilRestart()).isNaN();
        assertThat(LOG.stops().get(0).duration()).isEqualTo(50);
    }

    @Test
    void aStopBelongsToTheChangeInWhichItBegins_oneBeforeTheFirstTailToNone() {
        LineLog log = LineLog.of(
                "a log",
                List.of(
                        at(10, LINE_STOPPED),
                        at(20, LINE_RUNNING),
                        at(100, TAIL_STOPPED),
                        at(150, JOINT_RELEASED),
                        at(990, LINE_STOPPED),
                        at(1000, TAIL_STOPPED),
                        at(1010, LINE_RUNNING),
                        at(1050, JOINT_RELEASED),
                        at(1900, TAIL_STOPPED)),
                false);

        assertThat(log.stops()).hasSize(2);
        assertThat(log.changes()).extracting(change -> change.stops().size()).containsExactly(1, 0);
        // It had moved before this joint was released.
        assertThat(log.changes().get(0).untilRestart()).isNaN();
    }

    @Test
    void whatTheLogDoesNotSeeBothEndsOfIsLeftOut() {
        LineLog log = LineLog.of(
                "a log",
                List.of(
                        at(10, JOINT_RELEASED),
                        at(20, LINE_RUNNING),
                        at(100, TAIL_STOPPED),
                        at(150, JOINT_RELEASED),
                        at(900, TAIL_STOPPED),
                        at(950, JOINT_RELEASED),
                        at(960, LINE_STOPPED)),
                false);

        assertThat(log.joints()).hasSize(2);
        assertThat(log.changes()).hasSize(1);
        assertThat(log.stops())
                .singleElement()
                .satisfies(stop -> assertThat(stop.duration()).isNaN());
    }
}
