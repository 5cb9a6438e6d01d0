package runthrough.simulation.random;

import java.util.List;
import java.util.stream.IntStream;
import runthrough.plant.CoilChange;
import runthrough.plant.MeasuredRows;
import umontreal.ssj.rng.MRG32k3a;

/**
 * Which of some measured rows each coil change takes. Coil change n takes draw n of the rows' own stream, whichever element
 * asks first; a joint that is made again takes a fresh row for the pass, from a second stream.
 *
 * <p>Rule CHANGE-5.
 */
public final class RowDraws {
    private final MeasuredRows rows;
    private final MRG32k3a first;
    private final SourceDraws again;
    private final int[] row;
    private final int mask;
    private int drawn;
    private int changeAgain;
    private int passAgain;
    private int rowAgain;

    private RowDraws(MeasuredRows rows, int number, Streams streams, int lookAhead) {
        this.rows = rows;
        this.first = streams.stream(Source.rows(number));
        this.again = streams.draws(Source.rowsAgain(number));
        int window = Integer.highestOneBit(lookAhead + 4) * 2;
        this.row = new int[window];
        this.mask = window - 1;
    }

    /** Draws for all rows that {@code change} has, coils being prepared up to {@code lookAhead} ahead of the running one. */
    public static List<RowDraws> of(CoilChange change, Streams streams, int lookAhead) {
        List<MeasuredRows> all = MeasuredRows.in(change);
        return IntStream.range(0, all.size())
                .mapToObj(i -> new RowDraws(all.get(i), i, streams, lookAhead))
                .toList();
    }

    public MeasuredRows rows() {
        return rows;
    }

    /** The row, from 0, that pass {@code pass} of coil change {@code change} takes, both from 1. */
    public int row(int change, int pass) {
        if (pass > 1) {
            if (change != changeAgain || pass != passAgain) {
                changeAgain = change;
                passAgain = pass;
                rowAgain = nextAgain();
            }
            return rowAgain;
        }
        while (drawn < change) {
            drawn++;
            row[drawn & mask] = at(first.nextDouble());
        }
        return row[change & mask];
    }

    /** The row of the next pass that makes a joint again. */
    public int nextAgain() {
        return at(again.next(changeAgain, passAgain));
    }

    private int at(double share) {
        return (int) (share * rows.count());
    }
}
