package runthrough.scenario;

import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.LineFigure;
import runthrough.quantity.Dimension;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.scenario.grammar.Numeric;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Raw;

/**
 * A number that a scenario may be given another value of.
 *
 * @param path by which it is set
 * @param meaning what it is, to follow "give"; empty where its path says it
 * @param numeric what it may be
 * @param present its value (SI); empty where the file has none and there is no default
 * @param text of that value as it is written, or as it would be
 * @param unit in which it is written; empty for a plain number, or where none is
 * @param origin where the value comes from
 * @param place where it is written, or where it would be
 */
public record Input(
        String path,
        String meaning,
        Numeric numeric,
        OptionalDouble present,
        String text,
        Optional<Unit> unit,
        Origin origin,
        Place place) {

    /** So many a value has that was meant to be round: the rest is the computer's own error. */
    private static final int MOST_DIGITS = 12;

    /** Where the value of an input comes from. */
    public enum Origin {
        /** It is written in the file. */
        WRITTEN,
        /** The file does not say; this is what holds then. */
        DEFAULT,
        /** It follows from others: a {@link LineFigure}. */
        FIGURE
    }

    /** What it measures; empty for a plain number. */
    public Optional<Dimension> dimension() {
        return numeric.dimension();
    }

    /** Whether {@code raw} is the present value, however it is written. */
    public boolean isPresent(Raw raw) {
        return present.isPresent()
                && raw instanceof Raw.Scalar scalar
                && numeric.si(scalar.text())
                        .filter(si -> si == present.getAsDouble())
                        .isPresent();
    }

    /** Which values are allowed, in words. */
    public String allowed() {
        return numeric.words(unit);
    }

    /**
     * This input set to {@code si}, reported as standing at {@code where}. The value is written in the unit of this input where
     * that can be read back without loss.
     */
    public Setting setTo(double si, String where) {
        return new Setting(path, new Raw.Scalar(written(si), Place.whole(where)));
    }

    /** The value, round in the unit of this input, that {@code si} is but for the computer's own error. */
    public double rounded(double si) {
        return ownUnit()
                .map(own -> own.toSi(Numbers.rounded(own.fromSi(si), MOST_DIGITS)))
                .orElseGet(() -> Numbers.rounded(si, MOST_DIGITS));
    }

    private String written(double si) {
        return ownUnit().map(own -> written(si, own)).orElseGet(() -> Numbers.plain(si));
    }

    private String written(double si, Unit own) {
        double round = Numbers.rounded(own.fromSi(si), MOST_DIGITS);
        if (own.toSi(round) == si) {
            return Numbers.plain(round) + " " + own.symbol();
        }
        Unit exact = own.toSi(own.fromSi(si)) == si ? own : own.dimension().base();
        return Numbers.plain(exact.fromSi(si)) + " " + exact.symbol();
    }

    private Optional<Unit> ownUnit() {
        return unit.or(() -> dimension().map(Dimension::base));
    }
}
