package runthrough.scenario;

import java.util.List;
import runthrough.plant.SimulationRequest;
import runthrough.plant.handover.Handover;
import runthrough.scenario.source.Problem;

/** What came of reading a scenario. */
public sealed interface ScenarioReading {

    /**
     * It can be run.
     *
     * @param warnings what the user should know all the same
     * @param handover what it says for its document
     */
    record Accepted(SimulationRequest request, List<Problem> warnings, Handover handover) implements ScenarioReading {
        public Accepted {
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * It cannot be run.
     *
     * @param problems all that is wrong, in the order of files, lines and columns; at least one
     * @param further how many more there are than are listed
     * @param warnings what the user should know besides
     * @param described whether it describes a line, which cannot be run; otherwise it cannot be read
     */
    record Refused(List<Problem> problems, int further, List<Problem> warnings, boolean described)
            implements ScenarioReading {
        public Refused {
            problems = List.copyOf(problems);
            warnings = List.copyOf(warnings);
        }
    }
}
