package runthrough.report;

import java.util.OptionalDouble;
import runthrough.study.fitting.Candidate;
import runthrough.study.fitting.Known;

/** What JSON tells of a law fitted to the times of an element. */
final class FitDocument {
    private static final JsonShape<Known> PARAMETER = JsonShape.<Known>named("parameter")
            .text("name", "What it is.", Known::name)
            .flag("time", "Whether it is a time in seconds, not a plain number.", Known::isTime)
            .number("value", "As fitted.", Known::value)
            .optionalNumber("low", "Lower end of its 95 % interval.", known -> OptionalDouble.of(known.low()))
            .optionalNumber("high", "Upper end.", known -> OptionalDouble.of(known.high()));

    static final JsonShape<Candidate> SHAPE = JsonShape.<Candidate>named("fit")
            .text("law", "Name of the law.", fit -> fit.law().label())
            .text(
                    "in_scenario",
                    "The law as a scenario has it.",
                    fit -> LawYaml.of(fit.law().law()))
            .number(
                    "log_likelihood",
                    "Logarithm of the likelihood.",
                    fit -> fit.law().logLikelihood())
            .number("aic", "Akaike's criterion.", fit -> fit.law().aic())
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
