package runthrough.report.times;

import java.util.OptionalDouble;
import runthrough.report.JsonShape;
import runthrough.report.described.DistributionYaml;
import runthrough.study.fitting.Candidate;
import runthrough.study.fitting.FittedParameter;

/** JSON of a distribution fitted to the times of an element. */
final class FitDocument {
    private static final JsonShape<FittedParameter> PARAMETER = JsonShape.<FittedParameter>named("parameter")
            .text("name", "What it is.", FittedParameter::name)
            .flag("time", "Whether it is a time in seconds, not a plain number.", FittedParameter::isTime)
            .number("value", "As fitted.", FittedParameter::value)
            .optionalNumber("low", "Lower end of its 95 % interval.", known -> OptionalDouble.of(known.low()))
            .optionalNumber("high", "Upper end.", known -> OptionalDouble.of(known.high()));

    static final JsonShape<Candidate> SHAPE = JsonShape.<Candidate>named("fit")
            .text(
                    "distribution",
                    "Name of the distribution.",
                    fit -> fit.distribution().label())
            .text(
                    "in_scenario",
                    "The distribution as a scenario has it.",
                    fit -> DistributionYaml.of(fit.distribution().distribution()))
            .number(
                    "log_likelihood",
                    "Logarithm of the likelihood.",
                    fit -> fit.distribution().logLikelihood())
            .number("aic", "Akaike's criterion.", fit -> fit.distribution().aic())
            .optionalNumber("aicc", "The same, corrected for few times.", fit -> OptionalDouble.of(fit.aicc()))
            .number(
                    "anderson_darling",
                    "Distance A squared.",
                    fit -> fit.distance().andersonDarling())
            .number(
                    "anderson_darling_limit",
                    "What 5 % of samples exceed.",
                    fit -> fit.limits().andersonDarling())
            .number("anderson_darling_p", "Share of samples as far.", Candidate::p1)
            .number("kolmogorov_smirnov", "Distance D.", fit -> fit.distance().kolmogorovSmirnov())
            .number(
                    "kolmogorov_smirnov_limit",
                    "What 5 % of samples exceed.",
                    fit -> fit.limits().kolmogorovSmirnov())
            .number("kolmogorov_smirnov_p", "Share of samples as far.", Candidate::p2)
            .list("parameters", "What describes it, with intervals.", PARAMETER, Candidate::parameters);

    private FitDocument() {}
}
