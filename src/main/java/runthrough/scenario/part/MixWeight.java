package runthrough.scenario.part;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import runthrough.plant.check.StandIn;
import runthrough.quantity.Dimension;
import runthrough.scenario.grammar.Amount;
import runthrough.scenario.grammar.Context;
import runthrough.scenario.grammar.Numeric;
import runthrough.scenario.grammar.PlainNumber;
import runthrough.scenario.grammar.Range;
import runthrough.scenario.grammar.Schemas;
import runthrough.scenario.source.Raw;

/**
 * How often a coil comes in a mix.
 *
 * @param value share of all coils from 0 to 1, or weight relative to the others
 * @param isShare whether it was given in percent
 */
public record MixWeight(double value, boolean isShare) {

    /** A share in percent, or a plain number. */
    public static final class Shape implements runthrough.scenario.grammar.Shape<MixWeight> {

        private static final Amount IN_PERCENT = new Amount(Dimension.SHARE, Range.POSITIVE_SHARE);
        private static final PlainNumber RELATIVE = new PlainNumber(Range.POSITIVE);

        @Override
        public Optional<MixWeight> read(Raw raw, Context context) {
            return isShare(Optional.of(raw))
                    ? IN_PERCENT.read(raw, context).map(share -> new MixWeight(share, true))
                    : RELATIVE.read(raw, context).map(weight -> new MixWeight(weight, false));
        }

        /** What a coil weighs changes no check. */
        @Override
        public Optional<MixWeight> standIn(Raw raw, StandIn standIn) {
            return Optional.of(new MixWeight(1, false));
        }

        @Override
        public String allowed() {
            return IN_PERCENT.allowed() + ", or " + RELATIVE.allowed();
        }

        @Override
        public Optional<Numeric> number(Optional<Raw> written) {
            return isShare(written) ? IN_PERCENT.number(written) : RELATIVE.number(written);
        }

        private static boolean isShare(Optional<Raw> written) {
            return written.isPresent()
                    && written.get() instanceof Raw.Scalar scalar
                    && scalar.text().contains("%");
        }

        @Override
        public ObjectNode schema(Schemas schemas) {
            return schemas.anyOf(IN_PERCENT.schema(schemas), RELATIVE.schema(schemas));
        }
    }
}
