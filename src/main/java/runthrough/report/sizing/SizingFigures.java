package runthrough.report.sizing;

import java.util.ArrayList;
import java.util.List;
import runthrough.handcalc.BearableSlowed;
import runthrough.handcalc.Margin;
import runthrough.handcalc.Storage;
import runthrough.plant.Line;
import runthrough.plant.check.LineCheck;
import runthrough.quantity.Kind;
import runthrough.report.Cell;
import runthrough.report.Figure;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.search.Crossing;
import runthrough.study.sizing.Sizing;

/** The numbers of a sizing that matter most: the smallest accumulator, the present one, what lies between, hand calculation. */
final class SizingFigures {
    private static final String SMALLEST = "smallest capacity";

    private static final double ROUNDING = 1e-9;

    private final Sizing sizing;
    private final SizeWords words;
    private final Texts texts;
    private final List<Figure> figures = new ArrayList<>();

    SizingFigures(SizeWords words) {
        this.sizing = words.sizing();
        this.words = words;
        this.texts = words.texts();
    }

    List<Figure> all() {
        words.strands()
                .ifPresent(strands -> figures.add(Figure.of(
                        SMALLEST, strands, words.ofStrands(strands.si()).orElseThrow())));
        words.capacity()
                .ifPresent(capacity -> figures.add(Figure.of(
                        words.strands().isPresent() ? "with another stroke" : SMALLEST,
                        capacity,
                        sizing.chance() ? "" : "exact")));
        words.set()
                .ifPresent(set -> figures.add(Figure.of(
                        SizeWords.setting(sizing.smallest().orElseThrow().form()), set)));
        sizing.present().ifPresent(this::present);
        sizing.handCalculation()
                .storage()
                .map(storage -> storage.toRunThrough().capacity())
                .ifPresent(margin -> figures.add(
                        Figure.of("hand calculation", least(margin), "one joint of mean time, accumulator full")));
        sizing.withoutStop().ifPresent(this::withoutStop);
        return figures;
    }

    private void withoutStop(Crossing found) {
        String target = Texts.target(sizing.request().run().targetWithoutStop().orElseThrow()) + " without a stop";
        String name = "capacity without a stop";
        found.answer()
                .ifPresentOrElse(
                        capacity -> figures.add(Figure.of(
                                name,
                                texts.found(words.tried(), capacity, found.low(), found.high()),
                                words.ofStrands(capacity)
                                                .map(strands -> strands + "; ")
                                                .orElse("")
                                        + target
                                        + least(found))),
                        () -> figures.add(new Figure(name, Cell.of("no capacity is enough"), target)));
        sizing.handCalculation()
                .storage()
                .flatMap(Storage::withoutStop)
                .flatMap(BearableSlowed::capacity)
                .ifPresent(margin ->
                        figures.add(Figure.of("hand calculation, no stop", least(margin), "the process slows")));
    }

    /** Where less is refused: the levels of the file need so much. */
    private String least(Crossing found) {
        Line line = sizing.request().line();
        return found.missed().isPresent()
                        && !LineCheck.accepts(line.with(
                                line.accumulator().resizedTo(found.missed().getAsDouble())))
                ? "; the levels given allow no less"
                : "";
    }

    private void present(Sizing.Point now) {
        double capacity = now.size().capacity();
        figures.add(
                Figure.of("as it is", length(capacity), words.setTo(now.size()).orElse("")));
        now.share().ifPresent(share -> figures.add(Figure.of("run through, as it is", texts.value(Kind.SHARE, share))));
        words.smallest().ifPresent(smallest -> {
            boolean isJustThat = Math.abs(capacity - smallest) <= ROUNDING * capacity;
            double spare = isJustThat ? 0 : capacity - smallest;
            figures.add(Figure.of(
                    spare >= 0 ? "more than needed" : "to be added",
                    texts.marginSize(Kind.LENGTH, spare),
                    texts.share(Math.abs(spare) / capacity) + " of the present capacity"));
        });
    }

    private Value least(Margin capacity) {
        return Value.of(capacity.needed(), words.least());
    }

    private Value length(double metres) {
        return texts.value(Kind.LENGTH, metres);
    }
}
