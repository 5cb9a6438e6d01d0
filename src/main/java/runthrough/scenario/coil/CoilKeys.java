package runthrough.scenario.coil;

import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.Coil;
import runthrough.plant.CoilSize;
import runthrough.plant.Distribution;
import runthrough.quantity.Dimension;
import runthrough.scenario.grammar.Amount;
import runthrough.scenario.grammar.DistributionShape;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.PlainNumber;
import runthrough.scenario.grammar.Range;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.Text;
import runthrough.scenario.grammar.Values;
import runthrough.scenario.grammar.Ways;
import runthrough.scenario.grammar.Ways.Way;

/** What may be said of a coil. */
final class CoilKeys {

    static final Key<String> NAME =
            Key.optional("name", "what you call it, for reports", new Text("a text"), "2.0 x 240 galvanised");
    static final Key<Double> THICKNESS =
            Key.required("thickness", "the strip thickness", Amount.positive(Dimension.LENGTH), "2.0 mm");
    static final Key<Double> WIDTH =
            Key.required("width", "the strip width", Amount.positive(Dimension.LENGTH), "240 mm");
    static final Key<Double> DENSITY =
            Key.required("density", "the density of the metal", Amount.positive(Dimension.DENSITY), "7850 kg/m3");
    static final Key<Distribution> LENGTH = Key.optional(
            "length",
            "the length of the whole coil",
            new DistributionShape(Dimension.LENGTH, Range.POSITIVE),
            "1200 m");
    static final Key<Distribution> MASS = Key.optional(
            "mass", "the mass of the whole coil", new DistributionShape(Dimension.MASS, Range.POSITIVE), "12 t");
    static final Key<Double> OUTER = Key.optional(
            "outer-diameter", "the outer diameter of the coil", Amount.positive(Dimension.LENGTH), "1450 mm");
    static final Key<Double> INNER = Key.optional(
            "inner-diameter",
            "the inner diameter of the coil; beside a length or a mass it gives the outer diameter",
            Amount.positive(Dimension.LENGTH),
            "508 mm");
    static final Key<Double> WINDING_FACTOR = Key.optional(
                    "winding-factor",
                    "the share of the wound section that is strip, the rest being air between the wraps",
                    new PlainNumber(Range.POSITIVE_SHARE),
                    "0.98")
            .orElse("1");
    static final Key<Double> HEAD_CROP = Key.optional(
                    "head-crop",
                    "the length cut off the head as scrap at a joint",
                    Amount.notNegative(Dimension.LENGTH),
                    "0.4 m")
            .orElse("0 m");
    static final Key<Double> TAIL_CROP = Key.optional(
                    "tail-crop",
                    "the length cut off the tail as scrap at a joint",
                    Amount.notNegative(Dimension.LENGTH),
                    "0.3 m")
            .orElse("0 m");
    static final Key<Double> PROCESS_SPEED = Key.optional(
                    "process-speed",
                    "the process speed that this coil asks for",
                    Amount.positive(Dimension.SPEED),
                    "40 m/min")
            .withDefaultWords("the process section's own speed");

    static final Key<String> PRODUCT = Key.optional(
            "product",
            "what is made of it, to show in reports which products stop the line",
            new Text("a text"),
            "tube 60 x 2");

    private static final Key<?>[] ALL = {
        NAME,
        THICKNESS,
        WIDTH,
        DENSITY,
        LENGTH,
        MASS,
        OUTER,
        INNER,
        WINDING_FACTOR,
        HEAD_CROP,
        TAIL_CROP,
        PROCESS_SPEED,
        PRODUCT
    };

    static final Ways SIZE = Ways.oneOf(
            "the size of the coil",
            beside(LENGTH),
            beside(MASS),
            Way.of(OUTER.name(), INNER.name()).with(WINDING_FACTOR.name()));

    /** A coil described in full. */
    static final Section COIL =
            Section.of("coil", "one kind of coil, repeated", ALL).with(SIZE).inOrder(INNER, OUTER, false);

    private CoilKeys() {}

    /** A size beside which diameter and winding of the coil may be given, the winding for the diameter's sake alone. */
    private static Way beside(Key<?> size) {
        return Way.of(size.name())
                .with(INNER.name(), WINDING_FACTOR.name())
                .needing(WINDING_FACTOR.name(), INNER.name());
    }

    /** The coil that {@code values} describe, called {@code name} unless it has a name of its own. */
    static Coil coil(Values values, String name) {
        return new Coil(
                values.find(NAME).orElse(name),
                new Coil.Strip(values.get(THICKNESS), values.get(WIDTH), values.get(DENSITY)),
                size(values),
                new Coil.Crops(values.get(HEAD_CROP), values.get(TAIL_CROP)),
                values.find(PROCESS_SPEED).map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                values.find(PRODUCT).orElse(""),
                core(values));
    }

    /** Beside a length or a mass. */
    private static Optional<Coil.Core> core(Values values) {
        return values.has(OUTER) || !values.has(INNER)
                ? Optional.empty()
                : Optional.of(new Coil.Core(values.get(INNER), values.get(WINDING_FACTOR)));
    }

    private static CoilSize size(Values values) {
        if (values.has(LENGTH)) {
            return new CoilSize.ByLength(values.get(LENGTH));
        }
        return values.has(MASS)
                ? new CoilSize.ByMass(values.get(MASS))
                : new CoilSize.ByDiameters(values.get(OUTER), values.get(INNER), values.get(WINDING_FACTOR));
    }
}
