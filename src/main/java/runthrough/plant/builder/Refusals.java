package runthrough.plant.builder;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import runthrough.plant.OutOfRangeException;
import runthrough.plant.OutOfRangeException.Fault;
import runthrough.plant.check.LinePart;
import runthrough.plant.check.Message;
import runthrough.plant.check.Message.Severity;

/** The numbers that are refused while a line is described, every one of each step. */
final class Refusals {
    private final List<Message> messages = new ArrayList<>();

    /** {@code part} after {@code step}, which says something of what stands at {@code path}; what it refuses is kept. */
    <T> Twice<T> step(LinePart path, Twice<T> part, BiFunction<T, StepNumbers, T> step) {
        return step(path.path(), part, step);
    }

    /** The same at a path of one of several parts. */
    <T> Twice<T> step(String path, Twice<T> part, BiFunction<T, StepNumbers, T> step) {
        try {
            return part.changed(now -> step.apply(now, StepNumbers.AS_GIVEN));
        } catch (OutOfRangeException e) {
            List<Fault> faults = e.faults();
            faults.forEach(fault -> messages.add(message(path, fault)));
            return Twice.of(standIn -> step.apply(part.with(standIn), new StepNumbers(faults, standIn)));
        }
    }

    private static Message message(String path, Fault fault) {
        return new Message(Severity.ERROR, path + "." + fault.key().replace(' ', '-'), fault.what(), fault.remedy());
    }

    List<Message> messages() {
        return List.copyOf(messages);
    }
}
