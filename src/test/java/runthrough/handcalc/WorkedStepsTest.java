package runthrough.handcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static runthrough.plant.SoundLine.coil;
import static runthrough.plant.SoundLine.line;
import static runthrough.plant.SoundLine.timed;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import runthrough.plant.Accumulator;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilDifference;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.StorageForm;
import runthrough.plant.TravelSpeed;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.quantity.Kind;
import runthrough.quantity.UnitSystem;

/** Whoever follows the worked calculation with a pocket calculator comes to the same numbers. */
class WorkedStepsTest {

    private static final double AT_ONCE = Double.POSITIVE_INFINITY;

    /** Lines that between them take every turn of the calculation. */
    static Stream<Line> lines() {
        WorkElement weld = new WorkElement(
                "weld", new WorkTime.Travel(0.01, Distribution.constant(6)), new Occurrence.Always(), true);
        WorkElement grind = new WorkElement(
                "grind", new WorkTime.Travel(0.05, Distribution.constant(0)), new Occurrence.Chance(0.1), true);
        WorkElement byThickness = new WorkElement(
                "weld by thickness",
                new WorkTime.Travel(
                        new TravelSpeed.ByThickness(
                                List.of(new TravelSpeed.Row(0.001, 0.02), new TravelSpeed.Row(0.003, 0.01))),
                        Distribution.constant(6)),
                new Occurrence.When(Set.of(CoilDifference.WIDTH)),
                true);
        WorkElement change = new WorkElement(
                "change wheel", new WorkTime.Timed(Distribution.uniform(30, 50)), new Occurrence.Every(12), false);
        Coil byMass = new Coil(
                        "by mass", new Coil.Strip(0.002, 1.25, 7850), new CoilSize.ByMass(Distribution.constant(12000)))
                .withCrops(0.4, 0.3);
        Coil byDiameters = new Coil(
                        "by diameters", new Coil.Strip(0.002, 0.24, 7850), new CoilSize.ByDiameters(1.45, 0.508, 0.97))
                .withCrops(0.4, 0.3);
        StorageForm strands = new StorageForm.Strands(8, 25, 0.07, 0.2, false);
        return Stream.of(
                        line(),
                        line().creep(0.5, 3).reserve(4),
                        line().slowing(1, 30, 60),
                        line().entry(2, 2.5, AT_ONCE, AT_ONCE).process(1.5, AT_ONCE, AT_ONCE),
                        line().entry(2, 2.5, AT_ONCE, 0.5).creep(0.5, 3),
                        line().entry(2, 2.5, 0.4, AT_ONCE).creep(0.5, 3),
                        line().accumulator(new Accumulator(strands, AT_ONCE, 3, 1))
                                .coils(byMass),
                        line().accumulator(Accumulator.of(new StorageForm.FreeLoop(12, 4, 9, 0.5)))
                                .coils(byDiameters),
                        line().accumulator(Accumulator.of(new StorageForm.Spiral(40, 4.2, 2.4))),
                        // Refilled in a triangle: the entry might reach 22 m/s.
                        line().topSpeed(22).coils(coil(2000)),
                        line().tail(grind, timed("shear", 8))
                                .join(timed("fit up", Distribution.lognormal(20, 6)), weld, change)
                                .reject(new Reject.Chance(0.02)),
                        line().join(weld).reject(new Reject.Every(5)).coils(byMass),
                        line().join(weld, byThickness).coils(byMass, byDiameters),
                        line().join(weld, byThickness)
                                .reject(new Reject.Chance(0.02))
                                .coilSource(new CoilSource.Mix(List.of(
                                        new CoilSource.Share(byMass, 2), new CoilSource.Share(byDiameters, 1)))),
                        line().tail().join().prepare(),
                        line().uncoilers(1),
                        line().uncoilers(1).uncoilerPath(1),
                        line().uncoilers(1).uncoilerPath(8),
                        line().uncoilers(1).uncoilerPath(600),
                        line().uncoilers(1).creep(0.5, 3).uncoilerPath(0.2),
                        line().uncoilers(1).creep(0.5, 3).uncoilerPath(1),
                        line().uncoilers(1).creep(0.5, 3).uncoilerPath(4),
                        line().uncoilers(1).creep(0.5, 3).uncoilerPath(9),
                        line().uncoilers(1).creep(0.5, 6).uncoilerPath(0.1),
                        line().coils(cropped(0.5, 0.5)).reject(new Reject.Chance(0.1)),
                        line().coils(cropped(0.5, 0)),
                        line().crew(1),
                        line().crew(1).uncoilers(1),
                        line().crew(1).uncoilerPath(2),
                        line().topSpeed(1.5),
                        line().withoutAccumulator().creep(0.5, 3).restart(Double.NaN, Distribution.uniform(50, 70)),
                        line().withoutAccumulator().prepare(timed("load", 900)),
                        line().rethread(Distribution.triangular(360, 540, 900)).uncoilers(1),
                        line().rethread(Distribution.constant(600)))
                .map(builder -> builder.build());
    }

    private static Coil cropped(double head, double tail) {
        return new Coil("cropped", new Coil.Strip(0.002, 1, 7850), new CoilSize.ByLength(Distribution.constant(600)))
                .withCrops(head, tail);
    }

    private static double exactly(Step step, UnitSystem system) {
        CoherentUnits coherent = new CoherentUnits(system);
        return PocketCalculator.workOut(step.fill(term -> {
            double value = coherent.unit(term.kind())
                    .map(unit -> unit.fromSi(term.value()))
                    .orElse(term.value());
            return new BigDecimal(value).toPlainString();
        }));
    }

    @ParameterizedTest
    @MethodSource("lines")
    void everyFormulaGivesItsResult(Line line) {
        for (UnitSystem system : UnitSystem.values()) {
            CoherentUnits coherent = new CoherentUnits(system);
            for (Step step : HandCalculation.of(line).steps()) {
                Term result = step.result();
                double value = coherent.unit(result.kind())
                        .map(unit -> unit.fromSi(result.value()))
                        .orElse(result.value());
                assertThat(exactly(step, system))
                        .as("%s = %s in %s", result.symbol(), step.formula(), system)
                        .isCloseTo(value, within(1e-9 * (1 + Math.abs(value))));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("lines")
    void formulasWithTheNumbersShown_giveTheNumbersShown(Line line) {
        // Six digits are shown; differences of lengths may lose two of them.
        CoherentUnits coherent = new CoherentUnits(UnitSystem.METRIC);
        for (Step step : HandCalculation.of(line).steps()) {
            double value = step.result().value();
            assertThat(PocketCalculator.workOut(coherent.numbers(step)))
                    .as("%s = %s = %s", step.result().symbol(), step.formula(), coherent.numbers(step))
                    .isCloseTo(value, within(2e-3 + 1e-4 * Math.abs(value)));
        }
    }

    @ParameterizedTest
    @MethodSource("lines")
    void everySymbolIsGivenOrWorkedOutOnlyOnce(Line line) {
        HandCalculation calculation = HandCalculation.of(line);
        Set<String> known = new HashSet<>();
        calculation
                .givens()
                .forEach(given ->
                        assertThat(known.add(given.symbol())).as(given.symbol()).isTrue());
        calculation
                .steps()
                .forEach(step -> assertThat(known.add(step.result().symbol()))
                        .as(step.result().symbol())
                        .isTrue());
    }

    @Test
    void stepsReadAsAnEngineerWouldWriteThem() {
        assertThat(shown(line().creep(0.5, 3).reserve(4).build()))
                .containsSubsequence(
                        "t_c = (l_c - v_c^2 / (2 * d_e)) / v_c = (3 - 0.5^2 / (2 * 0.5)) / 0.5 = 5.5 s",
                        "L_out = l_c + V^2 / (2 * d_e) - v_c^2 / (2 * d_e)"
                                + " = 3 + 1.5^2 / (2 * 0.5) - 0.5^2 / (2 * 0.5) = 5 m",
                        "K = L / V = 600 / 1.5 = 400 s",
                        "T_tail = shear tail = 10 = 10 s",
                        "W = T_tail + T_join = 10 + 80 = 90 s",
                        "D = V * T + V^2 / (2 * d_e) + V^2 / (2 * a_e) + (V - v_c) * t_c"
                                + " = 1.5 * 90 + 1.5^2 / (2 * 0.5) + 1.5^2 / (2 * 0.4) + (1.5 - 0.5) * 5.5 = 145.563 m",
                        "C_min = D + R + V^2 / (2 * d_p) = 145.563 + 4 + 1.5^2 / (2 * 0.5) = 151.813 m",
                        "u = V_e - V = 2.5 - 1.5 = 1 m/s",
                        "T_fill = u / a_e + u / d_e + (D - G) / u = 1 / 0.4 + 1 / 0.5 + (145.563 - 2.25) / 1 = 147.813 s",
                        "L_run = L - L_out = 600 - 5 = 595 m",
                        "L_fill = D + V * T_fill + V^2 / (2 * a_e)"
                                + " = 145.563 + 1.5 * 147.813 + 1.5^2 / (2 * 0.4) = 370.094 m");
    }

    /** Drawn: 1.5 x 90 + 1.5^2/(2 x 0.5) + 1.5^2/(2 x 0.4) = 140.0625 m. */
    @Test
    void whatKeepsTheProcessFromSlowing_isWorkedOutWhereItSlows() {
        assertThat(shown(line().slowing(1, 30, 60).build())).contains("C_slow = D + x_slow = 140.063 + 30 = 170.063 m");
        assertThat(shown(line().build())).noneMatch(step -> step.startsWith("C_slow"));
    }

    @Test
    void givensAreWhatTheFormulasUse() {
        WorkElement weld = new WorkElement(
                "weld", new WorkTime.Travel(0.01, Distribution.constant(6)), new Occurrence.Always(), true);

        assertThat(givens(line().build())).contains("V process speed").doesNotContain("w width of the wider strip");
        assertThat(givens(line().join(weld).build())).contains("w width of the wider strip");
        assertThat(givens(line().withoutAccumulator().build())).contains("V strip speed", "d deceleration");
        assertThat(givens(line().build())).contains("d_e entry deceleration");
    }

    private static List<String> givens(Line line) {
        return HandCalculation.of(line).givens().stream()
                .map(given -> given.symbol() + " " + given.name())
                .toList();
    }

    /** With one uncoiler the joint waits for the next coil; with two it is ready. */
    @Test
    void stripNotRunForWaiting_isWorkedOutWhereThereIsWaiting() {
        assertThat(HandCalculation.of(line().withoutAccumulator().uncoilers(1).build())
                        .steps())
                .extracting(step -> step.result().symbol())
                .contains("M", "M_w");
        assertThat(HandCalculation.of(line().withoutAccumulator().build()).steps())
                .extracting(step -> step.result().symbol())
                .contains("M")
                .doesNotContain("M_w");
    }

    private static List<String> shown(Line line) {
        CoherentUnits coherent = new CoherentUnits(UnitSystem.METRIC);
        return HandCalculation.of(line).steps().stream()
                .map(step -> step.result().symbol() + " = " + step.formula() + " = " + coherent.numbers(step) + " = "
                        + coherent.text(step.result()))
                .toList();
    }

    @Test
    void whatIsHeldAgainstSomething_saysSo() {
        assertThat(HandCalculation.of(line().build()).steps())
                .filteredOn(step -> step.margin().isPresent())
                .extracting(step -> step.result().symbol())
                .containsExactly("T_free", "C_min", "T_max", "V_max", "L_fill");
    }

    @Test
    void limitlessTermsAndShares_areShownWithoutUnit() {
        CoherentUnits coherent = new CoherentUnits(UnitSystem.US_CUSTOMARY);
        assertThat(coherent.text(new Term("a", "a", AT_ONCE, Kind.ACCELERATION)))
                .isEqualTo("unlimited");
        assertThat(coherent.text(new Term("n", "n", 0.25, Kind.SHARE))).isEqualTo("0.25");
        assertThat(coherent.text(new Term("L", "L", 30.48, Kind.LENGTH))).isEqualTo("100 ft");
        assertThatThrownBy(() -> coherent.number(new Term("E", "E", 1, Kind.STRESS)))
                .hasMessage("STRESS does not occur in a worked calculation");
    }

    @Test
    void formulaWithoutPlaceForItsTerms_isRefused() {
        Term term = new Term("V", "speed", 1, Kind.SPEED);
        assertThatThrownBy(() -> new Step(term, "{} + {}", List.of(term), Optional.empty()))
                .hasMessage("{} + {} has room for 2 terms, not for 1");
    }
}
