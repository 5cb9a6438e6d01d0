package runthrough.web;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.scenario.ScenarioText;
import runthrough.scenario.log.LineLogReader;
import runthrough.scenario.log.LineLogReading;
import runthrough.scenario.source.CsvTable;
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;
import runthrough.scenario.source.RenamedPaths;
import runthrough.scenario.source.TextFile;
import runthrough.scenario.source.YamlEdit;
import runthrough.scenario.times.SheetMatch;
import runthrough.scenario.times.TimeSheetReader;
import runthrough.scenario.times.TimeSheetReading;

/**
 * A file that somebody dropped on the page: what it is, and what becomes of it.
 *
 * @param kind {@code scenario}, {@code schedule}, {@code sheet}, {@code log}, or {@code table} where the line names it already
 * @param name by which the line at hand may name it
 * @param text of the scenario: the file itself, or the line at hand with the schedule or the sheet in it; empty for a log
 * @param says what was done, in a sentence
 * @param problems why it cannot be used, as the commands say it; none where it can
 * @param warnings in words
 */
record Dropped(String kind, String name, String text, String says, List<String> problems, List<String> warnings) {
    private static final Set<String> SIZE = Set.of("outer-diameter", "mass", "length");
    private static final Set<String> BESIDE_SIZE = Set.of("inner-diameter", "winding-factor");

    Dropped {
        problems = List.copyOf(problems);
        warnings = List.copyOf(warnings);
    }

    private static Dropped refused(String kind, String name, List<String> problems) {
        return new Dropped(kind, name, "", "", problems, List.of());
    }

    /** What {@code ask} sent, for the line that it asks about. */
    static Dropped of(PageRequest ask, PageFolder files) {
        PageRequest.Sent sent = ask.sent();
        String name = sent.named();
        if (name.matches("(?i).*\\.ya?ml")) {
            return new Dropped(
                    "scenario", name, sent.content(), "The scenario " + name + " is open.", List.of(), List.of());
        }
        Set<String> columns = columns(sent);
        Path file = files.with(ask.withSent()).resolve(name);
        if (columns.containsAll(Set.of("time", "event"))) {
            return log(name, file);
        }
        ScenarioText line = new ScenarioText(file.resolveSibling(PageScenario.NAME), ask.scenario());
        if (NamedFiles.of(line).own().contains(name)) {
            return new Dropped(
                    "table", name, line.text(), name + " is used where the line names it.", List.of(), List.of());
        }
        boolean isSchedule = columns.contains("thickness") || columns.stream().anyMatch(SIZE::contains);
        // No file is read that the page may not read.
        ScenarioText.Changed checked = PageScenario.edited(line, List.of());
        if (!checked.problems().isEmpty()) {
            return refused(isSchedule ? "schedule" : "sheet", name, said(checked.problems(), 0, line.file()));
        }
        return isSchedule ? schedule(name, columns, line, ask) : sheet(name, file, line, ask);
    }

    /** The names of the columns, without their units; none where it is no table. */
    private static Set<String> columns(PageRequest.Sent sent) {
        TextFile text = new TextFile(sent.named(), sent.content());
        return CsvTable.read(text, CsvTable.separator(text), "row", new Problems())
                .map(CsvTable::header)
                .orElse(List.of())
                .stream()
                .map(cell -> cell.text().replaceAll("\\s*[\\[(].*", "").strip().toLowerCase(Locale.ROOT))
                .collect(Collectors.toSet());
    }

    private static Dropped log(String name, Path file) {
        LineLogReading reading = LineLogReader.read(file);
        return reading instanceof LineLogReading.Refused refused
                ? refused("log", name, said(refused.problems(), refused.further(), file))
                : new Dropped("log", name, "", name + " is a log of the line.", List.of(), List.of());
    }

    private static List<String> said(List<Problem> problems, int further, Path file) {
        return PageFolder.said(problems, further, file).lines().toList();
    }

    // ---- a schedule
    // -------------------------------------------------------------------------------------------------

    private static Dropped schedule(String name, Set<String> columns, ScenarioText line, PageRequest ask) {
        Optional<Raw.Mapping> root =
                line.raw().filter(Raw.Mapping.class::isInstance).map(Raw.Mapping.class::cast);
        Optional<ScenarioText> scheduled = root.map(
                raw -> new ScenarioText(line.file(), YamlEdit.apply(line.text(), raw, with(name, columns, raw))));
        return used(
                "schedule",
                name,
                scheduled.map(Assumptions::withoutLost).orElse(line),
                ask,
                "The coils come as " + name + " says.",
                List.of());
    }

    /** {@code root} with the schedule in the place of its coils; what those had in common is the same for the new ones. */
    private static Raw.Mapping with(String schedule, Set<String> columns, Raw.Mapping root) {
        Optional<Raw> several = root.find("coils");
        Raw.Mapping coil = several.flatMap(
                        coils -> coils instanceof Raw.Mapping all ? all.find("defaults") : Optional.empty())
                .or(() -> root.find("coil"))
                .filter(Raw.Mapping.class::isInstance)
                .map(Raw.Mapping.class::cast)
                .orElse(new Raw.Mapping(List.of(), root.place()));
        boolean hasSize = columns.stream().anyMatch(SIZE::contains);
        Set<String> own = coil.entries().stream()
                .map(Raw.Entry::key)
                .filter(key -> columns.contains(key)
                        || key.equals("name")
                        || (hasSize && (SIZE.contains(key) || BESIDE_SIZE.contains(key))))
                .collect(Collectors.toSet());
        Raw.Mapping coils = new Raw.Mapping(List.of(), coil.place())
                .with("schedule", new Raw.Scalar(schedule, coil.place()))
                .with("defaults", coil.without(own));
        RenamedPaths moved = RenamedPaths.moved("coil", "coils.defaults");
        return new Raw.Mapping(
                root.entries().stream()
                        .map(entry -> switch (entry.key()) {
                            case "coil", "coils" -> new Raw.Entry("coils", entry.place(), coils);
                            case "alternatives", "origins" ->
                                new Raw.Entry(entry.key(), entry.place(), moved.in(entry.value()));
                            default -> entry;
                        })
                        .toList(),
                root.place());
    }

    // ---- a time-study sheet
    // -----------------------------------------------------------------------------------------

    private static Dropped sheet(String name, Path file, ScenarioText line, PageRequest ask) {
        TimeSheetReading reading = TimeSheetReader.read(file, name);
        if (reading instanceof TimeSheetReading.Refused refused) {
            return refused("sheet", name, said(refused.problems(), refused.further(), file));
        }
        TimeSheetReading.Accepted accepted = (TimeSheetReading.Accepted) reading;
        PageScenario before = PageScenario.of(line.text(), file.resolveSibling(""), ask.system());
        SheetMatch match = SheetMatch.of(accepted.sheet(), before.asked().line().change());
        if (!match.unknown().isEmpty()) {
            return refused("sheet", name, match.unknown());
        }
        List<ScenarioText.Change> changes = accepted.sheet().elements().stream()
                .flatMap(timed -> match.place(timed).stream())
                .<ScenarioText.Change>map(place -> new ScenarioText.Change.Retime(place.numberedPath(), "sheet", name))
                .toList();
        ScenarioText.Changed changed = PageScenario.edited(line, changes);
        List<String> warnings = Stream.concat(
                        accepted.warnings().stream().map(problem -> PageFolder.said(problem, file)),
                        match.untimed().stream())
                .toList();
        return used(
                "sheet",
                name,
                Assumptions.replaced(line, changed.text(), changes),
                ask,
                "The work takes as long as at the " + accepted.sheet().rows().size() + " coil changes of " + name + ".",
                warnings);
    }

    /** What is said of {@code text}, which names the file, unless it cannot be run. */
    private static Dropped used(
            String kind, String name, ScenarioText text, PageRequest ask, String says, List<String> warnings) {
        PageScenario draft = PageScenario.of(text.text(), text.file().resolveSibling(""), ask.system());
        return draft.request().isPresent()
                ? new Dropped(kind, name, text.text(), says, List.of(), warnings)
                : refused(kind, name, said(draft.problems(), 0, text.file()));
    }
}
