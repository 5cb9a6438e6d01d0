package runthrough.simulation.random;

import java.util.List;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Coil;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Joint;
import runthrough.plant.Line;
import runthrough.simulation.records.SimulationException;

/**
 * The coils as they come, from number 1. Coil n takes number n of the coil's sources of randomness, whichever coils are asked for
 * and in whatever order.
 *
 * <p>Rules COIL-2, COIL-4, COIL-5.
 */
public final class CoilFeed {
    /** A run asks for few coils, each several times: so many are kept. A power of two. */
    private static final int KEPT = 16;

    private final List<Coil> kinds;
    /** Where there is one kind only. */
    private final @Nullable Coil only;

    private final double[] cumulativeWeight;
    private final SourceNumbers choice;
    private final SourceNumbers lengths;
    private final SourceNumbers masses;

    private final int[] keptNumber = new int[KEPT];
    private final int[] keptKind = new int[KEPT];
    /** As objects, which a long schedule makes anew each time that it is asked. */
    private final Coil[] keptCoil = new Coil[KEPT];

    /** Coils mostly come in the same few pairs: the last one asked for is kept. */
    private @Nullable Joint joint;

    private int jointEnds;
    private int jointBegins;

    /** The coils of {@code line}. */
    public CoilFeed(Line line, RandomNumbers numbers) {
        kinds = line.coils();
        only = kinds.size() == 1 ? kinds.get(0) : null;
        cumulativeWeight = line.coilSource() instanceof CoilSource.Mix mix ? cumulate(mix) : new double[0];
        choice = numbers.source(SourceNames.COIL_KIND);
        lengths = numbers.source(SourceNames.COIL_LENGTH);
        masses = numbers.source(SourceNames.COIL_MASS);
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

    /** Index in {@code line.coils()} of the kind of coil {@code number}, from 1. */
    public int kind(int number) {
        return only != null ? 0 : keptKind[keep(number)];
    }

    /** Coil {@code number}, from 1. */
    public Coil coil(int number) {
        return only != null ? only : keptCoil[keep(number)];
    }

    private int keep(int number) {
        int slot = number & (KEPT - 1);
        if (keptNumber[slot] != number) {
            keptKind[slot] = cumulativeWeight.length == 0 ? (number - 1) % kinds.size() : choose(number);
            keptCoil[slot] = kinds.get(keptKind[slot]);
            keptNumber[slot] = number;
        }
        return slot;
    }

    private int choose(int number) {
        int last = cumulativeWeight.length - 1;
        if (last == 0) {
            return 0;
        }
        double target = choice.uniform(number, 0) * cumulativeWeight[last];
        int index = 0;
        while (index < last && target >= cumulativeWeight[index]) {
            index++;
        }
        return index;
    }

    /** What coil {@code change} and the one after it are to the work that joins them. */
    public Joint joint(int change) {
        int ends = kind(change);
        int begins = kind(change + 1);
        if (joint == null || ends != jointEnds || begins != jointBegins) {
            joint = Joint.between(coil(change), coil(change + 1));
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
        double share = drawnAt(number);
        double usable = coil.usableLength(share);
        if (!(usable > 0)) {
            throw new SimulationException(describe(number) + " is " + SimulationException.text(coil.length(share))
                    + " m long, no longer than its crops of " + SimulationException.text(coil.headCrop()) + " m and "
                    + SimulationException.text(coil.tailCrop())
                    + " m. Give longer coils or shorter crops");
        }
        return usable;
    }

    private double drawnAt(int number) {
        Coil coil = coil(number);
        // Any share gives the one size that there is.
        return coil.size().isConstant() ? 0.5 : sizes(coil).uniform(number, 0);
    }

    private SourceNumbers sizes(Coil coil) {
        return coil.size() instanceof CoilSize.ByMass ? masses : lengths;
    }

    /** Coil {@code number} for messages, with the draw that it comes from. */
    public String describe(int number) {
        Coil coil = coil(number);
        String draw = coil.size().isConstant()
                ? ""
                : ", draw " + number + " of '" + sizes(coil).name() + "'";
        return "coil " + number + " ('" + coil.name() + "'" + draw + ")";
    }
}
