package runthrough.report.verdict;

import org.jspecify.annotations.Nullable;
import runthrough.study.CoilOutcomes;
import runthrough.study.CoilOutcomes.Tally;
import runthrough.study.Verdict;

/** Puts what came of each coil and product into the shape for machines. */
final class CoilMapping {
    private static final int MOST_PRODUCTS = 1000;
    private static final int MOST_COILS = 20;

    private CoilMapping() {}

    static VerdictDocument.Coils coils(CoilTexts texts) {
        CoilOutcomes outcomes = texts.outcomes();
        boolean chance = texts.chance();
        return new VerdictDocument.Coils(
                outcomes.kinds(),
                outcomes.seen(),
                outcomes.products().stream()
                        .limit(MOST_PRODUCTS)
                        .map(product -> product(product, chance))
                        .toList(),
                outcomes.hardest(MOST_COILS).stream()
                        .map(kind -> new VerdictDocument.HardCoil(
                                texts.coil(kind).name(), kind, tally(outcomes.of(kind), chance), texts.why(kind)))
                        .toList());
    }

    private static VerdictDocument.Product product(CoilOutcomes.Product product, boolean chance) {
        boolean isNamed = !product.name().given().isEmpty();
        return new VerdictDocument.Product(
                isNamed ? product.name().given() : null,
                isNamed ? null : product.name().thickness(),
                isNamed ? null : product.name().width(),
                product.coils(),
                tally(product.tally(), chance));
    }

    private static VerdictDocument.CoilTally tally(Tally tally, boolean chance) {
        @Nullable Double low = chance ? tally.interval().low() : null;
        @Nullable Double high = chance ? tally.interval().high() : null;
        return new VerdictDocument.CoilTally(
                VerdictMapping.changes(
                        new Verdict.Changes(tally.changes(), tally.ranThrough(), tally.slowed(), tally.stopped())),
                tally.share(),
                low,
                high,
                VerdictMapping.causes(tally.causes()),
                tally.lostMetres());
    }
}
