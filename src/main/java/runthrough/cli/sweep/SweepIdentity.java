package runthrough.cli.sweep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import runthrough.report.Fingerprint;
import runthrough.scenario.Setting;
import runthrough.study.sweep.Cases;

/** What a sweep is known by: made of all that a line depends on, so that no sweep takes up another's lines; but not of where the files are. */
public final class SweepIdentity {
    /** So many hexadecimal digits tell sweeps apart. */
    private static final int DIGITS = 16;

    private String digest;

    /** Begins with what the program and the scenario are known by. */
    public SweepIdentity(String start) {
        this.digest = start;
    }

    public SweepIdentity with(List<Setting> settings) {
        settings.forEach(
                setting -> with(setting.path() + " = " + setting.value().text()));
        return this;
    }

    public SweepIdentity with(Cases cases) {
        for (int i = 0; i < cases.count(); i++) {
            with(cases.values().apply(i).toString());
        }
        return this;
    }

    /** With what stands in {@code tables}. */
    public SweepIdentity withTables(List<Path> tables) {
        tables.forEach(table -> with(table.getFileName() + " " + content(table)));
        return this;
    }

    public SweepIdentity with(String said) {
        digest = Fingerprint.of(digest + "\n" + said);
        return this;
    }

    /** What the sweep is known by. */
    public String text() {
        return digest.substring(0, DIGITS);
    }

    private static String content(Path table) {
        try {
            return Fingerprint.of(Files.readAllBytes(table));
        } catch (IOException e) {
            return "";
        }
    }
}
