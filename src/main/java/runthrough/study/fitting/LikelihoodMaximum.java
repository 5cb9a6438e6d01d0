package runthrough.study.fitting;

import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/** Finds the highest point of a likelihood of few parameters by Nelder and Mead's simplex. */
final class LikelihoodMaximum {
    private static final double EXACTNESS = 1e-13;
    /** A likelihood as near its maximum as this is as good. */
    private static final double NEAR_ENOUGH = 1e-7;

    private static final int MOST_STEPS = 20_000;

    private LikelihoodMaximum() {}

    /**
     * Where {@code likelihood} is highest, to the last digits: begun anew from where the first climb ended.
     *
     * @param start of the climb
     * @param steps first steps in each direction
     */
    static double[] highest(MultivariateFunction likelihood, double[] start, double[] steps) {
        return once(likelihood, once(likelihood, start, steps, EXACTNESS), steps, EXACTNESS);
    }

    /** Where {@code likelihood} is all but highest, in a single climb: for where digits are not worth their time. */
    static double[] high(MultivariateFunction likelihood, double[] start, double[] steps) {
        return once(likelihood, start, steps, NEAR_ENOUGH);
    }

    private static double[] once(MultivariateFunction likelihood, double[] start, double[] steps, double exactness) {
        return new SimplexOptimizer(exactness, exactness)
                .optimize(
                        new MaxEval(MOST_STEPS),
                        new ObjectiveFunction(likelihood),
                        GoalType.MAXIMIZE,
                        new InitialGuess(start),
                        new NelderMeadSimplex(steps))
                .getPoint();
    }
}
