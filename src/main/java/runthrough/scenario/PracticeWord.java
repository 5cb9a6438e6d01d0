package runthrough.scenario;

import runthrough.plant.Accumulator;
import runthrough.plant.Distribution;
import runthrough.plant.Practice;

/** The practices that a scenario may name; each takes from the file what it needs. */
enum PracticeWord {
    JOIN_WITH_ACCUMULATOR {
        @Override
        Practice practice(Accumulator accumulator, Distribution rethread) {
            return new Practice.JoinWithAccumulator(accumulator);
        }
    },
    JOIN_WITHOUT_ACCUMULATOR {
        @Override
        Practice practice(Accumulator accumulator, Distribution rethread) {
            return new Practice.JoinWithoutAccumulator();
        }
    },
    RETHREAD {
        @Override
        Practice practice(Accumulator accumulator, Distribution rethread) {
            return new Practice.Rethread(rethread);
        }
    };

    /**
     * The practice, with what it needs of both.
     *
     * @param accumulator that is described
     * @param rethread time to thread the line anew (s)
     */
    abstract Practice practice(Accumulator accumulator, Distribution rethread);
}
