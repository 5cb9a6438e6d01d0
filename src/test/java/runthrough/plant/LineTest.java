package runthrough.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static runthrough.plant.SoundLine.atSpeed;
import static runthrough.plant.SoundLine.coil;
import static runthrough.plant.SoundLine.line;
import static runthrough.plant.SoundLine.timed;
import static runthrough.report.validation.Topic.GEOMETRY;
import static runthrough.report.validation.Topic.WORK;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.checks.CheckBook;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.ProcessSection.Slowing;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.quantity.UnitSystem;

/** What follows from a described line. */
@RecordsChecks
class LineTest {

    @Test
    void ratedSpeed_isTheCoilsOwnOrTheLines() {
        // Rules COIL-7, PROC-1.
        Coil own = atSpeed(coil(600), 2);
        Line line = line().coils(coil(600), own).build();
        assertThat(line.ratedSpeed(coil(600))).isEqualTo(1.5);
        assertThat(line.ratedSpeed(own)).isEqualTo(2);
        assertThat(line.fastestRatedSpeed()).isEqualTo(2);
        assertThat(line.slowestRatedSpeed()).isEqualTo(1.5);
    }

    @Test
    void oneStrip_runsNoFasterThanItsEntry() {
        // Rule PRACTICE-1.
        assertThat(line().withoutAccumulator().topSpeed(1).build().fastestRatedSpeed())
                .isEqualTo(1);
    }

    @Test
    void stopLevel_isReserveAndStoppingDistance() {
        // Rules PROC-3, ACC-8.
        // 10 + 1.5^2/(2 * 0.5)
        assertThat(line().reserve(10).build().stopLevel(1.5)).isEqualTo(12.25);
        assertThat(line().reserve(10)
                        .process(1.5, 1, Double.POSITIVE_INFINITY)
                        .build()
                        .stopLevel(1.5))
                .isEqualTo(10);
    }

    @Test
    void restartLevel_isTheStopLevelAndATenthOfTheCapacityUnlessGiven() {
        // Rule PROC-5.
        assertThat(line().build().restartLevel(1.5)).isEqualTo(2.25 + 20);
        assertThat(line().capacity(2.4).build().restartLevel(1.5)).isEqualTo(2.4);
        assertThat(line().restart(60, Distribution.constant(0)).build().restartLevel(1.5))
                .isEqualTo(60);
    }

    @Test
    void resumeLevel_isTheSlowingLevelAndATenthOfTheCapacityUnlessGiven() {
        // Rule PROC-8.
        assertThat(line().build().resumeLevel(new Slowing(1, 30, Double.NaN))).isEqualTo(50);
        assertThat(line().build().resumeLevel(new Slowing(1, 190, Double.NaN))).isEqualTo(200);
        assertThat(line().build().resumeLevel(new Slowing(1, 30, 35))).isEqualTo(35);
    }

    @Test
    void oneStrip_stopsAndStartsAsTheSlowerOfBoth() {
        // Rule PRACTICE-1.
        // The entry has 0.4 and 0.5 m/s2, the process 0.2 and 0.5.
        Line joins = line().withoutAccumulator().process(1.5, 0.2, 0.3).build();
        assertThat(joins.stoppingDeceleration()).isEqualTo(0.3);
        assertThat(joins.startingAcceleration()).isEqualTo(0.2);
        assertThat(joins.tailDeceleration()).isEqualTo(0.3);
        assertThat(joins.headAcceleration()).isEqualTo(0.2);
    }

    @Test
    void rethreading_stopsAndStartsAsTheProcess() {
        // Rule PRACTICE-6.
        Line rethreads = line().rethread(Distribution.constant(600))
                .process(1.5, 0.7, 0.9)
                .build();
        assertThat(rethreads.tailDeceleration()).isEqualTo(0.9);
        assertThat(rethreads.headAcceleration()).isEqualTo(0.7);
    }

    @Test
    void withAnAccumulator_tailAndHeadAreTheEntrys() {
        Line line = line().process(1.5, 0.1, 0.1).build();
        assertThat(line.tailDeceleration()).isEqualTo(0.5);
        assertThat(line.headAcceleration()).isEqualTo(0.4);
        assertThat(line.stoppingDeceleration()).isEqualTo(0.1);
        assertThat(line.startingAcceleration()).isEqualTo(0.1);
    }

    @Test
    void runOut_isStoppingOrCreeping() {
        // Rules ENTRY-14, ENTRY-15.
        assertThat(line().build().runOutLength(1.5)).isEqualTo(2.25);
        // 3 + (1.5^2 - 0.5^2)/(2 * 0.5)
        assertThat(line().creep(0.5, 3).build().runOutLength(1.5)).isEqualTo(5);
        assertThat(line().creep(0.5, 3)
                        .rethread(Distribution.constant(600))
                        .build()
                        .runOutLength(1.5))
                .isEqualTo(2.25);
    }

    @Test
    void mixAddsItsWeights() {
        // Rule COIL-4.
        CoilSource.Mix mix =
                new CoilSource.Mix(List.of(new CoilSource.Share(coil(600), 3), new CoilSource.Share(coil(700), 1.5)));
        assertThat(mix.totalWeight()).isEqualTo(4.5);
        assertThat(mix.kinds()).hasSize(2);
    }

    /**
     * Weld time is seam length over travel speed; the numbers of W1, W2 and W4: 1250 mm at 3 mm/s, at 600 mm/min, and at 1500
     * mm/min with 20, 15 and 10 s of other work. Elementary arithmetic.
     */
    @ParameterizedTest
    @CsvSource({
        "W1, arc weld at 3 mm/s, 0.003, 0, 416.666667",
        "W2, arc weld at 600 mm/min, 0.01, 0, 125",
        "W4, weld at 1500 mm/min and 45 s of other work, 0.025, 45, 95"
    })
    void weldTravelsAcrossTheStrip(String id, String what, double speed, double more, double seconds, CheckBook book) {
        // Rule CHANGE-3.
        WorkTime weld = new WorkTime.Travel(speed, Distribution.constant(more));
        book.check(WORK, id, what)
                .source(Sources.WELD_TRAVEL)
                .unit("s")
                .expected(seconds)
                .relative(2e-9)
                .got(weld.duration(more, 1.25, 0.002));
    }

    @Test
    void meanTime_countsHowOftenAnElementIsDone() {
        WorkTime time = new WorkTime.Timed(Distribution.uniform(10, 30));
        assertThat(new WorkElement("a", time, new Occurrence.Always(), true).meanTime(Joint.alike(1, 0.002)))
                .isEqualTo(20);
        assertThat(new WorkElement("a", time, new Occurrence.Every(8), true).meanTime(Joint.alike(1, 0.002)))
                .isEqualTo(2.5);
        assertThat(new WorkElement("a", time, new Occurrence.Chance(0.1), true).meanTime(Joint.alike(1, 0.002)))
                .isEqualTo(2);
    }

    @Test
    void rejects_makeExtraPasses() {
        assertThat(new Reject.Never().meanExtraPasses()).isZero();
        // 0.2 + 0.2^2 + ... = 0.25
        assertThat(new Reject.Chance(0.2).meanExtraPasses()).isCloseTo(0.25, within(1e-15));
        assertThat(new Reject.Every(8).meanExtraPasses()).isEqualTo(0.125);
    }

    @Test
    void elasticRadius_isThatOfElementaryBending(CheckBook book) {
        // Rule ACC-10.
        // 210 GPa * 2 mm / (2 * 300 MPa) = 0.7 m
        book.check(GEOMETRY, "B1", "least elastic radius, 2 mm, 210 GPa, 300 MPa")
                .source(Sources.BENDING)
                .unit("m")
                .expected(0.7)
                .relative(1e-12)
                .got(new Bending(210e9, 300e6, 1).elasticRadius(0.002));
        // Aluminium: 70 GPa * 0.5 mm / (2 * 140 MPa) = 0.125 m
        book.check(GEOMETRY, "B2", "least elastic radius, 0.5 mm, 70 GPa, 140 MPa")
                .source(Sources.BENDING)
                .unit("m")
                .expected(0.125)
                .relative(1e-12)
                .got(new Bending(70e9, 140e6, 1).elasticRadius(0.0005));
    }

    @Test
    void brief_asksTheSameOfAnotherLineOrAnotherRun() {
        RunPlan run = new RunPlan(new RunPlan.Extent.Changes(5), 0, 1, 1, 0.9);
        RunPlan longer = new RunPlan(new RunPlan.Extent.Changes(50), 0, 1, 1, 0.9);
        Line other = line().processSpeed(1).build();
        SimulationRequest request = new SimulationRequest("t", List.of("n"), line().build(), run, UnitSystem.METRIC);
        assertThat(request.with(other))
                .isEqualTo(new SimulationRequest("t", List.of("n"), other, run, UnitSystem.METRIC));
        assertThat(request.with(longer).run()).isEqualTo(longer);
    }

    @Test
    void whatNoLineCanBe_isRefusedWithItsValue() {
        // Rule CHECK-1.
        assertThatThrownBy(() -> line().uncoilers(0)).hasMessage("entry uncoilers = 0; must be 1 or more");
        assertThatThrownBy(() -> line().crew(0)).hasMessage("crew = 0; must be 1 or more");
        assertThatThrownBy(() -> line().entry(1, 2, 0, 1))
                .hasMessage("entry acceleration = 0 m/s2; must be more than 0");
        assertThatThrownBy(() -> line().entry(1, 2, 1, -1))
                .hasMessage("entry deceleration = -1 m/s2; must be more than 0");
        assertThatThrownBy(() -> line().process(Double.NaN, 1, 1))
                .hasMessage("process speed = NaN m/s; must be more than 0 and finite");
        assertThatThrownBy(() -> line().slowing(0, 20, Double.NaN))
                .hasMessage("slowing speed = 0 m/s; must be more than 0 and finite");
        assertThatThrownBy(() -> line().slowing(1, 20, -1))
                .hasMessage("slowing resume = -1 m; must be 0 or more and finite");
        assertThatThrownBy(() -> line().creep(1, 0)).hasMessage("creep length = 0 m; must be more than 0 and finite");
        assertThatThrownBy(() -> new Reject.Chance(1)).hasMessage("reject chance = 1; must be 0 or more and below 1");
        assertThatThrownBy(() -> new Reject.Chance(Double.NaN))
                .hasMessage("reject chance = NaN; must be 0 or more and below 1");
        assertThatThrownBy(() -> new Reject.Every(0)).hasMessage("reject every = 0; must be 1 or more");
        assertThatThrownBy(() -> new Occurrence.Chance(1.1)).hasMessage("chance = 1.1; must be from 0 to 1");
        assertThatThrownBy(() -> new CoilSource.Mix(List.of())).hasMessage("a mix without coils; give at least one");
        assertThatThrownBy(() -> new CoilSource.Schedule(List.of()))
                .hasMessage("a schedule without coils; give at least one");
        assertThatThrownBy(() -> new CoilSource.Share(coil(1), Double.NaN))
                .hasMessage("coil weight = NaN; must be more than 0 and finite");
        assertThatThrownBy(() -> new Bending(1, 1, 0))
                .hasMessage("bending radius = 0 m; must be more than 0 and finite");
        assertThatThrownBy(() -> new RunPlan(new RunPlan.Extent.Changes(1), -1, 1, 1, 0.9))
                .hasMessage("leave-out = -1; must be 0 or more");
        assertThatThrownBy(() -> new RunPlan(new RunPlan.Extent.Changes(1), 0, 1, 1, 1.01))
                .hasMessage("target = 1.01; must be more than 0 and at most 1");
        assertThatThrownBy(() -> new RunPlan.Extent.Time(0))
                .hasMessage("run time = 0 s; must be more than 0 and finite");
    }

    @Test
    void descriptions_keepTheirListsToThemselves() {
        List<WorkElement> work = new ArrayList<>(List.of(timed("a", 1)));
        CoilChange change = new CoilChange(1, work, work, work, new Reject.Never());
        work.clear();
        assertThat(change.prepare()).hasSize(1);
        assertThat(change.join()).hasSize(1);
        assertThat(change.tail()).hasSize(1);
    }
}
