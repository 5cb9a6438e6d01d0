package runthrough.report;

import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.StorageForm;
import runthrough.plant.StorageForm.Adjustable;
import runthrough.quantity.Kind;
import runthrough.study.sizing.Size;
import runthrough.study.sizing.Sizing;

/**
 * Sizes of an accumulator in words and in the user's units.
 *
 * @param sizing that is told of
 * @param words for numbers
 */
record SizeWords(Sizing sizing, StudyWords words) {

    /** How many of what there are in the accumulator, and what is set to give it its capacity. */
    static String setting(StorageForm form) {
        if (form instanceof StorageForm.Strands strands) {
            return strands.strands() + " strands with a stroke";
        } else if (form instanceof StorageForm.FreeLoop loop) {
            return loop.loops() + (loop.loops() == 1 ? " loop" : " loops") + " with a greatest sag";
        } else if (form instanceof StorageForm.Spiral spiral) {
            return Texts.number(spiral.wraps()) + " wraps with a full diameter";
        }
        return "capacity";
    }

    /** What a designer would set, where that is not the capacity itself. */
    static Optional<Adjustable> adjusted(Size size) {
        return size.form().adjustable().filter(adjustable -> adjustable.measure() != StorageForm.Measure.CAPACITY);
    }

    /** What a designer would set it to, where that is not the capacity itself. */
    Optional<String> setTo(Size size) {
        return adjusted(size).map(adjustable -> setting(size.form()) + " of " + words.length(adjustable.metres()));
    }

    /** The 95 % interval of the smallest capacity; empty where it lacks an end, or nothing is left to chance. */
    Optional<String> capacities() {
        return sizing.capacity().flatMap(capacity -> ends(capacity.low(), capacity.high()));
    }

    /** The same of what is set to give it. */
    Optional<String> settings() {
        Optional<Adjustable> low = sizing.possible().flatMap(size -> size.form().adjustable());
        Optional<Adjustable> high = sizing.sure().flatMap(size -> size.form().adjustable());
        return low.flatMap(
                from -> high.flatMap(to -> ends(OptionalDouble.of(from.metres()), OptionalDouble.of(to.metres()))));
    }

    private Optional<String> ends(OptionalDouble low, OptionalDouble high) {
        return sizing.chance() && low.isPresent() && high.isPresent()
                ? Optional.of(words.range(Kind.LENGTH, low.getAsDouble(), high.getAsDouble()))
                : Optional.empty();
    }
}
