package runthrough.scenario.part;

import runthrough.plant.Accumulator;
import runthrough.plant.Distribution;
import runthrough.plant.Practice;

/** The practices that a scenario may name; each takes from the file what it needs. */
public enum PracticeWord {
    JOIN_WITH_ACCUMULATOR {
        @Override
        public Practice practice(Accumulator accumulator, Distribution rethread) {
            return new Practice.JoinWithAccumulator(accumulator);
        }
    },
    JOIN_WITHOUT_ACCUMULATOR {
        @Override
        public Practice practice(Accumulator accumulator, Distribution rethread) {
            return new Practice.JoinWithoutAccumulator();
        }
    },
    RETHREAD {
        @Override
        public Practice practice(Accumulator accumulator, Distribution rethread) {
            return new Practice.Rethread(rethread);
        }
    };

    /**
     * The practice, with what it needs of both.
     *
     * @param accumulator that is described
     * @param rethread time to thread the line anew (s)
     */
    public abstract Practice practice(Accumulator accumulator, Distribution rethread);
}
