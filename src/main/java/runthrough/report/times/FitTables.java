package runthrough.report.times;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Value;
import runthrough.report.described.DistributionYaml;
import runthrough.study.fitting.Candidate;
import runthrough.study.fitting.FittedParameter;

/** What was fitted to each element, and with which parameters. */
final class FitTables {
    private static final Notation CRITERION = Notation.PLAIN.with(Rounding.CRITERION);

    private FitTables() {}

    /** A distribution fitted to an element. */
    private record Fit(String element, Candidate candidate) {
        String distribution() {
            return candidate.distribution().label();
        }
    }

    private static Stream<Fit> all(TimesResult result) {
        return IntStream.range(0, result.fits().size())
                .boxed()
                .flatMap(i -> result.fits().get(i).candidates().stream()
                        .map(candidate -> new Fit(result.label(i), candidate)));
    }

    static Table fits(TimesResult result) {
        TableMaker<Fit> table = TableMaker.<Fit>of(
                        "Distributions fitted to each element, best AICc first; limits are those that 5 % of samples from the"
                                + " distribution exceed")
                .intoFile("fits.csv")
                .words("element", Fit::element)
                .words("distribution", Fit::distribution)
                .pageWords(
                        "with",
                        fit -> TimesWords.distribution(
                                fit.candidate().distribution().distribution()))
                .fileWords(
                        "as in a scenario",
                        fit -> DistributionYaml.of(
                                fit.candidate().distribution().distribution()))
                .fileNumber(
                        "log likelihood",
                        CRITERION,
                        fit -> fit.candidate().distribution().logLikelihood())
                .fileNumber(
                        "AIC", CRITERION, fit -> fit.candidate().distribution().aic())
                .number("AICc", CRITERION, fit -> fit.candidate().aicc());
        TimesWords.add(
                table,
                "A²",
                "A2",
                Notation.PLAIN,
                fit -> fit.candidate().distance().andersonDarling());
        TimesWords.add(
                table,
                "limit",
                "limit of A2",
                Notation.PLAIN,
                fit -> fit.candidate().limits().andersonDarling());
        TimesWords.add(
                table,
                "p",
                "p of A2",
                Notation.PROBABILITY,
                fit -> fit.candidate().p1());
        table.number("D", Notation.PLAIN, fit -> fit.candidate().distance().kolmogorovSmirnov());
        TimesWords.add(
                table,
                "limit",
                "limit of D",
                Notation.PLAIN,
                fit -> fit.candidate().limits().kolmogorovSmirnov());
        TimesWords.add(
                table,
                "p",
                "p of D",
                Notation.PROBABILITY,
                fit -> fit.candidate().p2());
        return table.of(all(result).toList());
    }

    private record Parameter(Fit fit, FittedParameter known) {
        Value value() {
            return TimesWords.known(
                    known.isTime() ? Notation.SECONDS : Notation.PLAIN, known.value(), known.low(), known.high());
        }
    }

    /** A file alone: pages have the distributions with their numbers. */
    static Table parameters(TimesResult result) {
        List<Parameter> rows = all(result)
                .flatMap(fit -> fit.candidate().parameters().stream().map(known -> new Parameter(fit, known)))
                .toList();
        return TableMaker.<Parameter>of("Parameters of the distributions fitted")
                .intoFile("parameters.csv")
                .shownUpTo(0)
                .words("element", row -> row.fit().element())
                .words("distribution", row -> row.fit().distribution())
                .words("parameter", row -> row.known().name())
                .estimate("value", Parameter::value)
                .of(rows);
    }
}
