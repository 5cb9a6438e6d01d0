package runthrough.cli.sweep;

import runthrough.cli.option.Choice;
import runthrough.report.sweep.CsvSweep;
import runthrough.report.sweep.JsonSweep;
import runthrough.report.sweep.SweepLines;
import runthrough.report.sweep.SweepName;

/** How the lines of a sweep are written. */
public enum LineFormat {
    JSON,
    CSV;

    public SweepLines lines(SweepName name) {
        return switch (this) {
            case JSON -> new JsonSweep(name);
            case CSV -> new CsvSweep(name);
        };
    }

    /** Reads one of the two words. */
    public static final class Words extends Choice<LineFormat> {
        Words() {
            or("json", JSON).or("csv", CSV);
        }
    }
}
