package runthrough.report.verdict;

import java.util.List;
import java.util.Optional;
import runthrough.handcalc.HandCalculation;
import runthrough.handcalc.Margin;
import runthrough.handcalc.Storage;
import runthrough.plant.Coil;
import runthrough.plant.Line;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.report.Cell;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.CoilOutcomes;
import runthrough.study.CoilOutcomes.Product;
import runthrough.study.CoilOutcomes.Tally;
import runthrough.study.cause.Cause;

/** Which products stop the line, and which coil is the worst and why, in words and tables. */
final class CoilTexts {
    private static final int MOST_PRODUCTS = 20;
    private static final int MOST_COILS = 10;

    private final RunThroughResult result;
    private final Line line;
    private final CoilOutcomes outcomes;
    private final Texts texts;

    CoilTexts(RunThroughResult result) {
        this.result = result;
        this.line = result.line();
        this.outcomes = result.study().coils();
        this.texts = result.texts();
    }

    /** Empty where all coils are of one kind, or every change stops the process whatever the coil. */
    static Optional<CoilTexts> of(RunThroughResult result) {
        return result.study().coils().areSeveral() ? Optional.of(new CoilTexts(result)) : Optional.empty();
    }

    CoilOutcomes outcomes() {
        return outcomes;
    }

    boolean chance() {
        return result.verdict().chance();
    }

    Coil coil(int kind) {
        return line.coils().get(kind);
    }

    /** The worst coil and why, in a sentence; empty when all coils ran through. */
    Optional<String> worst() {
        return outcomes.worst()
                .map(kind -> coil(kind).name() + ": ran through in "
                        + Texts.count(outcomes.of(kind).ranThrough()) + " of "
                        + Texts.count(outcomes.of(kind).changes()) + " changes. " + why(kind));
    }

    /** What to say where not every coil came to its change; empty where each did. */
    Optional<String> notSeen() {
        return outcomes.seen() == outcomes.kinds()
                ? Optional.empty()
                : Optional.of("Of " + Texts.count(outcomes.kinds()) + " coils " + Texts.count(outcomes.seen())
                        + " came to their change: run more coil changes to judge them all.");
    }

    /** The root cause of most of its failures, with the coil's own numbers. */
    String why(int kind) {
        HandCalculation hand = HandCalculation.of(line, kind);
        return outcomes.of(kind)
                .causes()
                .main()
                .map(cause -> switch (cause) {
                    case PRACTICE -> "Every change stops the process: entry and process are one strip.";
                    case WAITING_FOR_PREPARATION, BOTH_WAITS -> preparation(hand);
                    case WAITING_FOR_PEOPLE -> "The joint waited for people.";
                    case ACCUMULATOR_NOT_FULL -> refill(kind, hand);
                    case NOT_THE_JOINT -> "The joint took no longer than a full accumulator bears.";
                    case JOINT_MADE_AGAIN -> "The joint was made again.";
                    case OCCASIONAL_ELEMENT, ELEMENT_TOOK_LONG, SEVERAL_TOGETHER, USUAL_JOINT_TOO_LONG ->
                        capacity(kind, hand);
                })
                .orElse("It always ran through.");
    }

    private String preparation(HandCalculation hand) {
        return "The next coil was not ready: this one lasts " + texts.time(hand.coilRun())
                + ", and preparing the next takes "
                + texts.time(hand.preparation().needed()) + " on average.";
    }

    private String refill(int kind, HandCalculation hand) {
        Optional<Margin> strip = hand.storage().flatMap(Storage::coilStrip);
        return "The accumulator was not full again: at " + texts.speed(line.ratedSpeed(coil(kind))) + " "
                + strip.map(margin -> texts.length(margin.given()) + " of it pass before its change, and filling takes "
                                + texts.length(margin.needed()) + ".")
                        .orElse("it is too short.");
    }

    private String capacity(int kind, HandCalculation hand) {
        return "The accumulator did not last: at " + texts.speed(line.ratedSpeed(coil(kind))) + " "
                + hand.storage().map(this::bears).orElse("it is too small.");
    }

    /** What a full accumulator bears before the process slows, or else stops, against what a joint takes. */
    private String bears(Storage storage) {
        Margin joint = storage.toRunThrough().jointCycleTime();
        return "it bears a joint of "
                + texts.margin(Kind.TIME, Math.max(0, joint.given())).text()
                + (storage.withoutSlowing().isPresent() ? " before the process slows" : "") + ", and the joint takes "
                + texts.notation(Kind.TIME, joint.needed()).atLeast().text(joint.needed()) + " on average"
                + (joint.needed() > joint.given() ? "." : " and longer at the changes that failed.");
    }

    /** A product's name, or the section of its strip. */
    String name(CoilOutcomes.Name name) {
        return name.given().isEmpty()
                ? texts.of(Kind.THICKNESS, name.thickness()) + " x " + texts.of(Kind.WIDTH, name.width())
                : name.given();
    }

    /** What came of a product or a coil, under its name. */
    private record Row(String name, String which, Tally tally) {}

    /** Product by product, those with most failures first. */
    Table products() {
        List<Product> products = outcomes.products();
        String beyond = products.size() > MOST_PRODUCTS
                ? ", the first " + MOST_PRODUCTS + " of " + Texts.count(products.size())
                : "";
        return table(
                "Coil changes by product, each counting by the coil that ends" + beyond,
                "Coils",
                products.stream()
                        .limit(MOST_PRODUCTS)
                        .map(product -> new Row(name(product.name()), Texts.count(product.coils()), product.tally()))
                        .toList());
    }

    /** The coils that are hardest on the line; without rows when all ran through. */
    Table hardest() {
        return table(
                "The coils that are hardest on the line",
                "Place",
                outcomes.hardest(MOST_COILS).stream()
                        .map(kind -> new Row(coil(kind).name(), "no. " + (kind + 1), outcomes.of(kind)))
                        .toList());
    }

    private Table table(String caption, String second, List<Row> rows) {
        return TableMaker.<Row>of(caption)
                .words("", Row::name)
                .cell(second, row -> Cell.of(row.which()))
                .count("Changes", row -> row.tally().changes())
                .estimate(
                        "Run through",
                        Notation.SHARE,
                        chance(),
                        "",
                        row -> new Value(
                                row.tally().share(),
                                Notation.SHARE,
                                texts.known(Optional.of(row.tally().interval()))))
                .count("Slowed", row -> row.tally().slowed())
                .count("Stopped", row -> row.tally().stopped())
                .pageWords(
                        "Root cause",
                        row -> row.tally().causes().main().map(Cause::words).orElse(""))
                .number(
                        "Strip not run",
                        texts.notation(Kind.LENGTH),
                        row -> row.tally().lostMetres())
                .of(rows)
                .in(Table.Seen.PAGE);
    }
}
