package runthrough.plant;

import java.util.List;
import runthrough.quantity.UnitSystem;

/**
 * What was asked: a line, how to run it, and how the results are to be shown.
 *
 * @param title of the scenario
 * @param notes of the user, in order; may be empty
 * @param line the described line
 * @param run how long and how often to run it
 * @param resultsIn units of everything that people read
 */
public record SimulationRequest(String title, List<String> notes, Line line, RunPlan run, UnitSystem resultsIn) {
    public SimulationRequest {
        notes = List.copyOf(notes);
    }

    /** The same question about another line. */
    public SimulationRequest with(Line other) {
        return new SimulationRequest(title, notes, other, run, resultsIn);
    }

    /** The same line under another run plan. */
    public SimulationRequest with(RunPlan other) {
        return new SimulationRequest(title, notes, line, other, resultsIn);
    }

    /** The same question, answered in other units. */
    public SimulationRequest with(UnitSystem other) {
        return new SimulationRequest(title, notes, line, run, other);
    }
}
