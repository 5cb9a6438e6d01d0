package runthrough.study.comparison;

import java.util.List;
import java.util.stream.Stream;

/**
 * Alternatives of a line, held against the one called today.
 *
 * @param target share of coil changes that should run through, in (0, 1], the same for all
 * @param replications that each was run with; a single one where nothing is random
 * @param yearlyTime scheduled running time of a year (s), the same for all
 * @param confidence of each difference's interval, so that those of one measure hold together with 95 %
 * @param today what the others are held against
 * @param others at least one, in the order given
 * @param notRun those besides that cannot be run
 */
public record Comparison(
        double target,
        int replications,
        double yearlyTime,
        double confidence,
        Compared today,
        List<Compared> others,
        List<NotRun> notRun) {

    public Comparison {
        others = List.copyOf(others);
        notRun = List.copyOf(notRun);
    }

    /**
     * An alternative that cannot be run.
     *
     * @param name that the user calls it by
     * @param why it cannot, without a full stop
     */
    public record NotRun(String name, String why) {}

    /** All of them, today's first. */
    public List<Compared> all() {
        return Stream.concat(Stream.of(today), others.stream()).toList();
    }

    /** Whether anything is random in any of them. */
    public boolean chance() {
        return all().stream().anyMatch(Compared::chance);
    }
}
