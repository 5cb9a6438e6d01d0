package runthrough.report;

import java.util.List;
import java.util.Optional;
import runthrough.study.cause.NamedCauses;

/** The cause of most coil changes that did not run through, with their number and their share of all of them. */
public final class LargestCause {
    private LargestCause() {}

    /** Of {@code causes}, most coil changes first: "joint made again, 72 of 393 (18 %)"; empty where there are none. */
    public static Optional<String> of(List<NamedCauses.Count> causes) {
        long all = causes.stream().mapToLong(NamedCauses.Count::changes).sum();
        return causes.stream()
                .findFirst()
                .map(most -> most.reason().words() + ", " + Texts.count(most.changes()) + " of " + Texts.count(all)
                        + " (" + Texts.percent((double) most.changes() / all) + ")");
    }
}
