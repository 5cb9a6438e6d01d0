package runthrough.report.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import runthrough.study.cause.Cause;
import runthrough.study.cause.Reason;

class RemovalWordsTest {

    @Test
    void whatGoesWithACauseHasOneName_whereItIsMoreThanTheCause() {
        Reason several = new Reason(Cause.SEVERAL_TOGETHER, Optional.empty());
        assertThat(RemovalWords.name(several)).isEqualTo("all causes but the refill");
        assertThat(RemovalWords.more(several)).contains("all causes but the refill");
        assertThat(RemovalWords.isAll(several)).isTrue();
        Reason again = new Reason(Cause.JOINT_MADE_AGAIN, Optional.empty());
        assertThat(RemovalWords.name(again)).isEqualTo("joint made again");
        assertThat(RemovalWords.more(again)).isEmpty();
    }
}
