package runthrough.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import runthrough.cli.option.QuantityConverter;
import runthrough.cli.option.WholeNumber;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.report.uncertainty.UncertaintyAnswer;
import runthrough.report.uncertainty.UncertaintyPrecision;
import runthrough.study.uncertainty.UncertaintyStudy;

/** How well is the answer known, the times being known from observations only? */
@Command(
        name = "uncertainty",
        description =
                "Resamples the observed times of a scenario and shows how well the share run through and the capacity are known "
                        + "when the times are known from so many observations only, beside what simulation noise alone leaves open; and "
                        + "how many more observations it takes to know them as well as asked for.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {ExitCode.DONE_MEANS, ExitCode.INTERNAL_ERROR_MEANS, ExitCode.BAD_INPUT_MEANS},
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough uncertainty scenarios/tube-line-measured.yaml",
            "  runthrough uncertainty my-line.yaml --precision 0.5%% --capacity-precision 2%%"
        })
final class UncertaintyCommand extends StudyCommand {

    @Option(
            names = "--precision",
            paramLabel = "SHARE",
            converter = QuantityConverter.Within.class,
            description = "How well the share is to be known, either way; 1%% by default.")
    private @Nullable Double precision;

    @Option(
            names = "--capacity-precision",
            paramLabel = "SHARE",
            converter = QuantityConverter.Within.class,
            description = "How well the capacity is to be known, as a part of it, either way; 5%% by default.")
    private @Nullable Double capacityPrecision;

    @Option(
            names = "--resamples",
            paramLabel = "N",
            converter = Resamples.class,
            description = "How often the observations are resampled; 200 by default.")
    private @Nullable Long resamples;

    UncertaintyCommand(Environment environment) {
        super(environment, "uncertainty");
    }

    @Override
    Study study(Scenario scenario, double target) {
        UncertaintyPrecision usual = UncertaintyPrecision.USUAL;
        UncertaintyPrecision asked = new UncertaintyPrecision(
                precision == null ? usual.share() : precision,
                capacityPrecision == null ? usual.capacity() : capacityPrecision);
        int count = resamples == null ? UncertaintyStudy.USUAL : Math.toIntExact(resamples);
        UncertaintyStudy study = new UncertaintyStudy(scenario.request(), target, count);
        return (threads, listener, warnings, provenance) ->
                UncertaintyAnswer.of(study.run(threads, listener), asked, warnings, provenance);
    }

    static final class Resamples extends WholeNumber {
        Resamples() {
            super(UncertaintyStudy.FEWEST, 10_000);
        }
    }
}
