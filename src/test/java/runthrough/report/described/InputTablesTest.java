package runthrough.report.described;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import runthrough.plant.Accumulator;
import runthrough.plant.Bending;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilDifference;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.ProcessSection;
import runthrough.plant.RunPlan;
import runthrough.plant.Shifts;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.plant.TravelSpeed;
import runthrough.plant.WorkElement;
import runthrough.quantity.Kind;
import runthrough.quantity.UnitSystem;
import runthrough.report.Table;
import runthrough.report.verdict.Invented;

class InputTablesTest {
    private static final Line LINE = Invented.line(Distribution.constant(25));
    private static final InputTexts TEXTS = new InputTexts(UnitSystem.METRIC);

    @Test
    void everyDistributionIsSaidInWordsWithItsNumbers() {
        assertThat(distribution(Distribution.constant(8))).isEqualTo("8 s");
        assertThat(distribution(Distribution.uniform(10, 20))).isEqualTo("uniform, 10 to 20 s");
        assertThat(distribution(Distribution.triangular(60, 90, 240)))
                .isEqualTo("triangular, 1:00 to 4:00 min, most often 1:30 min");
        assertThat(distribution(Distribution.normal(60, 5))).isEqualTo("normal, mean 60 s, standard deviation 5 s");
        assertThat(distribution(Distribution.lognormal(120, 30)))
                .isEqualTo("lognormal, mean 2:00 min, standard deviation 0:30 min");
        assertThat(distribution(Distribution.gamma(30, 10))).isEqualTo("gamma, mean 30 s, standard deviation 10 s");
        assertThat(distribution(Distribution.weibull(1.5, 900))).isEqualTo("Weibull, shape 1.5, scale 15:00 min");
        assertThat(distribution(Distribution.constant(8).scaled(0.9375))).isEqualTo("7.5 s");
        assertThat(distribution(Distribution.uniform(10, 20).scaled(1.5))).isEqualTo("uniform, 10 to 20 s, times 1.5");
        assertThat(distribution(Distribution.exponential(3600))).isEqualTo("exponential, mean 60:00 min");
        assertThat(distribution(Distribution.observed(List.of(10.0, 20.0, 30.0))))
                .startsWith("measured, 3 values, mean 20 s, standard deviation ");
        assertThat(distribution(Distribution.exponential(60).shifted(20)))
                .isEqualTo("exponential, mean 60 s, plus 20 s");
        assertThat(distribution(Distribution.uniform(30, 60).shifted(-5))).isEqualTo("uniform, 30 to 60 s, less 5 s");
    }

    @Test
    void everyFormOfAccumulatorIsDescribed() {
        assertThat(values(form(new StorageForm.Strands(8, 9, 0.2, 0.3, true)), "Accumulator"))
                .contains("strands, vertical carriage", "8", "9 m", "12 m/min", "18 m/min", "72 m", "96 m/min");
        assertThat(values(form(new StorageForm.FreeLoop(2, 3, 2.5, 0.5)), "Accumulator"))
                .contains("2 free loops", "3 m", "2.5 m", "0.5 m");
        assertThat(values(form(new StorageForm.Spiral(12, 4, 1.5)), "Accumulator"))
                .contains("spiral", "12", "4000 mm", "1500 mm");
        assertThat(values(form(new StorageForm.Direct(55)), "Accumulator"))
                .contains("given by its capacity", "55 m", "no limit");
    }

    @Test
    void everySizeOfCoilIsDescribed() {
        assertThat(coilRow(new CoilSize.ByLength(Distribution.constant(800)))).contains("length 800 m");
        assertThat(coilRow(new CoilSize.ByMass(Distribution.uniform(8000, 12000))))
                .contains("mass uniform, 8 to 12 t");
        assertThat(coilRow(new CoilSize.ByDiameters(1.45, 0.508, 0.95)))
                .contains("diameter 1450 mm outside, 508 mm inside, winding factor 0.95");
    }

    @Test
    void innerDiameterBesideALengthGivesTheOuterOne() {
        // sqrt(0.5^2 + 4 * 0.002 * 300 pi/pi) = sqrt(2.65) = 1.62788 m
        Coil coil = new Coil(
                        "x",
                        new Coil.Strip(0.002, 0.24, 7850),
                        new CoilSize.ByLength(Distribution.constant(300 * Math.PI)))
                .withInnerDiameter(0.5);
        assertThat(InputTables.of(Invented.request(with(new CoilSource.Repeated(coil))))
                        .get(0)
                        .page()
                        .rows()
                        .get(0))
                .contains("length 942.478 m, 500 mm inside, so 1627.88 mm outside");
    }

    @Test
    void peopleShiftsAndConditionsAreListedWhenDescribed() {
        WorkElement load = new WorkElement(
                        "load",
                        new WorkElement.WorkTime.Timed(Distribution.constant(90)),
                        new WorkElement.Occurrence.Always(),
                        false)
                .withPeople(2)
                .notToBePutDown();
        WorkElement weld = new WorkElement(
                "weld",
                new WorkElement.WorkTime.Travel(
                        new TravelSpeed.ByThickness(
                                List.of(new TravelSpeed.Row(0.001, 0.05), new TravelSpeed.Row(0.003, 0.02))),
                        Distribution.constant(6)),
                new WorkElement.Occurrence.When(Set.of(CoilDifference.PRODUCT, CoilDifference.WIDTH)),
                true);
        Shifts shifts = new Shifts(List.of(
                new Shifts.Shift("early", 28_800, 2, List.of(new Shifts.Break(14_400, 1800, 1))),
                new Shifts.Shift("late", 21_600, 1, List.of())));
        Line line = with(
                LINE.change().withWork(List.of(load), List.of(), List.of(weld)).withShifts(shifts));
        assertThat(table(line, "Work of a coil change").page().rows())
                .containsExactly(
                        List.of("prepare", "load", "90 s", "always", "2, not to be put down"),
                        List.of(
                                "join, strip standing",
                                "weld",
                                "across the strip at 3000 mm/min for 1 mm, 1200 mm/min for 3 mm, plus 6 s",
                                "when the width or the product differs",
                                "1"));
        assertThat(table(line, "Coil change").page().rows())
                .contains(
                        List.of("Crew, early", "2 for 8 h, 1 in the break from 4 h to 4.5 h"),
                        List.of("Crew, late", "1 for 6 h"));
    }

    @Test
    void jointsOnTheirWayAndTheSecondTargetAreListedWhenDescribed() {
        Line line = new Line(
                LINE.coilSource(),
                LINE.entry(),
                LINE.process()
                        .withJoints(new ProcessSection.JointsInProcess(
                                Optional.of(new ProcessSection.JointPassage(0.3, 5, 10)),
                                Optional.of(
                                        new ProcessSection.JointBreak(0.001, 40, Distribution.constant(1200), 30)))),
                LINE.change(),
                LINE.practice(),
                Optional.empty());
        assertThat(table(line, "Process section").page().rows())
                .contains(
                        List.of("Speed while a joint passes, at most", "18 m/min"),
                        List.of("Strip before and after the joint at this speed", "5 m, 10 m"),
                        List.of("Joints that break in the process", "0.1 %"),
                        List.of("Length of the process section", "40 m"),
                        List.of("Repair of a broken joint", "20:00 min"),
                        List.of("Strip scrapped by a break, beside that of a stop", "30 m"));
        SimulationRequest request = Invented.request(LINE);
        request = request.with(request.run().withTargetWithoutStop(OptionalDouble.of(0.999)));
        assertThat(InputTables.of(request))
                .filteredOn(table -> table.caption().equals("Run"))
                .singleElement()
                .extracting(run -> run.page().rows())
                .asString()
                .contains("Target: share of coil changes without a stop, 99.9 %");
    }

    @Test
    void mixGivesSharesOutOfTheirSum() {
        Line mixed = with(new CoilSource.Mix(
                List.of(new CoilSource.Share(Invented.coil("a"), 3), new CoilSource.Share(Invented.coil("b"), 1))));
        Table coils = table(mixed, "Coils: drawn at random by their shares");
        assertThat(coils.page().head()).endsWith("Share, %");
        assertThat(coils.page().rows())
                .extracting(row -> row.get(row.size() - 1))
                .containsExactly("75", "25");
    }

    @Test
    void longScheduleIsCutAndSaysSo() {
        Line scheduled = with(new CoilSource.Schedule(Collections.nCopies(300, Invented.coil("a"))));
        Table coils = InputTables.of(Invented.request(scheduled)).get(0);
        assertThat(coils.caption()).endsWith("(the first 60 of 300)");
        assertThat(coils.page().rows()).hasSize(60);
    }

    @Test
    void workSaysWhenItIsDoneAndWhatIsDoneAgain() {
        WorkElement every = new WorkElement(
                "dress the wheel",
                new WorkElement.WorkTime.Timed(Distribution.constant(60)),
                new WorkElement.Occurrence.Every(12),
                false);
        WorkElement chance = new WorkElement(
                "weld",
                new WorkElement.WorkTime.Travel(0.01, Distribution.constant(6)),
                new WorkElement.Occurrence.Chance(0.25),
                true);
        CoilChange change =
                new CoilChange(2, List.of(), List.of(every), List.of(chance), new CoilChange.Reject.Every(23));
        Table work = table(with(change), "Work of a coil change");
        assertThat(work.page().rows())
                .containsExactly(
                        List.of("tail, strip standing", "dress the wheel", "60 s", "every 12th", "no"),
                        List.of(
                                "join, strip standing",
                                "weld",
                                "across the strip at 600 mm/min, plus 6 s",
                                "with a chance of 25 %",
                                "yes"));
        assertThat(values(with(change), "Coil change")).contains("once at every 23rd coil change");
    }

    @Test
    void rareFeaturesAreListedWhenDescribed() {
        Line line = new Line(
                LINE.coilSource(),
                new Entry(1, 1.5, Double.POSITIVE_INFINITY, 0.4, Optional.of(new Entry.Creep(0.2, 5)), 12),
                new ProcessSection(
                        new ProcessSection.Drive(0.75, 0.2, 0.25),
                        new ProcessSection.Restart(20, Distribution.constant(60)),
                        Optional.of(new ProcessSection.Slowing(0.4, 30, 45)),
                        Optional.of(new ProcessSection.Downtime(
                                Distribution.exponential(1800), Distribution.constant(120))),
                        7,
                        new ProcessSection.Scrap(3, 0),
                        new ProcessSection.JointsInProcess(Optional.empty(), Optional.empty())),
                LINE.change(),
                new Practice.JoinWithAccumulator(
                        new Accumulator(new StorageForm.Direct(90), Double.POSITIVE_INFINITY, 2, 1.5)),
                Optional.of(new Bending(210e9, 350e6, 0.75)));
        assertThat(values(line, "Entry section")).contains("at once", "12 m/min", "5 m", "12 m");
        assertThat(values(line, "Accumulator")).contains("1.5 m");
        assertThat(values(line, "Process section"))
                .contains(
                        "20 m",
                        "60 s",
                        "24 m/min",
                        "30 m",
                        "45 m",
                        "exponential, mean 30:00 min",
                        "2:00 min",
                        "7 m",
                        "3 m");
        assertThat(values(line, "Bending of the strip")).contains("210 GPa", "350 MPa", "750 mm");
    }

    @Test
    void lineWithoutAccumulatorHasNoTableOfOne() {
        assertThat(InputTables.of(Invented.request(Invented.rethread())))
                .extracting(Table::caption)
                .doesNotContain("Accumulator", "Entry section")
                .contains("Process section", "Coil change", "Run");
    }

    @Test
    void runByTimeIsSaidAsTime() {
        SimulationRequest request =
                Invented.request(LINE).with(new RunPlan(new RunPlan.Extent.Time(28800), 2, 30, 9, 0.995));
        Table run = InputTables.of(request).stream()
                .filter(table -> table.caption().equals("Run"))
                .findFirst()
                .orElseThrow();
        assertThat(run.page().rows())
                .contains(
                        List.of("Time of a replication", "8 h"),
                        List.of("First coil changes left out", "2"),
                        List.of("Replications", "30"),
                        List.of("Seed", "9"),
                        List.of("Target: share of coil changes to run through", "99.5 %"));
    }

    private static String distribution(Distribution distribution) {
        return DistributionText.of(distribution, Kind.TIME, TEXTS);
    }

    private static List<String> coilRow(CoilSize size) {
        Coil coil = new Coil("x", new Coil.Strip(0.002, 0.24, 7850), size)
                .withCrops(0.4, 0.3)
                .withProcessSpeed(0.5);
        return InputTables.of(Invented.request(with(new CoilSource.Repeated(coil))))
                .get(0)
                .page()
                .rows()
                .get(0);
    }

    private static Line form(StorageForm form) {
        return new Line(
                LINE.coilSource(),
                LINE.entry(),
                LINE.process(),
                LINE.change(),
                new Practice.JoinWithAccumulator(Accumulator.of(form)),
                Optional.empty());
    }

    private static Line with(CoilSource coilSource) {
        return new Line(coilSource, LINE.entry(), LINE.process(), LINE.change(), LINE.practice(), Optional.empty());
    }

    private static Line with(CoilChange change) {
        return new Line(LINE.coilSource(), LINE.entry(), LINE.process(), change, LINE.practice(), Optional.empty());
    }

    private static Table table(Line line, String caption) {
        return InputTables.of(Invented.request(line)).stream()
                .filter(table -> table.caption().equals(caption))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> values(Line line, String caption) {
        return table(line, caption).page().rows().stream()
                .map(row -> row.get(1))
                .toList();
    }
}
