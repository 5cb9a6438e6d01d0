package runthrough.cli;

import java.util.List;

/** The files of a report. */
final class ReportFiles {
    static final List<String> ALL = List.of(
            "causes.csv",
            "coil-changes.csv",
            "coils.csv",
            "products.csv",
            "replications.csv",
            "report.html",
            "verdict.json",
            "work-elements.csv",
            "worth.csv");

    private ReportFiles() {}

    static List<String> in(String folder) {
        return ALL.stream().map(file -> folder + "/" + file).toList();
    }
}
