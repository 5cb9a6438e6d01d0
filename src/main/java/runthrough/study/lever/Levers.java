package runthrough.study.lever;

import java.util.List;
import runthrough.plant.SimulationRequest;

/**
 * What would meet the targets of a line, lever by lever.
 *
 * @param request what was asked
 * @param answers of the levers, target by target in the order of {@link Lever.What}; none where entry and process are one strip
 * @param ways to meet those targets that are missed, of one lever or two, target by target in the order of their rank; none where
 *     that was not asked
 */
public record Levers(SimulationRequest request, List<LeverAnswer> answers, List<Way> ways) {
    public Levers {
        answers = List.copyOf(answers);
        ways = List.copyOf(ways);
    }

    /** Those of two levers. */
    public List<Way> pairs() {
        return ways.stream().filter(Way::isPair).toList();
    }

    /** Those that are enough. */
    public List<LeverAnswer> enough() {
        return answers.stream()
                .filter(answer -> answer.status() == LeverAnswer.Status.ENOUGH)
                .toList();
    }
}
