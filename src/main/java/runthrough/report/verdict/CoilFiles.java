package runthrough.report.verdict;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import runthrough.plant.Coil;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.quantity.Units;
import runthrough.report.write.CsvWriter;
import runthrough.report.write.Outlet;
import runthrough.study.CoilOutcomes;
import runthrough.study.CoilOutcomes.Tally;
import runthrough.study.cause.Cause;

/** Two CSV files of a verdict: what came of the coil changes by product, and by coil. */
final class CoilFiles {
    static final String PRODUCTS = "products.csv";
    static final String COILS = "coils.csv";

    private final RunThroughResult result;
    private final CoilOutcomes outcomes;
    private final Unit length;
    private final Unit section;
    private final Unit speed;

    private CoilFiles(RunThroughResult result) {
        Units units = Units.of(result.system());
        this.result = result;
        this.outcomes = result.study().coils();
        this.length = units.unit(Kind.LENGTH);
        this.section = units.unit(Kind.THICKNESS);
        this.speed = units.unit(Kind.SPEED);
    }

    static void write(RunThroughResult result, Outlet outlet) throws IOException {
        CoilFiles files = new CoilFiles(result);
        try (CSVPrinter printer = printer(outlet, PRODUCTS)) {
            files.products(printer);
        }
        try (CSVPrinter printer = printer(outlet, COILS)) {
            files.coils(printer);
        }
    }

    private static CSVPrinter printer(Outlet outlet, String file) throws IOException {
        return CSVFormat.RFC4180.print(new OutputStreamWriter(outlet.stream(file), StandardCharsets.UTF_8));
    }

    private void products(CSVPrinter printer) throws IOException {
        String unit = " (" + section.symbol() + ")";
        printer.printRecord(with(List.of("product", "thickness" + unit, "width" + unit, "coils"), tallyHeader()));
        for (CoilOutcomes.Product product : outcomes.products()) {
            boolean isNamed = !product.name().given().isEmpty();
            printer.printRecord(with(
                    List.of(
                            CsvWriter.text(product.name().given()),
                            isNamed
                                    ? ""
                                    : CsvWriter.number(
                                            section.fromSi(product.name().thickness())),
                            isNamed
                                    ? ""
                                    : CsvWriter.number(
                                            section.fromSi(product.name().width())),
                            Integer.toString(product.coils())),
                    tally(product.tally())));
        }
    }

    private void coils(CSVPrinter printer) throws IOException {
        String unit = " (" + section.symbol() + ")";
        printer.printRecord(with(
                List.of(
                        "place",
                        "coil",
                        "product",
                        "thickness" + unit,
                        "width" + unit,
                        "mean length (" + length.symbol() + ")",
                        "process speed (" + speed.symbol() + ")"),
                tallyHeader()));
        for (int kind = 0; kind < outcomes.kinds(); kind++) {
            Coil coil = result.line().coils().get(kind);
            printer.printRecord(with(
                    List.of(
                            Integer.toString(kind + 1),
                            CsvWriter.text(coil.name()),
                            CsvWriter.text(coil.product()),
                            CsvWriter.number(section.fromSi(coil.thickness())),
                            CsvWriter.number(section.fromSi(coil.width())),
                            CsvWriter.number(length.fromSi(coil.meanLength())),
                            CsvWriter.number(speed.fromSi(result.line().ratedSpeed(coil)))),
                    tally(outcomes.of(kind))));
        }
    }

    private List<String> tallyHeader() {
        List<String> header = new ArrayList<>(List.of(
                "coil changes", "ran through", "slowed", "stopped", "share run through", "share low", "share high"));
        for (Cause cause : Cause.values()) {
            header.add("cause: " + cause.words());
        }
        header.add("strip not run (" + length.symbol() + ")");
        return header;
    }

    private List<String> tally(Tally tally) {
        boolean any = tally.changes() > 0;
        boolean known = any && result.verdict().chance();
        List<String> row = new ArrayList<>(List.of(
                Long.toString(tally.changes()),
                Long.toString(tally.ranThrough()),
                Long.toString(tally.slowed()),
                Long.toString(tally.stopped()),
                any ? CsvWriter.number(tally.share()) : "",
                known ? CsvWriter.number(tally.interval().low()) : "",
                known ? CsvWriter.number(tally.interval().high()) : ""));
        for (Cause cause : Cause.values()) {
            row.add(Long.toString(tally.causes().count(cause)));
        }
        row.add(CsvWriter.number(length.fromSi(tally.lostMetres())));
        return row;
    }

    private static List<String> with(List<String> first, List<String> others) {
        List<String> row = new ArrayList<>(first);
        row.addAll(others);
        return row;
    }
}
