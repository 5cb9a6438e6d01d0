package runthrough.scenario.times;

import java.util.List;
import runthrough.scenario.source.Problem;
import runthrough.timestudy.TimeSheet;

/** What came of reading a time-study sheet. */
public sealed interface TimeSheetReading {

    /**
     * It can be used.
     *
     * @param warnings what the user should know all the same
     */
    record Accepted(TimeSheet sheet, List<Problem> warnings) implements TimeSheetReading {
        public Accepted {
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * It cannot be used.
     *
     * @param problems all that is wrong, in the order of lines and columns; at least one
     * @param further how many more there are than are listed
     * @param warnings what the user should know besides
     */
    record Refused(List<Problem> problems, int further, List<Problem> warnings) implements TimeSheetReading {
        public Refused {
            problems = List.copyOf(problems);
            warnings = List.copyOf(warnings);
        }
    }
}
