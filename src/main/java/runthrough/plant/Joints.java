package runthrough.plant;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The joints at which a coil of one kind may end, each with how often it comes.
 *
 * @param all at least one
 */
public record Joints(List<Share> all) {

    /**
     * One of them.
     *
     * @param weight how often it comes relative to the others, {@code > 0}
     */
    public record Share(Joint joint, double weight) {}

    public Joints {
        all = List.copyOf(all);
        if (all.isEmpty()) {
            throw new IllegalArgumentException("no joints; give at least one");
        }
    }

    /** The same joint at every coil change. */
    public static Joints only(Joint joint) {
        return new Joints(List.of(new Share(joint, 1)));
    }

    /** The mean of {@code number} over them. Where it is the same for all it is that number, without rounding. */
    public double mean(ToDoubleFunction<Joint> number) {
        double first = number.applyAsDouble(all.get(0).joint());
        double sum = 0;
        double weights = 0;
        boolean areEqual = true;
        for (Share share : all) {
            double value = number.applyAsDouble(share.joint());
            areEqual &= value == first;
            sum += share.weight() * value;
            weights += share.weight();
        }
        return areEqual ? first : sum / weights;
    }

    /** Whether there is only one. */
    public boolean isOne() {
        return all.size() == 1;
    }
}
