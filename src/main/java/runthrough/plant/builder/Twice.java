package runthrough.plant.builder;

import java.util.function.Function;
import java.util.function.UnaryOperator;
import runthrough.plant.check.StandIn;

/**
 * A part as it is described: once with either stand-in in the place of the numbers of it that are refused, and so alike where
 * none is.
 */
record Twice<T>(T mild, T harsh) {

    /** A part of which nothing is refused. */
    static <T> Twice<T> alike(T part) {
        return new Twice<>(part, part);
    }

    /** The part that {@code make} makes with either stand-in. */
    static <T> Twice<T> of(Function<StandIn, T> make) {
        return new Twice<>(make.apply(StandIn.MILD), make.apply(StandIn.HARSH));
    }

    T with(StandIn standIn) {
        return standIn == StandIn.MILD ? mild : harsh;
    }

    <U> Twice<U> to(Function<T, U> what) {
        return new Twice<>(what.apply(mild), what.apply(harsh));
    }

    Twice<T> changed(UnaryOperator<T> change) {
        return new Twice<>(change.apply(mild), change.apply(harsh));
    }
}
