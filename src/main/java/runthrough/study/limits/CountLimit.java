package runthrough.study.limits;

import java.util.List;
import java.util.OptionalInt;
import runthrough.study.Evaluation;

/**
 * The smallest number of people or uncoilers with which the target is met.
 *
 * @param what is counted
 * @param present how many there are now
 * @param smallest the smallest number at which the share seen meets the target; empty when none that was tried does
 * @param sure the smallest number at which the target is shown to be met; empty when none that was tried is
 * @param closedForm the smallest number at which by closed form nothing is overloaded; empty when something is with all of them
 * @param differences why that is not the smallest by simulation, the weightiest first; empty when they agree
 * @param tried each number that was tried, from 1 up
 */
public record CountLimit(
        What what,
        int present,
        OptionalInt smallest,
        OptionalInt sure,
        OptionalInt closedForm,
        List<LineLimit.Difference> differences,
        List<Tried> tried) {

    public CountLimit {
        differences = List.copyOf(differences);
        tried = List.copyOf(tried);
    }

    /** What is counted. */
    public enum What {
        /** People; where they come by shifts those of the largest shift, every other one having as many more or fewer. */
        CREW,
        /** Uncoilers. */
        UNCOILERS
    }

    /** A number, and what became of the line with it. */
    public record Tried(int count, Evaluation evaluation) {}
}
