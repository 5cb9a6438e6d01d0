package runthrough.report.sweep;

import java.util.List;

/**
 * What the lines of a sweep have in common.
 *
 * @param id what it is known by: made of all that a case depends on
 * @param cases how many there are
 * @param paths of all that they set
 * @param hasUncertainty whether they say how well each answer is known
 */
public record SweepName(String id, int cases, List<String> paths, boolean hasUncertainty) {
    public SweepName {
        paths = List.copyOf(paths);
    }
}
