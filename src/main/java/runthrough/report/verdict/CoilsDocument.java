package runthrough.report.verdict;

import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.report.JsonShape;
import runthrough.study.CoilOutcomes;
import runthrough.study.Verdict;

/** JSON of what came of coil changes by coil and product. */
final class CoilsDocument {
    private static final int MOST_PRODUCTS = 1000;
    private static final int MOST_COILS = 20;

    private static final JsonShape<CoilOutcomes.Tally> TALLY = JsonShape.<CoilOutcomes.Tally>named("coil_tally")
            .in(
                    "coil_changes",
                    "By what came of them.",
                    ChangesDocument.CHANGES,
                    tally -> new Verdict.Changes(tally.changes(), tally.ranThrough(), tally.slowed(), tally.stopped()))
            .number("share_run_through", "Ran through over all.", CoilOutcomes.Tally::share)
            .end(
                    "interval_low",
                    "Lower end of Wilson's 95 % interval; null where nothing is random.",
                    tally -> tally.interval().low())
            .end("interval_high", "Its upper end.", tally -> tally.interval().high())
            .in(
                    "causes",
                    "The root causes of those that did not run through.",
                    ChangesDocument.CAUSES,
                    CoilOutcomes.Tally::causes)
            .number("lost_m", "Strip not run, starved.", CoilOutcomes.Tally::lostMetres);

    private static final JsonShape<CoilOutcomes.Product> PRODUCT = JsonShape.<CoilOutcomes.Product>named("product")
            .optionalText(
                    "name",
                    "Its name; null where none is given, and coils are distinguished by their section.",
                    product -> Optional.of(product.name().given()).filter(name -> !name.isEmpty()))
            .optionalNumber(
                    "thickness_m",
                    "Of its strip, where it has no name.",
                    product -> unnamed(product, product.name().thickness()))
            .optionalNumber(
                    "width_m",
                    "Of its strip, where it has no name.",
                    product -> unnamed(product, product.name().width()))
            .count(
                    "coils",
                    "Kinds of coil, in a schedule rows, that came to their change.",
                    CoilOutcomes.Product::coils)
            .in("outcome", "What came of its coil changes.", TALLY, CoilOutcomes.Product::tally);

    private record HardCoil(CoilTexts texts, int kind) {}

    private static final JsonShape<HardCoil> HARD_COIL = JsonShape.<HardCoil>named("hard_coil")
            .text("name", "Its name.", coil -> coil.texts().coil(coil.kind()).name())
            .count("kind", "Its place in the scenario or schedule, from 0.", HardCoil::kind)
            .in(
                    "outcome",
                    "What came of its changes.",
                    TALLY,
                    coil -> coil.texts().outcomes().of(coil.kind()))
            .text(
                    "why",
                    "Why, as a sentence in the user's units.",
                    coil -> coil.texts().why(coil.kind()));

    static final JsonShape<CoilTexts> SHAPE = JsonShape.<CoilTexts>named("coils")
            .count(
                    "kinds",
                    "How many kinds of coil there are; in a schedule, how many rows.",
                    coils -> coils.outcomes().kinds())
            .count(
                    "seen",
                    "How many of them ever came to their change.",
                    coils -> coils.outcomes().seen())
            .list(
                    "products",
                    "Products, those with most coil changes that did not run through first, 1000 at most; all are in"
                            + " products.csv. A coil change counts by the coil that ends with it.",
                    PRODUCT,
                    coils -> coils.outcomes().products().stream()
                            .limit(MOST_PRODUCTS)
                            .toList())
            .list(
                    "hardest",
                    "The coils that are hardest on the line, the worst first, 20 at most; all are in coils.csv.",
                    HARD_COIL,
                    coils -> coils.outcomes().hardest(MOST_COILS).stream()
                            .map(kind -> new HardCoil(coils, kind))
                            .toList());

    private static OptionalDouble unnamed(CoilOutcomes.Product product, double section) {
        return product.name().given().isEmpty() ? OptionalDouble.of(section) : OptionalDouble.empty();
    }

    private CoilsDocument() {}
}
