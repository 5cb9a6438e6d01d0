package runthrough.plant;

import java.util.List;

/** Which coils come, in which order. */
public sealed interface Supply {

    /** Every kind of coil that may come, each once where it is cheap to know. */
    List<Coil> kinds();

    /** Whether chance decides which coil comes next or how long it is. */
    default boolean isRandom() {
        return kinds().stream().anyMatch(coil -> !coil.size().isConstant());
    }

    /** The same coil, over and over. */
    record Repeated(Coil coil) implements Supply {
        @Override
        public List<Coil> kinds() {
            return List.of(coil);
        }
    }

    /** Coils drawn at random, each by its weight. */
    record Mix(List<Share> shares) implements Supply {
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
        public boolean isRandom() {
            return shares.size() > 1 || Supply.super.isRandom();
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
            Ranges.finitePositive("weight", weight);
        }
    }

    /** Coils in a given order, which repeats from the top when it runs out. */
    record Schedule(List<Coil> coils) implements Supply {
        public Schedule {
            coils = List.copyOf(coils);
            if (coils.isEmpty()) {
                throw new IllegalArgumentException("a schedule without coils; give at least one");
            }
        }

        @Override
        public List<Coil> kinds() {
            return coils;
        }
    }
}
