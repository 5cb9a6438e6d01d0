package runthrough.study.lever;

import java.util.List;
import runthrough.plant.SimulationRequest;

/**
 * What would meet the targets of a line, lever by lever.
 *
 * @param request what was asked
 * @param answers of the levers, target by target in the order of {@link Lever.What}; none where entry and process are one strip
 */
public record Levers(SimulationRequest request, List<LeverAnswer> answers) {
    public Levers {
        answers = List.copyOf(answers);
    }

    /** Those that are enough. */
    public List<LeverAnswer> enough() {
        return answers.stream()
                .filter(answer -> answer.status() == LeverAnswer.Status.ENOUGH)
                .toList();
    }
}
