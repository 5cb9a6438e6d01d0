package runthrough.simulation.records;

import java.util.List;

/**
 * What took time at a joint; all in seconds.
 *
 * @param tail what each element of the tail list took in the first pass, in the order of the list; NaN where it was not done
 * @param join the same of the join list
 * @param afterFirstPass from the end of the first pass until the joint was released: 0 where the first joint was good
 * @param waitedAfterFirstPass the waiting within that time
 * @param waitingByElement the waiting for preparation, by the element of the prepare list that was waited for
 */
public record WorkDone(
        List<Double> tail,
        List<Double> join,
        double afterFirstPass,
        double waitedAfterFirstPass,
        List<Double> waitingByElement) {

    public WorkDone {
        tail = List.copyOf(tail);
        join = List.copyOf(join);
        waitingByElement = List.copyOf(waitingByElement);
    }

    /** The same of arrays, which are copied. */
    public static WorkDone of(
            double[] tail,
            double[] join,
            double afterFirstPass,
            double waitedAfterFirstPass,
            double[] waitingByElement) {
        return new WorkDone(list(tail), list(join), afterFirstPass, waitedAfterFirstPass, list(waitingByElement));
    }

    private static List<Double> list(double[] seconds) {
        Double[] boxed = new Double[seconds.length];
        for (int i = 0; i < boxed.length; i++) {
            boxed[i] = seconds[i];
        }
        return List.of(boxed);
    }
}
