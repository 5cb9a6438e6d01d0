package runthrough.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.IntStream;
import runthrough.plant.Coil;
import runthrough.plant.CoilSource;
import runthrough.plant.Line;
import runthrough.simulation.records.ChangeFacts;
import runthrough.simulation.records.Outcome;
import runthrough.study.cause.Cause;
import runthrough.study.cause.CauseCounts;
import runthrough.study.statistics.Interval;
import runthrough.study.statistics.Wilson;

/**
 * What came of the coil changes, coil by coil and product by product. A coil change counts by the coil that ends with it: its
 * length decides whether the accumulator was full again, and its speed what the change draws. A coil of a schedule is a row,
 * over all times that the schedule came to it and all replications.
 *
 * <p>There may be a million coils: of each no more is kept than a few numbers.
 *
 * <p>Rule COIL-8.
 */
public final class CoilOutcomes {
    /** Room for so many visits to begin with. */
    private static final int FEW = 64;

    private final Line line;
    private final int[] changes;
    private final int[] slowed;
    private final int[] stopped;
    private final double[] lostMetres;
    /** By cause; absent until something is attributed to it. */
    private final Map<Cause, int[]> causes = new EnumMap<>(Cause.class);

    CoilOutcomes(Line line) {
        this.line = line;
        int kinds = line.coils().size();
        changes = new int[kinds];
        slowed = new int[kinds];
        stopped = new int[kinds];
        lostMetres = new double[kinds];
    }

    /** Coil after coil that came to its change; its kind is kept where there are several. Not safe for use by several threads. */
    static final class Visits {
        private static final int[] NONE = {};

        private final boolean areSeveral;
        private int[] kinds = NONE;
        private int count;

        /** None yet, of coils of so many kinds. */
        Visits(int ofKinds) {
            areSeveral = ofKinds > 1;
        }

        void add(int kind) {
            if (areSeveral) {
                if (count == kinds.length) {
                    kinds = Arrays.copyOf(kinds, Math.max(FEW, 2 * count));
                }
                kinds[count] = kind;
            }
            count++;
        }

        int count() {
            return count;
        }
    }

    /** Takes up coil changes, those that did not run through among them. */
    void add(Visits visits) {
        if (visits.areSeveral) {
            for (int place = 0; place < visits.count; place++) {
                changes[visits.kinds[place]]++;
            }
        } else {
            changes[0] += visits.count;
        }
    }

    /** Takes up what came of a coil change that did not run through, and is attributed to {@code cause}. */
    void addFailed(ChangeFacts change, Cause cause) {
        int kind = change.tailCoil();
        slowed[kind] += change.outcome() == Outcome.SLOWED ? 1 : 0;
        stopped[kind] += change.outcome() == Outcome.STOPPED ? 1 : 0;
        lostMetres[kind] += change.lostMetres();
        causes.computeIfAbsent(cause, none -> new int[changes.length])[kind]++;
    }

    /** Whether there are coils of several kinds to tell apart. */
    public boolean areSeveral() {
        return changes.length > 1;
    }

    /** How many kinds of coil the line has; in a schedule, how many rows. */
    public int kinds() {
        return changes.length;
    }

    /** How many of them ever came to their change. */
    public int seen() {
        return (int) IntStream.of(changes).filter(count -> count > 0).count();
    }

    /** What came of the coils of kind {@code kind}, from 0. */
    public Tally of(int kind) {
        return new Tally(changes[kind], slowed[kind], stopped[kind], counts(kind), lostMetres[kind]);
    }

    private CauseCounts counts(int kind) {
        Map<Cause, Long> counts = new EnumMap<>(Cause.class);
        causes.forEach((cause, ofKind) -> {
            if (ofKind[kind] > 0) {
                counts.put(cause, (long) ofKind[kind]);
            }
        });
        return new CauseCounts(counts);
    }

    /**
     * The coils that did not always run through, those hardest on the line first: of which, with the caution that the number
     * of their changes asks for, the greatest share did not run through (the lower end of Wilson's interval, so that one bad
     * visit does not make a coil the worst); of equals the one that cost most strip per change, then the first.
     *
     * @param most how many at most, {@code >= 1}
     */
    public List<Integer> hardest(int most) {
        Comparator<Integer> order =
                Comparator.comparing(this::of, Tally.HARDEST_FIRST).thenComparing(Comparator.naturalOrder());
        PriorityQueue<Integer> kept = new PriorityQueue<>(order.reversed());
        for (int kind = 0; kind < changes.length; kind++) {
            if (slowed[kind] + stopped[kind] > 0) {
                kept.add(kind);
                if (kept.size() > most) {
                    kept.remove();
                }
            }
        }
        return kept.stream().sorted(order).toList();
    }

    /** The coil that is hardest on the line; empty when all ran through. */
    public Optional<Integer> worst() {
        return hardest(1).stream().findFirst();
    }

    /** What came of each product whose coils came to their change; those hardest on the line first. */
    public List<Product> products() {
        Map<Name, Tally> tallies = new LinkedHashMap<>();
        Map<Name, Integer> coils = new LinkedHashMap<>();
        for (int kind = 0; kind < changes.length; kind++) {
            if (changes[kind] > 0) {
                Name name = name(line.coils().get(kind));
                tallies.merge(name, of(kind), Tally::plus);
                coils.merge(name, 1, Integer::sum);
            }
        }
        List<Product> products = new ArrayList<>();
        tallies.forEach((name, tally) -> products.add(new Product(name, coils.getOrDefault(name, 0), tally)));
        products.sort(Comparator.comparing(Product::tally, Tally.MOST_FAILED_FIRST));
        return products;
    }

    private Name name(Coil coil) {
        if (!coil.product().isEmpty()) {
            return new Name(coil.product(), 0, 0);
        }
        return line.coilSource() instanceof CoilSource.Mix
                ? new Name(coil.name(), 0, 0)
                : new Name("", coil.thickness(), coil.width());
    }

    /**
     * What a product is called.
     *
     * @param given by the user; empty where coils of a schedule say no product, which are then distinguished by their section
     * @param thickness of its strip (m), where no name is given
     * @param width of its strip (m), where no name is given
     */
    public record Name(String given, double thickness, double width) {}

    /**
     * What came of a product.
     *
     * @param coils how many kinds of coil, in a schedule rows, it had
     * @param tally of their coil changes
     */
    public record Product(Name name, int coils, Tally tally) {}

    /**
     * What came of some coil changes.
     *
     * @param changes how many
     * @param slowed the process ran slower on a low level
     * @param stopped the process stopped because strip was lacking
     * @param causes what those that did not run through are attributed to
     * @param lostMetres metres not processed while starved, slowed or recovering from it (m)
     */
    public record Tally(long changes, long slowed, long stopped, CauseCounts causes, double lostMetres) {

        private static final Comparator<Tally> HARDEST_FIRST = Comparator.comparingDouble(
                        (Tally tally) -> -tally.atLeastFailed())
                .thenComparingDouble(tally -> -tally.lostPerChange());
        private static final Comparator<Tally> MOST_FAILED_FIRST = Comparator.comparingLong(
                        (Tally tally) -> -tally.failed())
                .thenComparingDouble(tally -> -tally.lostMetres())
                .thenComparingLong(tally -> -tally.changes());

        /** How many did not run through. */
        public long failed() {
            return slowed + stopped;
        }

        /** How many ran through. */
        public long ranThrough() {
            return changes - failed();
        }

        /** The share that ran through; there must be any changes. */
        public double share() {
            return (double) ranThrough() / changes;
        }

        /** Wilson's interval of that share, as if coil changes were independent. */
        public Interval interval() {
            return Wilson.interval(share(), (double) changes);
        }

        private double atLeastFailed() {
            return Wilson.interval((double) failed() / changes, (double) changes)
                    .low();
        }

        private double lostPerChange() {
            return lostMetres / changes;
        }

        private Tally plus(Tally other) {
            return new Tally(
                    changes + other.changes,
                    slowed + other.slowed,
                    stopped + other.stopped,
                    causes.plus(other.causes),
                    lostMetres + other.lostMetres);
        }
    }
}
