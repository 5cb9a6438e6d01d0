package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.plant.Accumulator;
import runthrough.plant.Bending;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.ProcessSection;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.quantity.UnitSystem;

/** What may be written, and what is understood by it. */
class ScenarioReaderTest {

    @TempDir
    private Path folder;

    private Written written = new Written(Path.of("."));

    @BeforeEach
    void writeIntoTheFolder() {
        written = new Written(folder);
    }

    private Coil coil(String coil) {
        CoilSource coilSource = written.line("coil: " + coil).coilSource();
        assertThat(coilSource).isInstanceOf(CoilSource.Repeated.class);
        return ((CoilSource.Repeated) coilSource).coil();
    }

    private static final String STRIP = "thickness: 0.002 m, width: 24 cm, density: 7.85 g/cm3";

    @Test
    void quantitiesBecomeSiWhateverTheirUnit() {
        Coil coil =
                coil("{" + STRIP + ", length: 0.9 km, head-crop: 10 in, tail-crop: 1 ft, process-speed: 90 ft/min}");

        assertThat(coil.thickness()).isEqualTo(0.002);
        assertThat(coil.width()).isEqualTo(0.24);
        assertThat(coil.density()).isEqualTo(7850);
        assertThat(coil.size()).isEqualTo(new CoilSize.ByLength(Distribution.constant(900)));
        assertThat(coil.headCrop()).isCloseTo(0.254, within(1e-15));
        assertThat(coil.tailCrop()).isEqualTo(0.3048);
        assertThat(coil.processSpeed()).hasValue(0.4572);
    }

    @Test
    void aCoilHasNoCropsAndNoSpeedOfItsOwnUnlessItSaysSo() {
        Coil coil = coil("{" + STRIP + ", length: 900 m}");

        assertThat(coil.name()).isEqualTo("coil");
        assertThat(coil.headCrop()).isZero();
        assertThat(coil.tailCrop()).isZero();
        assertThat(coil.processSpeed()).isEmpty();
    }

    @Test
    void theSizeOfACoilIsLengthMassOrDiameters() {
        assertThat(coil("{" + STRIP + ", mass: 3 t}").size())
                .isEqualTo(new CoilSize.ByMass(Distribution.constant(3000)));
        assertThat(coil("{" + STRIP + ", outer-diameter: 1450 mm, inner-diameter: 508 mm}")
                        .size())
                .isEqualTo(new CoilSize.ByDiameters(1.45, 0.508, 1));
        assertThat(coil("{" + STRIP + ", outer-diameter: 1450 mm, inner-diameter: 508 mm, winding-factor: 0.97}")
                        .size())
                .isEqualTo(new CoilSize.ByDiameters(1.45, 0.508, 0.97));
    }

    static List<Object[]> distributions() {
        return List.of(
                new Object[] {"900 m", Distribution.constant(900)},
                new Object[] {"{constant: 900 m}", Distribution.constant(900)},
                new Object[] {"{uniform: [800 m, 1 km]}", Distribution.uniform(800, 1000)},
                new Object[] {"{triangular: [800 m, 900 m, 1 km]}", Distribution.triangular(800, 900, 1000)},
                new Object[] {"{normal: [900 m, 20 m]}", Distribution.normal(900, 20)},
                new Object[] {"{lognormal: [900 m, 20 m]}", Distribution.lognormal(900, 20)},
                new Object[] {"{gamma: [900 m, 20 m]}", Distribution.gamma(900, 20)},
                new Object[] {"{weibull: [30, 900 m]}", Distribution.weibull(30, 900)},
                new Object[] {"{exponential: 900 m}", Distribution.exponential(900)},
                new Object[] {"{observed: [900 m, 850 m, 1 km]}", Distribution.observed(List.of(900.0, 850.0, 1000.0))},
                new Object[] {
                    "{uniform: [0 m, 200 m], shift: 800 m}",
                    Distribution.uniform(0, 200).shifted(800)
                });
    }

    @ParameterizedTest
    @MethodSource("distributions")
    void aLengthMayFollowAnyDistribution(String text, Distribution distribution) {
        assertThat(coil("{" + STRIP + ", length: " + text + "}").size()).isEqualTo(new CoilSize.ByLength(distribution));
    }

    @Test
    void aNegativeShiftIsAllowed() {
        WorkElement element = written.line("coil-change: {join: [{weld: {uniform: [60 s, 80 s], shift: -10 s}}]}")
                .change()
                .join()
                .get(0);

        assertThat(element.time().drawn())
                .isEqualTo(Distribution.uniform(60, 80).shifted(-10));
    }

    @Test
    void aMixHasWeightsAndItsCoilsShareDefaults() {
        Line line = written.request(Written.with(
                                "coil: ",
                                "coils: {defaults: {thickness: 2 mm, density: 7850 kg/m3, length: 900 m}, mix: ["
                                        + "{weight: 3, name: narrow, width: 200 mm}, "
                                        + "{weight: 1, width: 250 mm, mass: 4 t}]}")
                        .replace("coil: \n", ""))
                .line();

        assertThat(line.coilSource()).isInstanceOfSatisfying(CoilSource.Mix.class, mix -> {
            assertThat(mix.shares()).extracting(CoilSource.Share::weight).containsExactly(3.0, 1.0);
            assertThat(mix.kinds()).extracting(Coil::name).containsExactly("narrow", "coil 2");
            assertThat(mix.kinds()).extracting(Coil::width).containsExactly(0.2, 0.25);
            // The second coil's own size, a mass, wins over the default length.
            assertThat(mix.kinds())
                    .extracting(Coil::size)
                    .containsExactly(
                            new CoilSize.ByLength(Distribution.constant(900)),
                            new CoilSize.ByMass(Distribution.constant(4000)));
        });
    }

    @Test
    void theEntryTakesItsDefaultsWhereItSaysNothing() {
        Entry entry = written.line("entry: {top-speed: 90 m/min}").entry();

        assertThat(entry).isEqualTo(new Entry(1, 1.5, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, none(), 0));
    }

    private static <T> java.util.Optional<T> none() {
        return java.util.Optional.empty();
    }

    @Test
    void theEntryIsReadInFull() {
        Entry entry = written.line("entry: {uncoilers: 2, top-speed: 90 m/min, acceleration: 0.3 m/s2, deceleration: 30"
                        + " m/min/s, uncoiler-path: 8 m, creep: {speed: 6 m/min, length: 2 m}}")
                .entry();

        assertThat(entry).isEqualTo(new Entry(2, 1.5, 0.3, 0.5, java.util.Optional.of(new Entry.Creep(0.1, 2)), 8));
    }

    static List<Object[]> accumulators() {
        double unlimited = Double.POSITIVE_INFINITY;
        return List.of(
                new Object[] {"{capacity: 72 m}", Accumulator.ofCapacity(72)},
                new Object[] {
                    "{strands: 8, stroke: 9 m}",
                    Accumulator.of(new StorageForm.Strands(8, 9, unlimited, unlimited, false))
                },
                new Object[] {
                    "{strands: 8, stroke: 9 m, carriage-speed: 12 m/min, emptying-speed: 6 m/min, carriage: vertical}",
                    Accumulator.of(new StorageForm.Strands(8, 9, 0.2, 0.1, true))
                },
                new Object[] {
                    "{loops: 9, span: 3 m, greatest-sag: 6 m, least-sag: 1 m}",
                    Accumulator.of(new StorageForm.FreeLoop(9, 3, 6, 1))
                },
                new Object[] {
                    "{wraps: 12.5, full-diameter: 4 m, empty-diameter: 2 m}",
                    Accumulator.of(new StorageForm.Spiral(12.5, 4, 2))
                },
                new Object[] {
                    "{capacity: 72 m, fill-rate-limit: 30 m/min, reserve: 2 m, overtravel-allowance: 1 m}",
                    new Accumulator(new StorageForm.Direct(72), 0.5, 2, 1)
                });
    }

    @ParameterizedTest
    @MethodSource("accumulators")
    void anAccumulatorMayTakeAnyForm(String text, Accumulator expected) {
        assertThat(written.line("accumulator: " + text).accumulator()).isEqualTo(expected);
    }

    @Test
    void theProcessIsReadInFull() {
        ProcessSection process = written.line(
                        "process: {speed: 45 m/min, acceleration: 0.2 m/s2, deceleration: 0.25 m/s2,"
                                + " path: 25 m, scrap-per-stop: 4 m, restart: {level: 20 m, delay: 90 s}, slowing: {speed: 20"
                                + " m/min, level: 10 m, resume: 40 m}, downtime: {running: {exponential: 3 h}, standing:"
                                + " {lognormal: [4 min, 2 min]}}}")
                .process();

        assertThat(process)
                .isEqualTo(new ProcessSection(
                        new ProcessSection.Drive(0.75, 0.2, 0.25),
                        new ProcessSection.Restart(20, Distribution.constant(90)),
                        java.util.Optional.of(new ProcessSection.Slowing(20.0 / 60, 10, 40)),
                        java.util.Optional.of(new ProcessSection.Downtime(
                                Distribution.exponential(10800), Distribution.lognormal(240, 120))),
                        25,
                        new ProcessSection.Scrap(4, 0),
                        new ProcessSection.JointsInProcess(java.util.Optional.empty(), java.util.Optional.empty())));
    }

    @Test
    void levelsThatAreNotGivenAreLeftToTheirDefaults() {
        ProcessSection process = written.line(
                        "process: {speed: 45 m/min, slowing: {speed: 20 m/min, level: 10 m}, restart: {delay: 5 s}}")
                .process();

        assertThat(process.restartLevel()).isNaN();
        assertThat(process.slowing().orElseThrow().resumeLevel()).isNaN();
        assertThat(process.acceleration()).isInfinite();
    }

    @Test
    void workElementsSayHowLongWhenAndWhetherAgain() {
        // Rules CHANGE-3, CHANGE-4, CHANGE-8, CHANGE-9.
        Line line = written.line(
                "coil-change: {crew: 2, prepare: [{fetch: 90 s}], tail: [{shear: {constant: 8 s, redo: no}}],"
                        + " join: [{weld: {travel: 600 mm/min, plus: {uniform: [4 s, 6 s]}}}, {dress: {constant: 40 s, every:"
                        + " 12}}, {search: {exponential: 30 s, chance: 4 %}}], reject: {chance: 2 %}}");

        Occurrence always = new Occurrence.Always();
        assertThat(line.change().crew()).isEqualTo(2);
        assertThat(line.change().prepare())
                .containsExactly(
                        new WorkElement("fetch", new WorkTime.Timed(Distribution.constant(90)), always, false));
        assertThat(line.change().tail())
                .containsExactly(new WorkElement("shear", new WorkTime.Timed(Distribution.constant(8)), always, false));
        assertThat(line.change().join())
                .containsExactly(
                        new WorkElement("weld", new WorkTime.Travel(0.01, Distribution.uniform(4, 6)), always, true),
                        new WorkElement(
                                "dress", new WorkTime.Timed(Distribution.constant(40)), new Occurrence.Every(12), true),
                        new WorkElement(
                                "search",
                                new WorkTime.Timed(Distribution.exponential(30)),
                                new Occurrence.Chance(0.04),
                                true));
        assertThat(line.change().reject()).isEqualTo(new Reject.Chance(0.02));
    }

    @Test
    void aRejectMayComeRegularlyOrNever() {
        assertThat(written.line("coil-change: {join: [{join: 50 s}], reject: {every: 25}}")
                        .change()
                        .reject())
                .isEqualTo(new Reject.Every(25));
        assertThat(written.line("coil-change: {join: [{join: 50 s}]}").change().reject())
                .isEqualTo(new Reject.Never());
    }

    @ParameterizedTest
    @ValueSource(strings = {"yes", "true"})
    void aPrepareElementIsDoneAgainOnlyWhenItSaysSo(String yes) {
        Line line = written.line(
                "coil-change: {prepare: [{square head: {constant: 20 s, redo: " + yes + "}}], join: [{join: 50 s}]}");

        assertThat(line.change().prepare().get(0).redo()).isTrue();
    }

    @Test
    void rethreadingNeedsNeitherEntryNorAccumulator() {
        Line line = written.request("""
                        title: A line (invented)
                        practice: rethread
                        coil: {thickness: 2 mm, width: 240 mm, density: 7850 kg/m3, length: 900 m}
                        process: {speed: 45 m/min, acceleration: 0.2 m/s2, deceleration: 0.25 m/s2}
                        coil-change: {rethread: {triangular: [6 min, 9 min, 15 min]}}
                        """).line();

        assertThat(line.practice()).isEqualTo(new Practice.Rethread(Distribution.triangular(360, 540, 900)));
        assertThat(line.accumulator()).isEqualTo(Accumulator.none());
        // Without a joiner there is one strip: it runs as the process does.
        assertThat(line.entry()).isEqualTo(new Entry(1, 0.75, 0.2, 0.25, none(), 0));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        accumulator: none
        accumulator: {capacity: 30 m}
        """)
    void joiningWithoutAnAccumulatorUsesNoneWhateverIsDescribed(String accumulator) {
        Line line = written.line(accumulator, "practice: join without accumulator");

        assertThat(line.practice()).isEqualTo(new Practice.JoinWithoutAccumulator());
        assertThat(line.accumulator()).isEqualTo(Accumulator.none());
    }

    @Test
    void theRunIsReadInFull() {
        assertThat(written.request(Written.with(
                                "run: {coil-changes: 500, leave-out: 2, replications: 30, seed: 9, target: 95 %}"))
                        .run())
                .isEqualTo(new RunPlan(new RunPlan.Extent.Changes(500), 2, 30, 9, 0.95));
        assertThat(written.request(Written.with("run: {time: 8 h, target: 90 %}"))
                        .run())
                .isEqualTo(new RunPlan(new RunPlan.Extent.Time(28800), 0, 20, 1, 0.9));
    }

    @Test
    void aScenarioNeedNotSayHowToRunIt() {
        assertThat(written.request(Written.without("run")).run())
                .isEqualTo(new RunPlan(new RunPlan.Extent.Changes(200), 0, 20, 1, 0.99));
    }

    @Test
    void theRestIsReadToo() {
        SimulationRequest request = written.request(Written.with(
                "results-in: us",
                "notes: [first, second]",
                "bending: {modulus: 210 GPa, yield: 280 MPa, radius: 400 mm}"));

        assertThat(request.title()).isEqualTo("A line (invented)");
        assertThat(request.resultsIn()).isEqualTo(UnitSystem.US_CUSTOMARY);
        assertThat(request.notes()).containsExactly("first", "second");
        assertThat(request.line().bending()).contains(new Bending(210e9, 280e6, 0.4));
        assertThat(written.request(Written.with("notes: just one")).notes()).containsExactly("just one");
    }

    @Test
    void whatTheLineCheckFindsIsShownAtItsKey() {
        assertThat(written.refusal(Written.with("accumulator: {capacity: 30 m, reserve: 40 m}")))
                .containsExactly(
                        "line.yaml:4:40 accumulator.reserve = 40 m; must be at most the accumulator's capacity,"
                                + " 30 m. Give a smaller reserve or a larger accumulator.");
    }

    @Test
    void whatTheLineCheckWarnsOfIsAWarning() {
        assertThat(written.warnings(Written.with("entry: {top-speed: 45 m/min}")))
                .singleElement()
                .asString()
                .startsWith("line.yaml:3:20 entry.top-speed = 45 m/min; must be more than the process speed");
    }

    @Test
    void aFindingAboutAKeyThatIsNotThereIsShownAtTheSectionAroundIt() {
        assertThat(written.refusal(Written.with("accumulator: none")))
                .singleElement()
                .asString()
                .startsWith("line.yaml:4:14 accumulator = 0 m of strip; ");
    }

    @Test
    void aFindingAboutAWorkElementIsShownAtThatElementCountedFromOne() {
        assertThat(written.refusal(Written.with(
                        "coil-change: {join: [{fit up: 10 s}, {weld: {uniform: [5 s, 9 s], shift: -8 s}}]}")))
                .singleElement()
                .asString()
                .startsWith("line.yaml:6:38 coil-change.join[2] = ");
    }

    @Test
    void aFindingAboutACoilOfAMixIsShownAtThatCoil() {
        String mix = "coils: {mix: [{weight: 1, thickness: 2 mm, width: 200 mm, density: 7850 kg/m3, length: 900 m},"
                + " {weight: 1, thickness: 2 mm, width: 200 mm, density: 7850 kg/m3, length: 1 m, head-crop: 2 m}]}";

        assertThat(written.refusal(Written.without("coil") + mix))
                .singleElement()
                .asString()
                .startsWith("line.yaml:8:96 coils.mix[2] = ");
    }
}
