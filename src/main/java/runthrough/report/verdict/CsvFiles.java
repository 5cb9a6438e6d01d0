package runthrough.report.verdict;

import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import runthrough.plant.CoilChange;
import runthrough.plant.Line;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.quantity.Units;
import runthrough.report.write.CsvWriter;
import runthrough.report.write.Outlet;
import runthrough.simulation.Replication;
import runthrough.simulation.random.SourceNames;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.WorkRecord;
import runthrough.simulation.records.WorkRecord.PutDown;
import runthrough.simulation.records.WorkRecord.WorkList;
import runthrough.study.StudyListener;
import runthrough.study.cause.Reason;
import runthrough.study.margin.StripMargin;

/**
 * Three CSV files of a study, written row by row while it runs, so that nothing is kept: a row for each coil change, for each
 * work element, for each replication. Numbers are in full, in the user's units, which the header names; times are in
 * seconds. What does not apply is empty. The time of a work element leaves out while it was put down.
 *
 * <p>Rule REPORT-1.
 */
public final class CsvFiles implements StudyListener, Closeable {
    /** Rows of a replication of no more coil changes than this are made on its own thread, and held until it is their turn. */
    private static final int HELD = 2000;

    private static final CSVFormat FORMAT = CSVFormat.RFC4180;

    static final String CHANGES = "coil-changes.csv";
    static final String ELEMENTS = "work-elements.csv";
    static final String REPLICATIONS = "replications.csv";

    private final Line line;
    private final Unit length;
    private final boolean stores;
    private final boolean slows;
    private final StripMargin margins;
    private final Map<WorkList, List<String>> names;
    private final List<CSVPrinter> open = new ArrayList<>();
    private final CSVPrinter changes;
    private final CSVPrinter elements;
    private final CSVPrinter replications;
    private final ReplicationRows totals;

    /** Opens the files and writes their headers. */
    CsvFiles(SimulationRequest request, Outlet outlet) throws IOException {
        this.line = request.line();
        this.stores = !line.practice().isOneStrip();
        this.slows = stores && line.process().slowing().isPresent();
        this.margins = new StripMargin(line);
        this.names = names(line);
        Units units = Units.of(request.resultsIn());
        this.length = units.unit(Kind.LENGTH);
        this.totals = new ReplicationRows(units);
        try {
            changes = printer(outlet, CHANGES, changeHeader());
            elements = printer(outlet, ELEMENTS, elementHeader());
            replications = printer(outlet, REPLICATIONS, totals.header());
        } catch (IOException e) {
            close();
            throw e;
        }
    }

    @Override
    public Runnable seen(Replication replication, List<Optional<Reason>> reasons) {
        if (replication.changes().size() > HELD) {
            return writing(() -> {
                write(replication, reasons, changes, elements);
                replications.printRecord(totals.row(replication));
            });
        }
        StringBuilder changeRows = new StringBuilder();
        StringBuilder elementRows = new StringBuilder();
        writing(() -> write(replication, reasons, FORMAT.print(changeRows), FORMAT.print(elementRows)))
                .run();
        return writing(() -> {
            changes.getOut().append(changeRows);
            elements.getOut().append(elementRows);
            replications.printRecord(totals.row(replication));
        });
    }

    private void write(
            Replication replication, List<Optional<Reason>> reasons, CSVPrinter changeRows, CSVPrinter elementRows)
            throws IOException {
        int number = replication.index() + 1;
        for (int i = 0; i < reasons.size(); i++) {
            changeRows.printRecord(row(number, replication.changes().get(i), reasons.get(i)));
        }
        for (WorkRecord work : replication.work()) {
            elementRows.printRecord(row(number, work));
        }
    }

    /** Something that writes. */
    @FunctionalInterface
    private interface Writing {
        void run() throws IOException;
    }

    private static Runnable writing(Writing what) {
        return () -> {
            try {
                what.run();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        };
    }

    @Override
    public void close() throws IOException {
        IOException first = null;
        for (CSVPrinter printer : open) {
            try {
                printer.close(true);
            } catch (IOException e) {
                first = first == null ? e : first;
            }
        }
        open.clear();
        if (first != null) {
            throw first;
        }
    }

    private CSVPrinter printer(Outlet outlet, String file, List<String> header) throws IOException {
        CSVPrinter printer =
                FORMAT.print(new BufferedWriter(new OutputStreamWriter(outlet.stream(file), StandardCharsets.UTF_8)));
        open.add(printer);
        printer.printRecord(header);
        return printer;
    }

    private List<String> changeHeader() {
        String unit = " (" + length.symbol() + ")";
        return List.of(
                "replication",
                "coil change",
                "shift",
                "shift name",
                "ending coil",
                "next coil",
                "start (s)",
                "tail stopped (s)",
                "joint released (s)",
                "joint cycle time (s)",
                "waiting for preparation (s)",
                "waiting for people (s)",
                "passes",
                "level at start" + unit,
                "lowest level" + unit,
                "stop level" + unit,
                "margin" + unit,
                "margin to slowing" + unit,
                "margin without a stop" + unit,
                "strip drawn" + unit,
                "outcome",
                "cause",
                "work element",
                "starved stops",
                "strip not run" + unit,
                "refill time (s)");
    }

    private List<String> row(int replication, ChangeRecord change, Optional<Reason> reason) {
        return List.of(
                Integer.toString(replication),
                Integer.toString(change.number()),
                Integer.toString(change.shift() + 1),
                CsvWriter.text(shiftName(change)),
                CsvWriter.text(line.coils().get(change.tailCoil()).name()),
                CsvWriter.text(line.coils().get(change.headCoil()).name()),
                CsvWriter.number(change.start()),
                CsvWriter.number(change.tailStopped()),
                CsvWriter.number(change.released()),
                CsvWriter.number(change.jointCycleTime()),
                CsvWriter.number(change.waitingForPreparation()),
                CsvWriter.number(change.waitingForPeople()),
                Integer.toString(change.passes()),
                stores ? length(change.levelAtStart()) : "",
                stores ? length(change.lowestLevel()) : "",
                stores ? length(change.stopLevel()) : "",
                stores ? length(margins.toStop(change)) : "",
                slows ? length(margins.metres(change)) : "",
                slows ? length(margins.metresWithoutStop(change)) : "",
                stores ? length(change.stripDrawn()) : "",
                change.outcome().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                reason.map(found -> found.cause().words()).orElse(""),
                reason.flatMap(Reason::element)
                        .map(element -> CsvWriter.text(element.name()))
                        .orElse(""),
                Integer.toString(change.starvedStops()),
                length(change.lostMetres()),
                stores ? CsvWriter.number(change.refillTime()) : "");
    }

    private static List<String> elementHeader() {
        return List.of(
                "replication",
                "coil change",
                "pass",
                "work",
                "element",
                "start (s)",
                "end (s)",
                "time (s)",
                "put down (s)",
                "put down at (s)",
                "taken up again at (s)");
    }

    private List<String> row(int replication, WorkRecord work) {
        double putDown = work.putDown().stream()
                .mapToDouble(rest -> rest.to() - rest.from())
                .sum();
        return List.of(
                Integer.toString(replication),
                Integer.toString(work.change()),
                Integer.toString(work.pass()),
                work.list().name().toLowerCase(Locale.ROOT),
                CsvWriter.text(names.getOrDefault(work.list(), List.of()).get(work.element())),
                CsvWriter.number(work.start()),
                CsvWriter.number(work.end()),
                CsvWriter.number(work.end() - work.start() - putDown),
                CsvWriter.number(putDown),
                times(work, PutDown::from),
                times(work, PutDown::to));
    }

    /** Several times in one cell, apart by semicolons. */
    private static String times(WorkRecord work, ToDoubleFunction<PutDown> time) {
        if (work.putDown().isEmpty()) {
            return "";
        }
        return work.putDown().stream()
                .map(rest -> CsvWriter.number(time.applyAsDouble(rest)))
                .collect(Collectors.joining("; "));
    }

    private String shiftName(ChangeRecord change) {
        return line.change()
                .shifts()
                .map(shifts -> shifts.list().get(change.shift()).name())
                .orElse("");
    }

    private static Map<WorkList, List<String>> names(Line line) {
        CoilChange described = line.work();
        return Map.of(
                WorkList.PREPARE, SourceNames.elements(line.practice(), WorkList.PREPARE, described.prepare()),
                WorkList.TAIL, SourceNames.elements(line.practice(), WorkList.TAIL, described.tail()),
                WorkList.JOIN, SourceNames.elements(line.practice(), WorkList.JOIN, described.join()));
    }

    private String length(double metres) {
        return CsvWriter.number(length.fromSi(metres));
    }
}
