package runthrough.report.verdict;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.Line;
import runthrough.quantity.UnitSystem;
import runthrough.report.Provenance;
import runthrough.report.StudyWords;
import runthrough.report.Texts;
import runthrough.study.SequentialResult;
import runthrough.study.StudyResult;
import runthrough.study.Verdict;
import runthrough.study.cause.Reason;
import runthrough.study.lever.CauseWorth;
import runthrough.study.lever.Levers;
import runthrough.study.statistics.RelativeHalfWidth;

/**
 * All that is reported: what the study gave, the hand calculation beside it, what was warned of, and where it comes from.
 *
 * @param study what was asked and what the replications gave
 * @param handCalculation of the kind of coil that is hardest on the line
 * @param precision of the share run through, where one was asked for: whether it was reached
 * @param worths what it would be worth to remove the causes that matter most; none where that was not asked
 * @param levers what would meet the targets; empty where that was not asked
 * @param warnings in words, in order
 * @param provenance what to state so that the result can be made again
 */
public record RunThroughResult(
        StudyResult study,
        HandCalculation handCalculation,
        Optional<RelativeHalfWidth> precision,
        List<CauseWorth> worths,
        Optional<Levers> levers,
        List<String> warnings,
        Provenance provenance) {

    public RunThroughResult {
        worths = List.copyOf(worths);
        warnings = List.copyOf(warnings);
    }

    /** The same with what it would be worth to remove causes. */
    public RunThroughResult with(List<CauseWorth> known) {
        return new RunThroughResult(study, handCalculation, precision, known, levers, warnings, provenance);
    }

    /** The same with what would meet the targets. */
    public RunThroughResult with(Levers known) {
        return new RunThroughResult(
                study, handCalculation, precision, worths, Optional.of(known), warnings, provenance);
    }

    /** What it would be worth to remove {@code reason}, and what goes with it. */
    Optional<CauseWorth> worth(Reason reason) {
        return worths.stream()
                .filter(worth -> worth.reason().equals(reason.removed()))
                .findFirst();
    }

    /** The result of {@code study}, with its hand calculation. */
    public static RunThroughResult of(StudyResult study, List<String> warnings, Provenance provenance) {
        return new RunThroughResult(
                study,
                study.handCalculation(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                all(warnings, study),
                provenance);
    }

    /** The result of a study that was run until its share was known as well as asked for, or the limit was reached. */
    public static RunThroughResult of(SequentialResult sequential, List<String> warnings, Provenance provenance) {
        StudyResult study = sequential.result();
        return new RunThroughResult(
                study,
                study.handCalculation(),
                Optional.of(sequential.halfWidth()),
                List.of(),
                Optional.empty(),
                all(warnings, study),
                provenance);
    }

    /** What was warned of before the run, and what only its result shows. */
    private static List<String> all(List<String> warnings, StudyResult study) {
        return Stream.concat(warnings.stream(), FirstCoil.warning(study).stream())
                .toList();
    }

    /** For its numbers, in its units. */
    public Texts texts() {
        return new Texts(system(), verdict().chance());
    }

    Verdict verdict() {
        return study.verdict();
    }

    Line line() {
        return study.request().line();
    }

    UnitSystem system() {
        return study.request().resultsIn();
    }

    boolean isOneStrip() {
        return line().practice().isOneStrip();
    }

    StudyWords words() {
        return new StudyWords(texts());
    }

    /** The stops that coil changes cause, as this line has them. */
    String stops() {
        return isOneStrip() ? "stops for coil changes" : "starved stops";
    }

    /** The time that they cost. */
    String lost() {
        return isOneStrip() ? "lost time" : "lost time (starved)";
    }

    /** What the margin to running through is called: that to the level at which the process slows, if it can slow. */
    String margin() {
        return line().process().slowing().isPresent() ? "margin to slowing" : "margin";
    }

    /** What the strip stands for at a coil change. */
    String joint() {
        return line().practice().hasJoiner() ? "joint cycle time" : "rethread time";
    }
}
