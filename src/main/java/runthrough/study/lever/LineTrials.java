package runthrough.study.lever;

import java.util.Optional;
import runthrough.plant.Line;
import runthrough.study.Evaluation;

/** Tries variants of a line, all under the same random numbers. */
@FunctionalInterface
public interface LineTrials {

    /** What {@code line} gives; empty where it is refused or cannot go on. */
    Optional<Evaluation> attempt(Line line);
}
