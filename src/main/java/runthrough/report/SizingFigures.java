package runthrough.report;

import java.util.ArrayList;
import java.util.List;
import runthrough.handcalc.Storage;
import runthrough.quantity.Kind;
import runthrough.report.ReportPage.KeyFigure;
import runthrough.study.sizing.Size;
import runthrough.study.sizing.Sizing;

/** The numbers of a sizing that matter most: the smallest accumulator, the present one, what lies between, and by hand. */
final class SizingFigures {
    private final Sizing sizing;
    private final StudyWords words;
    private final SizeWords sizeWords;

    SizingFigures(SizeWords sizeWords) {
        this.sizing = sizeWords.sizing();
        this.words = sizeWords.words();
        this.sizeWords = sizeWords;
    }

    List<KeyFigure> all() {
        List<KeyFigure> figures = new ArrayList<>();
        sizing.smallest().ifPresent(smallest -> figures.addAll(smallest(smallest)));
        sizing.present().ifPresent(now -> figures.addAll(present(now)));
        sizing.handCalculation()
                .storage()
                .map(Storage::capacity)
                .ifPresent(margin -> figures.add(new KeyFigure(
                        "by hand", words.length(margin.needed()), "one joint of mean time, accumulator full")));
        return figures;
    }

    private List<KeyFigure> smallest(Size smallest) {
        List<KeyFigure> figures = new ArrayList<>();
        figures.add(new KeyFigure(
                "smallest capacity",
                words.length(smallest.capacity()),
                sizeWords.capacities().orElse(sizing.chance() ? "" : "exact")));
        SizeWords.adjusted(smallest)
                .ifPresent(adjustable -> figures.add(new KeyFigure(
                        SizeWords.setting(smallest.form()),
                        words.length(adjustable.metres()),
                        sizeWords.settings().orElse(""))));
        return figures;
    }

    private List<KeyFigure> present(Sizing.Point now) {
        List<KeyFigure> figures = new ArrayList<>();
        figures.add(new KeyFigure(
                "as it is",
                words.length(now.size().capacity()),
                sizeWords.setTo(now.size()).orElse("")));
        now.share()
                .ifPresent(share -> figures.add(new KeyFigure(
                        "run through, as it is",
                        words.share(share.mean()),
                        words.texts().interval(Kind.SHARE, share).orElse(""))));
        sizing.smallest().ifPresent(smallest -> figures.add(spare(now.size().capacity(), smallest.capacity())));
        return figures;
    }

    private KeyFigure spare(double capacity, double smallest) {
        double spare = capacity - smallest;
        return new KeyFigure(
                spare >= 0 ? "to spare" : "missing",
                words.length(Math.abs(spare)),
                words.share(Math.abs(spare) / capacity) + " of what there is");
    }
}
