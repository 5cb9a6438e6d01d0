package runthrough.scenario;

import java.util.List;
import java.util.Optional;
import runthrough.plant.Accumulator;
import runthrough.plant.Distribution;
import runthrough.plant.Practice;
import runthrough.plant.check.LineCheck;
import runthrough.plant.check.Message;
import runthrough.quantity.UnitSystem;
import runthrough.scenario.grammar.Values;

/** The practices that a scenario may name; each takes from the file what it needs. */
enum PracticeWord {
    JOIN_WITH_ACCUMULATOR {
        @Override
        Practice practice(Values scenario) {
            return new Practice.JoinWithAccumulator(accumulator(scenario).orElseGet(Accumulator::none));
        }
    },
    JOIN_WITHOUT_ACCUMULATOR {
        @Override
        Practice practice(Values scenario) {
            return new Practice.JoinWithoutAccumulator();
        }
    },
    RETHREAD {
        @Override
        Practice practice(Values scenario) {
            return new Practice.Rethread(rethreadTime(scenario).orElse(Distribution.constant(0)));
        }
    };

    /** The practice that {@code scenario} describes. */
    abstract Practice practice(Values scenario);

    /** Warnings of what {@code scenario} describes although {@code practice} makes no use of it. */
    static List<Message> unused(Practice practice, Values scenario, UnitSystem units) {
        return LineCheck.unused(practice, accumulator(scenario), rethreadTime(scenario), units);
    }

    private static Optional<Accumulator> accumulator(Values scenario) {
        return scenario.find(ScenarioKeys.ACCUMULATOR).flatMap(values -> values).map(AccumulatorKeys::accumulator);
    }

    private static Optional<Distribution> rethreadTime(Values scenario) {
        return scenario.get(ScenarioKeys.CHANGE).find(ChangeKeys.RETHREAD);
    }
}
