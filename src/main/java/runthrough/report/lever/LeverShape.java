package runthrough.report.lever;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import runthrough.report.JsonShape;
import runthrough.study.Goal;
import runthrough.study.cause.Reason;
import runthrough.study.lever.Lever;
import runthrough.study.lever.LeverAnswer;
import runthrough.study.statistics.Estimate;

/** What one lever has to be set to, as JSON. */
public final class LeverShape {
    static final String SI = "In SI units: m, s, m/s, a share, or a number of people or uncoilers.";

    /** Of the JSON. */
    public static final JsonShape<LeverAnswer> SHAPE = JsonShape.<LeverAnswer>named("lever")
            .word(
                    "what",
                    "What is varied, all else as it is.",
                    Lever.What.class,
                    answer -> answer.lever().what())
            .optionalText(
                    "element",
                    "The work element that is shortened, as list/name; null for other levers.",
                    answer -> answer.lever().element().map(Reason.Element::path))
            .word(
                    "goal",
                    "The target that is to be met.",
                    Goal.What.class,
                    answer -> answer.goal().what())
            .word("status", "What came out.", LeverAnswer.Status.class, LeverAnswer::status)
            .number(
                    "present",
                    "Its value now; joint-cycle-time is seconds on every pass of the join work, those off it negative. "
                            + SI,
                    LeverAnswer::present)
            .optionalNumber("value", "The value nearest to it that is enough. " + SI, LeverAnswer::value)
            .optionalNumber(
                    "low",
                    "Lower end of its 95 % interval. " + SI,
                    answer -> answer.crossing().map(found -> found.low()).orElse(OptionalDouble.empty()))
            .optionalNumber(
                    "high",
                    "Upper end of its 95 % interval. " + SI,
                    answer -> answer.crossing().map(found -> found.high()).orElse(OptionalDouble.empty()))
            .flag(
                    "shown",
                    "Whether the target is shown to be met with it; false where the run is too short to show it.",
                    LeverAnswer::isShown)
            .optionalNumber(
                    "good_output_m_per_s",
                    "Good output with it; of a process speed that is enough, else null.",
                    answer -> output(answer.cost(), LeverAnswer.Cost::with))
            .optionalNumber(
                    "good_output_now_m_per_s",
                    "Good output of the line as it is, where that with the value is given.",
                    answer -> output(answer.cost(), LeverAnswer.Cost::now));

    private LeverShape() {}

    /** One side of {@code cost}, for JSON. */
    public static OptionalDouble output(Optional<LeverAnswer.Cost> cost, Function<LeverAnswer.Cost, Estimate> which) {
        return cost.map(output -> OptionalDouble.of(which.apply(output).mean())).orElse(OptionalDouble.empty());
    }
}
