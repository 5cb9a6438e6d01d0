package runthrough.simulation.random;

import java.util.List;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Coil;
import runthrough.plant.CoilSource;
import runthrough.plant.Joint;
import runthrough.plant.Line;
import runthrough.simulation.records.SimulationException;
import umontreal.ssj.rng.MRG32k3a;

/**
 * The coils in the order in which they come, from number 1. Coil n takes draw n of the coil streams, whether or not it is
 * used; only the last few are remembered.
 *
 * <p>Rules COIL-2, COIL-4, COIL-5.
 */
public final class CoilFeed {
    private final List<Coil> kinds;
    private final double[] cumulativeWeight;
    /** Absent where coils come in turn. */
    private final @Nullable MRG32k3a choice;
    /** Absent where the coils of each kind are all alike. */
    private final @Nullable MRG32k3a size;

    private final int[] kind;
    /** The same coils as objects, which a long schedule makes anew each time that it is asked. */
    private final Coil[] coil;

    private final double[] sizeDraw;
    private final int mask;
    private int drawn;

    /** Coils mostly come in the same few pairs: the last one asked for is kept. */
    private @Nullable Joint joint;

    private @Nullable Coil jointEnds;
    private @Nullable Coil jointBegins;

    /** The coils of {@code line}, of which up to {@code lookAhead} beyond the running one may be asked for. */
    public CoilFeed(Line line, Streams streams, int lookAhead) {
        kinds = line.coils();
        cumulativeWeight = line.coilSource() instanceof CoilSource.Mix mix ? cumulate(mix) : new double[0];
        choice = cumulativeWeight.length > 0 ? streams.stream(Source.COIL_CHOICE) : null;
        size = line.coilSource().sizesVary() ? streams.stream(Source.COIL_SIZE) : null;
        int window = Integer.highestOneBit(lookAhead + 4) * 2;
        kind = new int[window];
        coil = new Coil[window];
        sizeDraw = new double[window];
        mask = window - 1;
    }

    private static double[] cumulate(CoilSource.Mix mix) {
        double[] cumulative = new double[mix.shares().size()];
        double sum = 0;
        for (int i = 0; i < cumulative.length; i++) {
            sum += mix.shares().get(i).weight();
            cumulative[i] = sum;
        }
        return cumulative;
    }

    /** Index in {@code line.coils()} of the kind of coil {@code number}. */
    public int kind(int number) {
        if (number > drawn) {
            drawUpTo(number);
        }
        return kind[number & mask];
    }

    /** Coil {@code number}. */
    public Coil coil(int number) {
        if (number > drawn) {
            drawUpTo(number);
        }
        return coil[number & mask];
    }

    /** What coil {@code change} and the one after it are to the work that joins them. */
    public Joint joint(int change) {
        Coil ends = coil(change);
        Coil begins = coil(change + 1);
        if (joint == null || ends != jointEnds || begins != jointBegins) {
            joint = Joint.between(ends, begins);
            jointEnds = ends;
            jointBegins = begins;
        }
        return joint;
    }

    /**
     * Usable length of coil {@code number} (m).
     *
     * @throws SimulationException when the coil is no longer than its crops
     */
    public double usableLength(int number) {
        Coil coil = coil(number);
        double usable = coil.usableLength(sizeDraw[number & mask]);
        if (!(usable > 0)) {
            throw new SimulationException("coil " + number + " ('" + coil.name() + "', draw " + number
                    + " of the coil stream) is " + coil.length(sizeDraw[number & mask])
                    + " m long, no longer than its crops of " + coil.headCrop() + " m and " + coil.tailCrop()
                    + " m. Give longer coils or shorter crops");
        }
        return usable;
    }

    private void drawUpTo(int number) {
        while (drawn < number) {
            drawn++;
            kind[drawn & mask] = choice == null ? (drawn - 1) % kinds.size() : choose(choice.nextDouble());
            coil[drawn & mask] = kinds.get(kind[drawn & mask]);
            sizeDraw[drawn & mask] = size == null ? 0 : size.nextDouble();
        }
    }

    private int choose(double u) {
        double target = u * cumulativeWeight[cumulativeWeight.length - 1];
        int index = 0;
        while (index < cumulativeWeight.length - 1 && target >= cumulativeWeight[index]) {
            index++;
        }
        return index;
    }
}
