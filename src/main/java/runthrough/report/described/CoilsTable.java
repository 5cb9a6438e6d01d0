package runthrough.report.described;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import runthrough.plant.Coil;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Line;
import runthrough.quantity.Kind;
import runthrough.report.Table;
import runthrough.report.TableMaker;

/** The coils as described, kind by kind or row by row. */
final class CoilsTable {
    private static final int MOST_COILS = 60;

    private final Line line;
    private final InputTexts texts;

    private CoilsTable(Line line, InputTexts texts) {
        this.line = line;
        this.texts = texts;
    }

    static Table of(Line line, InputTexts texts) {
        return new CoilsTable(line, texts).table();
    }

    /** A row of the table of coils; the share is not a number where coils are not drawn. */
    private record CoilRow(Coil coil, double share) {}

    private Table table() {
        TableMaker<CoilRow> table = TableMaker.<CoilRow>of(
                        "Coils: " + order(line) + shown(line.coils().size()))
                .shownUpTo(MOST_COILS)
                .words("Coil", row -> row.coil().name());
        add(table, "Thickness", Kind.THICKNESS, Coil::thickness);
        add(table, "Width", Kind.WIDTH, Coil::width);
        add(table, "Density", Kind.DENSITY, Coil::density);
        table.words("Size", row -> size(row.coil()));
        add(table, "Head crop", Kind.LENGTH, Coil::headCrop);
        add(table, "Tail crop", Kind.LENGTH, Coil::tailCrop);
        table.number(
                "Process speed",
                texts.notation(Kind.SPEED, line.fastestRatedSpeed()),
                row -> row.coil().processSpeed().orElse(Double.NaN),
                "the line's");
        if (line.coilSource() instanceof CoilSource.Mix) {
            table.number("Share", texts.notation(Kind.SHARE, 1), CoilRow::share);
        }
        return table.of(coilRows());
    }

    private void add(TableMaker<CoilRow> table, String heading, Kind kind, ToDoubleFunction<Coil> si) {
        double greatest = line.coils().stream().mapToDouble(si).max().orElse(0);
        table.number(heading, texts.notation(kind, greatest), row -> si.applyAsDouble(row.coil()));
    }

    private List<CoilRow> coilRows() {
        List<Coil> coils = line.coils();
        return IntStream.range(0, coils.size())
                .mapToObj(kind -> new CoilRow(coils.get(kind), share(kind)))
                .toList();
    }

    private double share(int kind) {
        return line.coilSource() instanceof CoilSource.Mix mix
                ? mix.shares().get(kind).weight() / mix.totalWeight()
                : Double.NaN;
    }

    /** In which order the coils of {@code line} come, in words. */
    static String order(Line line) {
        if (line.coilSource() instanceof CoilSource.Repeated) {
            return "one kind";
        }
        return line.coilSource() instanceof CoilSource.Mix
                ? "drawn at random by their shares"
                : "in this order, again from the top when it runs out";
    }

    private static String shown(int count) {
        return count > MOST_COILS ? " (the first " + MOST_COILS + " of " + count + ")" : "";
    }

    private String size(Coil coil) {
        String beside = coil.innerDiameter().isPresent()
                ? ", " + texts.text(Kind.DIAMETER, coil.innerDiameter().getAsDouble()) + " inside, so "
                        + texts.text(Kind.DIAMETER, coil.outerDiameter().orElseThrow()) + " outside"
                        + winding(coil.windingFactor())
                : "";
        return size(coil.size()) + beside;
    }

    private String size(CoilSize size) {
        if (size instanceof CoilSize.ByLength length) {
            return "length " + DistributionText.of(length.length(), Kind.LENGTH, texts);
        } else if (size instanceof CoilSize.ByMass mass) {
            return "mass " + DistributionText.of(mass.mass(), Kind.MASS, texts);
        } else if (size instanceof CoilSize.ByDiameters diameters) {
            return "diameter " + texts.text(Kind.DIAMETER, diameters.outer()) + " outside, "
                    + texts.text(Kind.DIAMETER, diameters.inner()) + " inside" + winding(diameters.windingFactor());
        }
        throw new IllegalArgumentException("a size without words: " + size);
    }

    private String winding(double factor) {
        return factor == 1 ? "" : ", winding factor " + texts.plain(factor).text();
    }
}
