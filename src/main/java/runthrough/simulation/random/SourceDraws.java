package runthrough.simulation.random;

import umontreal.ssj.rng.MRG32k3a;

/** The uniform numbers of one source of randomness in one replication. */
@FunctionalInterface
public interface SourceDraws {

    /**
     * The number, in (0, 1), for pass {@code pass} of coil change {@code change}; each is asked for once, and first passes in
     * order of their change.
     *
     * @param change from 1; 0 before the first
     * @param pass from 1
     */
    double next(int change, int pass);

    /** One number after the other, whatever it is for. */
    static SourceDraws inTurn(MRG32k3a stream) {
        return (change, pass) -> stream.nextDouble();
    }
}
