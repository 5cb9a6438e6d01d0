package runthrough.plant;

/** A distribution from 0 on, without an upper end. */
sealed interface FromZero extends Distribution
        permits NormalDistributions.Normal,
                NormalDistributions.Lognormal,
                LifetimeDistributions.Gamma,
                LifetimeDistributions.Weibull,
                LifetimeDistributions.Exponential {

    @Override
    default double lowest() {
        return 0;
    }

    @Override
    default double highest() {
        return Double.POSITIVE_INFINITY;
    }
}
