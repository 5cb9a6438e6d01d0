package runthrough.scenario.grammar;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import runthrough.plant.check.StandIn;
import runthrough.scenario.source.Raw;

/**
 * A whole number without a unit.
 *
 * @param least the least allowed
 * @param greatest the greatest allowed
 */
public record Count(long least, long greatest) implements Shape<Long> {

    /** More digits than a long can hold are too many whatever they say. */
    private static final String WHOLE_NUMBER = "[+-]?[0-9]{1,18}";

    @Override
    public Optional<Long> read(Raw raw, Context context) {
        if (!(raw instanceof Raw.Scalar scalar) || !scalar.text().strip().matches(WHOLE_NUMBER)) {
            context.wrongNumber(raw, text -> text.matches(WHOLE_NUMBER), allowed());
            return Optional.empty();
        }
        long value = Long.parseLong(scalar.text().strip());
        if (value < least || value > greatest) {
            context.error(raw, "must be " + allowed());
            return Optional.empty();
        }
        return Optional.of(value);
    }

    @Override
    public Optional<Long> standIn(Raw raw, StandIn standIn) {
        return Optional.of(standIn == StandIn.MILD ? least : greatest);
    }

    @Override
    public String allowed() {
        return "a whole number from " + least + " to " + greatest;
    }

    @Override
    public Optional<Numeric> number(Optional<Raw> written) {
        return Optional.of(Numeric.plain(new Range(least, true, greatest, true), true));
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        return schemas.type("integer").put("minimum", least).put("maximum", greatest);
    }
}
