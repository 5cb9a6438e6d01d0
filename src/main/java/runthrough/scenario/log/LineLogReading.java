package runthrough.scenario.log;

import java.util.List;
import runthrough.linelog.LineLog;
import runthrough.scenario.source.Problem;

/** What came of reading a log. */
public sealed interface LineLogReading {

    /**
     * It can be used.
     *
     * @param warnings what the user should know all the same
     */
    record Accepted(LineLog log, List<Problem> warnings) implements LineLogReading {
        public Accepted {
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * It cannot be used.
     *
     * @param problems all that is wrong, in the order of lines and columns; at least one
     * @param further how many more there are than are listed
     */
    record Refused(List<Problem> problems, int further) implements LineLogReading {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
