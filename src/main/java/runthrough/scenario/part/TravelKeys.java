package runthrough.scenario.part;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import runthrough.plant.TravelSpeed;
import runthrough.quantity.Dimension;
import runthrough.scenario.grammar.Amount;
import runthrough.scenario.grammar.Context;
import runthrough.scenario.grammar.Items;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Numeric;
import runthrough.scenario.grammar.Part;
import runthrough.scenario.grammar.Schemas;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.Shape;
import runthrough.scenario.grammar.Values;
import runthrough.scenario.source.Raw;

/** A travel speed: one for every strip ({@code 3 m/min}), or a table by strip thickness. */
public record TravelKeys() implements Shape<TravelSpeed> {

    private static final Amount SPEED = Amount.positive(Dimension.SPEED);

    private static final Key<Double> ROW_THICKNESS =
            Key.required("thickness", "the strip thickness", Amount.positive(Dimension.LENGTH), "1 mm");
    private static final Key<Double> ROW_SPEED =
            Key.required("speed", "the travel speed for strip of this thickness", SPEED, "4 m/min");

    private static final Items<Values> TABLE = new Items<>(
            Section.of(
                    "travel",
                    "travel speed by the thicker of the two strips, linear between the rows; outside of them that of the"
                            + " nearest row",
                    ROW_THICKNESS,
                    ROW_SPEED),
            "speeds by thickness",
            1,
            false);

    @Override
    public Optional<TravelSpeed> read(Raw raw, Context context) {
        if (raw instanceof Raw.Scalar) {
            return SPEED.read(raw, context).map(TravelSpeed::of);
        } else if (!(raw instanceof Raw.Sequence sequence)) {
            context.wrongShape(raw, allowed());
            return Optional.empty();
        } else {
            return TABLE.read(sequence, context)
                    .filter(rows -> rises(rows, context))
                    .map(rows -> new TravelSpeed.ByThickness(rows.stream()
                            .map(row -> new TravelSpeed.Row(row.get(ROW_THICKNESS), row.get(ROW_SPEED)))
                            .toList()));
        }
    }

    private static boolean rises(List<Values> rows, Context context) {
        boolean isGood = true;
        for (int i = 1; i < rows.size(); i++) {
            if (rows.get(i).get(ROW_THICKNESS) <= rows.get(i - 1).get(ROW_THICKNESS)) {
                Raw given = thickness(rows.get(i));
                context.item(i + 1)
                        .at(ROW_THICKNESS)
                        .error(
                                given,
                                "must be more than in the row before, "
                                        + thickness(rows.get(i - 1)).shown(),
                                "Give each thickness once, the thinnest strip first.");
                isGood = false;
            }
        }
        return isGood;
    }

    private static Raw thickness(Values row) {
        return row.raw().find(ROW_THICKNESS.name()).orElseThrow();
    }

    @Override
    public String allowed() {
        return SPEED.allowed() + ", or " + TABLE.allowed();
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        return schemas.anyOf(SPEED.schema(schemas), TABLE.schema(schemas));
    }

    @Override
    public Optional<Numeric> number(Optional<Raw> written) {
        return written.filter(raw -> !(raw instanceof Raw.Scalar)).isPresent()
                ? Optional.empty()
                : SPEED.number(written);
    }

    @Override
    public List<Part> parts(Optional<Raw> written) {
        return written.filter(raw -> raw instanceof Raw.Sequence).isPresent() ? TABLE.parts(written) : List.of();
    }

    @Override
    public List<Section> sections() {
        return TABLE.sections();
    }
}
