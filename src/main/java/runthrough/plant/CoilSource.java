package runthrough.plant;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** Which coils come, in which order. Rule COIL-4. */
public sealed interface CoilSource {

    /** Every kind of coil that may come, each once where it is cheap to know. */
    List<Coil> kinds();

    /** The same order or chances of coils, each coil changed. */
    CoilSource withEach(UnaryOperator<Coil> change);

    /** Whether chance decides which coil comes next or how long it is. */
    default boolean isRandom() {
        return sizesVary();
    }

    /** Whether chance decides how long a coil of any kind is. */
    default boolean sizesVary() {
        return kinds().stream().anyMatch(coil -> !coil.size().isConstant());
    }

    /** The joints at which a coil of kind {@code kind} in {@link #kinds} may end. */
    default Joints joints(int kind) {
        List<Coil> kinds = kinds();
        return Joints.only(Joint.between(kinds.get(kind), kinds.get((kind + 1) % kinds.size())));
    }

    /** The mean, over the coils as they come, of a {@code number} of each kind in {@link #kinds}, counted from 0. */
    default double mean(IntToDoubleFunction number) {
        return IntStream.range(0, kinds().size()).mapToDouble(number).average().orElseThrow();
    }

    /** The same coil, over and over. */
    record Repeated(Coil coil) implements CoilSource {
        @Override
        public List<Coil> kinds() {
            return List.of(coil);
        }

        @Override
        public Repeated withEach(UnaryOperator<Coil> change) {
            return new Repeated(change.apply(coil));
        }
    }

    /** Coils drawn at random, each by its weight. */
    record Mix(List<Share> shares) implements CoilSource {
        public Mix {
            shares = List.copyOf(shares);
            if (shares.isEmpty()) {
                throw new IllegalArgumentException("a mix without coils; give at least one");
            }
        }

        @Override
        public List<Coil> kinds() {
            return shares.stream().map(Share::coil).toList();
        }

        @Override
        public Mix withEach(UnaryOperator<Coil> change) {
            return new Mix(shares.stream()
                    .map(share -> new Share(change.apply(share.coil()), share.weight()))
                    .toList());
        }

        @Override
        public boolean isRandom() {
            return shares.size() > 1 || CoilSource.super.isRandom();
        }

        /** Neighbours are drawn independently of each other. */
        @Override
        public Joints joints(int kind) {
            Coil own = shares.get(kind).coil();
            return new Joints(shares.stream()
                    .map(share -> new Joints.Share(Joint.between(own, share.coil()), share.weight()))
                    .toList());
        }

        @Override
        public double mean(IntToDoubleFunction number) {
            return IntStream.range(0, shares.size())
                            .mapToDouble(kind -> shares.get(kind).weight() * number.applyAsDouble(kind))
                            .sum()
                    / totalWeight();
        }

        /** Sum of the weights; they need not add up to 1. */
        public double totalWeight() {
            return shares.stream().mapToDouble(Share::weight).sum();
        }
    }

    /**
     * One kind of coil in a mix.
     *
     * @param weight how often it comes relative to the others, {@code > 0}
     */
    record Share(Coil coil, double weight) {
        public Share {
            Ranges.of("coil").finitePositive("weight", weight, Ranges.Of.NUMBER).refuse();
        }
    }

    /** Coils in a given order, which repeats from the top when it runs out. */
    record Schedule(List<Coil> coils) implements CoilSource {
        public Schedule {
            coils = coils instanceof CoilTable ? coils : List.copyOf(coils);
            if (coils.isEmpty()) {
                throw new IllegalArgumentException("a schedule without coils; give at least one");
            }
        }

        @Override
        public List<Coil> kinds() {
            return coils;
        }

        @Override
        public Schedule withEach(UnaryOperator<Coil> change) {
            if (!(coils instanceof CoilTable)) {
                return new Schedule(coils.stream().map(change).toList());
            }
            CoilTable.Builder changed = new CoilTable.Builder();
            coils.forEach(coil -> changed.add(change.apply(coil)));
            return new Schedule(changed.build());
        }

        /** Asked for each replication, so that a long table must know it without going through its coils. */
        @Override
        public boolean sizesVary() {
            return coils instanceof CoilTable table ? !table.isConstant() : CoilSource.super.sizesVary();
        }
    }
}
