package runthrough.study.lever;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What ways to meet a target are ranked by: the cheapest first; after those of which a cost is known the others, by how little they
 * change.
 *
 * @param perYear what it costs in a year; empty where that is not known
 * @param part how much is changed: what each change is as a part of the present value, added up
 */
public record Rank(OptionalDouble perYear, double part) implements Comparable<Rank> {
    private static final Comparator<Rank> ORDER = Comparator.<Rank, Boolean>comparing(
                    rank -> rank.perYear().isEmpty())
            .thenComparingDouble(rank -> rank.perYear().orElse(rank.part()));

    static Rank of(List<LeverChange> changes, Optional<YearlyCost> cost) {
        return new Rank(
                cost.map(known -> OptionalDouble.of(known.total())).orElseGet(OptionalDouble::empty),
                changes.stream().mapToDouble(LeverChange::part).sum());
    }

    @Override
    public int compareTo(Rank other) {
        return ORDER.compare(this, other);
    }
}
