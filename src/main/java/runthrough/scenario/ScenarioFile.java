package runthrough.scenario;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import runthrough.plant.LineFigure;
import runthrough.plant.SimulationRequest;
import runthrough.scenario.coil.CoilSourceReader;
import runthrough.scenario.coil.KnownCoils;
import runthrough.scenario.grammar.Readings;
import runthrough.scenario.grammar.Route;
import runthrough.scenario.part.MixShares;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;
import runthrough.scenario.source.TextFile;
import runthrough.scenario.source.YamlText;

/**
 * A scenario file that was opened once and may be read many times, each time with other values in the place of some. Several
 * threads may read it at once.
 */
public final class ScenarioFile {

    /** So large a scenario is read (bytes). */
    public static final int LARGEST_FILE = 1_000_000;

    private static final Pattern NAMES_A_TABLE = Pattern.compile("(.*\\.)?(schedule|sheet)");

    private final Path file;
    private final Optional<Raw> root;
    private final List<Problem> unreadable;
    private final List<Setting> figures;
    private final KnownCoils coils;
    private final AtomicReference<@Nullable Readings> known = new AtomicReference<>();

    private ScenarioFile(
            Path file, Optional<Raw> root, List<Problem> unreadable, List<Setting> figures, KnownCoils coils) {
        this.file = file;
        this.root = root;
        this.unreadable = List.copyOf(unreadable);
        this.figures = List.copyOf(figures);
        this.coils = coils;
    }

    /** Opens {@code file}. What is wrong with it comes with each reading. */
    public static ScenarioFile open(Path file) {
        Problems problems = new Problems();
        Optional<Raw> root = TextFile.read(file, file.toString(), "scenario", LARGEST_FILE, problems)
                .flatMap(text -> YamlText.read(text, problems));
        return new ScenarioFile(file, root, problems.errors(), List.of(), new KnownCoils());
    }

    /** The file as if it said {@code settings}, which {@link #with} accepts, itself. */
    public ScenarioFile saying(List<Setting> settings) {
        List<Setting> both = new ArrayList<>(figures);
        Optional<Raw> changed = written()
                .map(written -> written.with(settings, both, new Problems()).root());
        return new ScenarioFile(file, changed, unreadable, both, coils);
    }

    /**
     * A scenario that is there as text already.
     *
     * @param file whose name problems name, and that the names of other files are relative to; it need not exist
     */
    public static ScenarioFile of(Path file, String text) {
        return of(file, text, new KnownCoils());
    }

    /** The same, with {@code coils} that are not read again. */
    static ScenarioFile of(Path file, String text, KnownCoils coils) {
        Problems problems = new Problems();
        Optional<Raw> root = YamlText.read(new TextFile(file.toString(), text), problems);
        return new ScenarioFile(file, root, problems.errors(), List.of(), coils);
    }

    /**
     * A scenario that is there as bytes already, as of a file.
     *
     * @param file whose name problems name, and that the names of other files are relative to; it need not exist
     */
    public static ScenarioFile of(Path file, byte[] bytes) {
        Problems problems = new Problems();
        Optional<Raw> root = TextFile.of(bytes, file.toString(), "scenario", LARGEST_FILE, problems)
                .flatMap(text -> YamlText.read(text, problems));
        return new ScenarioFile(file, root, problems.errors(), List.of(), new KnownCoils());
    }

    /** Whether it could be opened, whatever it says. */
    public boolean isYaml() {
        return root.isPresent();
    }

    /** What the file asks, and the files it names. Never throws for what they hold. */
    public ScenarioReading read() {
        return with(List.of());
    }

    /**
     * What the file asks with {@code settings} in the place of what it says, applied in order. A setting may name a single
     * value, a whole section, or one that the file does not have; where a thing can be said in several ways, the way that is
     * set replaces the others. Measured times give way to what is set, see {@link #givenUp}. Shares of a mix that are not set
     * make room for those that are, and where that is not enough those that were set before, in another place. Figures of the
     * line are set after all others.
     */
    public ScenarioReading with(List<Setting> settings) {
        return with(settings, false);
    }

    /** The same of one of several lines: figures that are set, and that it has not, are left out with a warning. */
    ScenarioReading withAsOneOfSeveral(List<Setting> settings) {
        return with(settings, true);
    }

    private ScenarioReading with(List<Setting> settings, boolean ofSeveral) {
        if (root.isEmpty()) {
            return new ScenarioReading.Refused(unreadable, 0, List.of(), false);
        }
        Problems problems = new Problems();
        List<Setting> scaled = figures.stream()
                .filter(figure ->
                        settings.stream().noneMatch(other -> other.path().equals(figure.path())))
                .collect(Collectors.toCollection(ArrayList::new));
        Raw changed =
                new WrittenScenario(root.get()).with(settings, scaled, problems).root();
        Readings readings = Optional.ofNullable(known.get()).orElseGet(Readings::first);
        ScenarioReader reader =
                new ScenarioReader(file, coils, readings, new FigureSettings(scaled, ofSeveral), problems);
        Optional<SimulationRequest> request = reader.request(changed);
        known.compareAndSet(null, readings.done());
        return request.isPresent() && problems.none()
                ? new ScenarioReading.Accepted(request.get(), problems.warnings(), reader.handover())
                : new ScenarioReading.Refused(
                        problems.errors(), problems.further(), problems.warnings(), request.isPresent());
    }

    /** Paths of the shares of a mix that made room for {@code settings}, of which none names them. */
    public List<String> sharesBeside(List<Setting> settings) {
        boolean isOfShares = settings.stream()
                .anyMatch(
                        setting -> MixShares.in(setting.path(), setting.value()).isPresent());
        if (!isOfShares) {
            return List.of();
        }
        ScenarioFile run = saying(settings);
        Set<String> named = settings.stream()
                .map(Setting::path)
                .map(path ->
                        run.written().map(written -> written.usualPath(path)).orElse(path))
                .collect(Collectors.toSet());
        return inputs().stream()
                .map(Input::path)
                .filter(path -> path.startsWith(CoilSourceReader.MIX) && path.endsWith("." + MixShares.WEIGHT))
                .filter(path -> named.stream().noneMatch(other -> path.equals(other) || path.startsWith(other + ".")))
                .filter(path -> !said(path).equals(run.said(path)))
                .toList();
    }

    /** {@code own} settings, and before them those of {@code others} that none of them replaces, in whatever way it names the part. */
    public List<Setting> replacing(List<Setting> own, List<Setting> others) {
        return written().map(written -> written.replacing(own, others)).orElse(own);
    }

    /** {@code settings} but for the measured times of {@link #givenUp} elements. */
    public List<Setting> holding(List<Setting> settings) {
        return written().map(written -> written.holding(settings)).orElse(settings);
    }

    /**
     * Paths of the work elements of which {@code settings} hold measured times, and give another time besides: it goes by what the
     * file and these say.
     */
    public Set<String> givenUp(List<Setting> settings) {
        return written().map(written -> written.givenUp(settings)).orElse(Set.of());
    }

    private Optional<WrittenScenario> written() {
        return root.map(WrittenScenario::new);
    }

    /** Whether the figure at {@code path} was set besides. */
    public boolean isFigureSet(String path) {
        return figures.stream().anyMatch(figure -> figure.path().equals(path));
    }

    /**
     * The alternatives that the file names, each as if it were run by itself with the same settings.
     *
     * @param settings what is set besides: on top of them, but for what they give another value of; measured times are under them
     * @param written what the file asks with that
     */
    public AlternativesReading alternatives(List<Setting> settings, ScenarioReading.Accepted written) {
        return new AlternativesReader(this, (Raw.Mapping) root.orElseThrow(), settings).read(written);
    }

    /**
     * What is wrong with the alternatives of a file that is refused itself, but for what rests on that; each with {@code settings}
     * besides.
     *
     * @param refused what came of reading the file with {@code settings}
     */
    public List<Problem> problemsOfAlternatives(List<Setting> settings, ScenarioReading.Refused refused) {
        // None of them is on top of another, which the file itself sets.
        List<Setting> besides = settings.stream().filter(Setting::isBesides).toList();
        return root.filter(raw -> raw instanceof Raw.Mapping)
                .map(raw -> new AlternativesReader(this, (Raw.Mapping) raw, besides).problems(refused))
                .orElse(List.of());
    }

    /** What alternatives name that is not there: so much of what is wrong with them is known at once. */
    public List<Problem> astrayAlternatives() {
        return root.filter(raw -> raw instanceof Raw.Mapping)
                .map(raw -> new AlternativesReader(this, (Raw.Mapping) raw, List.of()).astray())
                .orElse(List.of());
    }

    /** What the alternative called {@code name} sets, if the file has it. */
    public Optional<List<Setting>> alternative(String name) {
        return named().filter(one -> one.name().equals(name.strip()))
                .findFirst()
                .map(AlternativeKeys.Written::settings);
    }

    /** The tables that the file or {@code settings} name, whether or not they are there. */
    public List<Path> tables(List<Setting> settings) {
        List<Path> found = new ArrayList<>();
        root.ifPresent(raw -> findTables("", raw, found));
        settings.forEach(setting -> findTables(setting.path(), setting.value(), found));
        return found.stream().distinct().toList();
    }

    private void findTables(String path, Raw raw, List<Path> found) {
        if (raw instanceof Raw.Mapping mapping) {
            mapping.entries().forEach(entry -> findTables(entry.key(), entry.value(), found));
        } else if (raw instanceof Raw.Sequence sequence) {
            sequence.items().forEach(item -> findTables("", item, found));
        } else if (NAMES_A_TABLE.matcher(path).matches()) {
            try {
                found.add(file.resolveSibling(((Raw.Scalar) raw).text()));
            } catch (InvalidPathException e) {
                // Reported when the table is to be read.
            }
        }
    }

    /** The names of all alternatives that the file names. */
    public List<String> alternatives() {
        return named().map(AlternativeKeys.Written::name).toList();
    }

    private Stream<AlternativeKeys.Written> named() {
        return root.filter(raw -> raw instanceof Raw.Mapping).stream()
                .flatMap(raw -> AlternativesReader.named((Raw.Mapping) raw).stream());
    }

    /** Every number of the line that can be set, in the order of the listing of keys, figures last; none if it is refused. */
    public List<Input> inputs() {
        return root.flatMap(raw -> request().map(request -> new Inputs(raw).of(request)))
                .orElse(List.of());
    }

    /**
     * The number that {@code asked} names, whether or not the file has it, with its value under {@code settings}.
     *
     * @param asked the path as a setting, so that problems name what was written and where
     * @param problems takes it when it names none
     */
    public Optional<Input> input(Setting asked, List<Setting> settings, Problems problems) {
        if (root.isEmpty() || !(with(settings) instanceof ScenarioReading.Accepted accepted)) {
            return Optional.empty();
        }
        Raw changed = new WrittenScenario(root.get())
                .with(settings, new ArrayList<>(), new Problems())
                .root();
        return new Inputs(changed).find(accepted.request(), asked, problems);
    }

    /** The value that {@code path} names as the file has it, or as it holds by default; empty where nothing is said. */
    public Optional<String> said(String path) {
        Optional<String> figure = LineFigure.called(path.strip())
                .flatMap(known -> inputs().stream()
                        .filter(input -> input.path().equals(known.path()))
                        .map(Input::text)
                        .findFirst());
        return figure.or(() -> root.flatMap(raw -> Route.find(ScenarioKeys.SCENARIO, raw, path))
                .map(Route::part)
                .map(part -> part.written().map(Raw::text).orElse(part.byDefault()))
                .filter(text -> !text.isEmpty()));
    }

    /** Where {@code path} stands in the file, or the nearest part around it; the file as a whole where none does. */
    public Place place(String path) {
        return root.map(raw -> {
                    Place found = MessagePlaces.place(raw, path);
                    return found.equals(raw.place()) ? Place.whole(file.toString()) : found;
                })
                .orElse(Place.whole(file.toString()));
    }

    private Optional<SimulationRequest> request() {
        return read() instanceof ScenarioReading.Accepted accepted ? Optional.of(accepted.request()) : Optional.empty();
    }
}
