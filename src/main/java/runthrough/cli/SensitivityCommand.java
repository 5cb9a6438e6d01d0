package runthrough.cli;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import runthrough.cli.option.QuantityConverter;
import runthrough.cli.option.WholeNumber;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.quantity.Dimension;
import runthrough.report.Answer;
import runthrough.report.Provenance;
import runthrough.report.sensitivity.SensitivityAnswer;
import runthrough.scenario.ScenarioFile;
import runthrough.study.StudyListener;
import runthrough.study.sensitivity.SensitivityStudy;
import runthrough.web.study.UsualSwings;

/** Which inputs and random times change the answer, and by how much? */
@Command(
        name = "sensitivity",
        description =
                "Shows which inputs change the margin and the share run through: each is set low and high, one at a time. Also shows "
                        + "how much of their variance each random source explains.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {ExitCode.DONE_MEANS, ExitCode.INTERNAL_ERROR_MEANS, ExitCode.BAD_INPUT_MEANS},
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough sensitivity scenarios/tube-line.yaml",
            "  runthrough sensitivity my-line.yaml --range entry.top-speed=80m/min..110m/min",
            "  runthrough sensitivity my-line.yaml --json --no-report > sensitivity.json"
        })
final class SensitivityCommand extends StudyCommand {
    @Option(
            names = "--samples",
            paramLabel = "N",
            converter = Samples.class,
            description =
                    "Replications of each kind for the shares of variance; by default as many as take a second or two.")
    private @Nullable Long samples;

    @Option(
            names = "--range",
            paramLabel = "PATH=LOW..HIGH",
            description = {
                "The range of an input, such as",
                "entry.top-speed=80m/min..110m/min; may be given several times.",
                "The command inputs lists the numbers of a scenario by their paths."
            })
    private List<String> ranges = new ArrayList<>();

    @Option(
            names = "--usual-range",
            paramLabel = "SHARE",
            converter = Usual.class,
            description = "How far every other input is changed, down and up; 10%% of its value by default.")
    private double usual = UsualSwings.USUAL;

    SensitivityCommand(Environment environment) {
        super(environment, "sensitivity");
    }

    @Override
    Study study(Scenario asked, double target) {
        ScenarioFile file = asked.file().saying(asked.settings());
        SensitivityStudy study = new SensitivityStudy(
                asked.request(),
                target,
                new SwingRanges(file, usual).swings(ranges),
                samples == null ? 0 : Math.toIntExact(samples));
        return (threads, listener, warnings, provenance) ->
                SensitivityAnswer.of(study.run(threads, listener), usual, warnings, provenance);
    }

    /** The answer for {@code asked} with nothing stated: every input moved by the usual part of its value. */
    static Answer answer(Scenario asked, int threads, StudyListener listener, Provenance provenance) {
        ScenarioFile file = asked.file().saying(asked.settings());
        SensitivityStudy study = new SensitivityStudy(
                asked.request(),
                asked.request().run().target(),
                new SwingRanges(file, UsualSwings.USUAL).swings(List.of()),
                0);
        return SensitivityAnswer.of(study.run(threads, listener), UsualSwings.USUAL, List.of(), provenance);
    }

    /** A part of a value. */
    static final class Usual extends QuantityConverter {
        Usual() {
            super(
                    Dimension.SHARE,
                    QuantityConverter::isWithin,
                    "must be more than 0 % and less than 100 %. Give a part of the value, such as 10%.");
        }
    }

    static final class Samples extends WholeNumber {
        Samples() {
            super(SensitivityStudy.FEWEST_SAMPLES, 100_000);
        }
    }
}
