package runthrough.report.sensitivity;

import java.util.List;
import java.util.Optional;
import runthrough.plant.Line;
import runthrough.plant.WorkElement;
import runthrough.report.LargestCause;
import runthrough.study.cause.Cause;
import runthrough.study.cause.NamedCauses;
import runthrough.study.cause.Reason;
import runthrough.study.sensitivity.Sensitivity;

/** Points to the cause of most coil changes that did not run through, which need not have a share in any variance. */
final class CauseWords {
    private CauseWords() {}

    /** A sentence or two; empty where all coil changes ran through, and for the practice alone. */
    static Optional<String> of(Sensitivity sensitivity) {
        List<NamedCauses.Count> causes = sensitivity.causes();
        return causes.stream()
                .findFirst()
                .filter(most -> most.reason().cause() != Cause.PRACTICE)
                .map(most -> "Largest cause of coil changes that did not run through: "
                        + LargestCause.of(causes).orElseThrow()
                        + "; the verdict of this line lists all causes, with what each is worth."
                        + planned(sensitivity.request().line(), most.reason()));
    }

    /** What comes by plan cannot be found among the shares of variance. */
    private static String planned(Line line, Reason reason) {
        return reason.element()
                .filter(element -> reason.cause() == Cause.OCCASIONAL_ELEMENT && isPlanned(line, element))
                .map(element -> " It comes by plan and not at random, so that its coming has no share of variance.")
                .orElse("");
    }

    private static boolean isPlanned(Line line, Reason.Element element) {
        List<WorkElement> list = switch (element.list()) {
            case PREPARE -> line.change().prepare();
            case TAIL -> line.change().tail();
            case JOIN -> line.change().join();
        };
        return !list.get(element.place()).occurrence().isRandom();
    }
}
