package runthrough.report.sizing;

import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.StorageForm;
import runthrough.plant.StorageForm.Adjustable;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.report.StudyWords;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.TargetStatus;
import runthrough.study.sizing.Size;
import runthrough.study.sizing.Sizing;

/**
 * Sizes of an accumulator in words and as values in the user's units.
 *
 * @param sizing what was found
 * @param words for numbers
 */
record SizeWords(Sizing sizing, StudyWords words) {
    /** Two capacities closer than this, relatively, are the same but for rounding. */
    private static final double ROUNDING = 1e-9;

    static SizeWords of(Sizing sizing) {
        return new SizeWords(sizing, StudyWords.of(sizing.request().resultsIn(), sizing.chance()));
    }

    Texts texts() {
        return words.texts();
    }

    /** Whether the accumulator as it is meets all targets: of one without a stop the capacity that it needs says so. */
    TargetStatus present() {
        double now = sizing.present().map(point -> point.size().capacity()).orElse(0.0);
        boolean missesSecond = sizing.withoutStop()
                .filter(found -> !(found.answer().orElse(Double.POSITIVE_INFINITY) <= now * (1 + ROUNDING)))
                .isPresent();
        return missesSecond && runsThrough() == TargetStatus.MEETS ? TargetStatus.MISSES : runsThrough();
    }

    /** Whether it meets the target to run through. */
    private TargetStatus runsThrough() {
        return sizing.present()
                .flatMap(Sizing.Point::share)
                .map(share -> words.against(sizing.target(), share))
                .orElse(TargetStatus.MISSES);
    }

    /** How lengths of strip, strokes and sags are written. */
    Notation length() {
        return texts().notation(Kind.LENGTH);
    }

    /** The same for the least that is enough. */
    Notation least() {
        return length().atLeast();
    }

    /** The same for the least of those that were tried. */
    Notation tried() {
        return least().setting();
    }

    /** What is set to give an accumulator its capacity. */
    static String set(StorageForm form) {
        if (form instanceof StorageForm.Strands) {
            return "stroke";
        } else if (form instanceof StorageForm.FreeLoop) {
            return "greatest sag";
        } else if (form instanceof StorageForm.Spiral) {
            return "full diameter";
        }
        return "capacity";
    }

    /** How many of what there are in the accumulator, and what is set. */
    static String setting(StorageForm form) {
        String set = " with a " + set(form);
        if (form instanceof StorageForm.Strands strands) {
            return strands.strands() + " strands" + set;
        } else if (form instanceof StorageForm.FreeLoop loop) {
            return Texts.count(loop.loops(), "loop") + set;
        } else if (form instanceof StorageForm.Spiral spiral) {
            return Texts.number(spiral.wraps()) + " wraps" + set;
        }
        return set(form);
    }

    /** What a designer would set, where that is not the capacity itself. */
    static Optional<Adjustable> adjusted(Size size) {
        return size.form().adjustable().filter(adjustable -> adjustable.measure() != StorageForm.Measure.CAPACITY);
    }

    /** What a designer would set it to, where that is not the capacity itself. */
    Optional<String> setTo(Size size) {
        return adjusted(size).map(adjustable -> setting(size.form()) + " of " + tried().text(adjustable.metres()));
    }

    /** The smallest capacity with its interval. */
    Optional<Value> capacity() {
        return sizing.smallest()
                .flatMap(size -> sizing.capacity()
                        .map(found -> texts().found(tried(), size.capacity(), found.low(), found.high())));
    }

    /** The smallest capacity (m) as everybody else answers it: in whole strands where the accumulator has some. */
    OptionalDouble smallest() {
        return strands()
                .map(Value::si)
                .or(() -> sizing.smallest().map(Size::capacity))
                .map(OptionalDouble::of)
                .orElseGet(OptionalDouble::empty);
    }

    /** The smallest capacity in whole strands. */
    Optional<Value> strands() {
        return sizing.strands()
                .flatMap(found -> found.answer().isPresent()
                        ? Optional.of(texts().found(tried(), found.answer().getAsDouble(), found.low(), found.high()))
                        : Optional.empty());
    }

    /** What {@code capacity} (m) is made of: so many strands of such a stroke; empty where there are none. */
    Optional<String> ofStrands(double capacity) {
        return sizing.request().line().accumulator().form() instanceof StorageForm.Strands now
                ? Optional.of(Math.round(capacity / now.stroke()) + " strands of " + texts().length(now.stroke())
                        + "; now " + now.strands())
                : Optional.empty();
    }

    /** What is set to give it, with its interval; empty where that is the capacity itself. */
    Optional<Value> set() {
        return sizing.smallest()
                .flatMap(SizeWords::adjusted)
                .map(adjustable ->
                        texts().found(tried(), adjustable.metres(), end(sizing.possible()), end(sizing.sure())));
    }

    private static OptionalDouble end(Optional<Size> size) {
        return size.flatMap(SizeWords::adjusted)
                .map(adjustable -> OptionalDouble.of(adjustable.metres()))
                .orElse(OptionalDouble.empty());
    }
}
