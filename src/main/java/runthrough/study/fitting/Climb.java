package runthrough.study.fitting;

import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/** Finds the highest point of a likelihood of few parameters by Nelder and Mead's simplex, begun twice. */
final class Climb {
    private static final double EXACTNESS = 1e-13;
    private static final int MOST_STEPS = 20_000;

    private Climb() {}

    /**
     * Where {@code likelihood} is highest.
     *
     * @param start of the climb
     * @param steps first steps in each direction
     */
    static double[] highest(MultivariateFunction likelihood, double[] start, double[] steps) {
        return once(likelihood, once(likelihood, start, steps), steps);
    }

    private static double[] once(MultivariateFunction likelihood, double[] start, double[] steps) {
        return new SimplexOptimizer(EXACTNESS, EXACTNESS)
                .optimize(
                        new MaxEval(MOST_STEPS),
                        new ObjectiveFunction(likelihood),
                        GoalType.MAXIMIZE,
                        new InitialGuess(start),
                        new NelderMeadSimplex(steps))
                .getPoint();
    }
}
