package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.handcalc.Margin;
import runthrough.plant.Alternative;
import runthrough.plant.SimulationRequest;
import runthrough.plant.handover.Handover;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;
import runthrough.report.Answer;
import runthrough.report.Cell;
import runthrough.report.Figure;
import runthrough.report.Provenance;
import runthrough.report.Table;
import runthrough.report.Texts;
import runthrough.report.document.Document;
import runthrough.report.document.DocumentMaker;
import runthrough.report.lever.LeverWords;
import runthrough.report.lever.WayWords;
import runthrough.report.verdict.RunThroughResult;
import runthrough.report.verdict.VerdictAnswer;
import runthrough.report.write.HtmlWriter;
import runthrough.report.write.JsonWriter;
import runthrough.report.write.TerminalWriter;
import runthrough.scenario.ScenarioFile;
import runthrough.scenario.ScenarioReading;
import runthrough.study.Goal;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.lever.Lever;
import runthrough.study.lever.LeverAnswer;
import runthrough.study.lever.LeverChange;
import runthrough.study.lever.LeverStudy;
import runthrough.study.lever.Levers;
import runthrough.study.lever.WorthStudy;
import runthrough.study.limits.CountLimit;
import runthrough.study.limits.Limits;
import runthrough.study.limits.LimitsStudy;
import runthrough.study.sizing.Sizing;
import runthrough.study.sizing.SizingOptions;
import runthrough.study.sizing.SizingStudy;

/** One question has one number: what would meet the target of every shipped line, in every place that says it. */
class OneNumberTest {
    private static final int REPLICATIONS = 12;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "tube-line",
                "tube-line-measured",
                "stamping-joiner",
                "tube-spiral",
                "roll-former",
                "coating-line",
                "slitter",
                "galvanising-line",
                "slitter-widths"
            })
    void whatWouldMeetTheTargetIsTheSameNumberEverywhere(String name) throws Exception {
        SimulationRequest asked = ((ScenarioReading.Accepted)
                        ScenarioFile.open(Path.of("scenarios", name + ".yaml")).read())
                .request();
        SimulationRequest request = asked.with(asked.run().withReplications(REPLICATIONS));
        double target = request.run().target();
        Levers levers = new LeverStudy(request, List.of(Goal.runThrough(target)))
                .ranked(Optional.empty(), 2, StudyListener.NONE);

        // Rule LEVER-12.
        inLimits(levers, new LimitsStudy(request, target).run(2, StudyListener.NONE));
        inSize(levers, new SizingStudy(request, SizingOptions.usual(target, REPLICATIONS)).run(2, StudyListener.NONE));
        if (!levers.enough().isEmpty()) {
            inRun(levers, request);
            onThePage(levers, Fixes.of(request, Optional.empty(), 2, StudyListener.NONE));
        }
    }

    private static void inLimits(Levers levers, Limits limits) {
        for (LeverAnswer answer : levers.enough()) {
            OptionalDouble limit = switch (answer.lever().what()) {
                case CAPACITY, JOINT_CYCLE_TIME, PROCESS_SPEED, ENTRY_TOP_SPEED ->
                    limits.limit(answer.lever().what()).orElseThrow().crossing().answer();
                case CREW -> count(limits, CountLimit.What.CREW, answer);
                case UNCOILERS -> count(limits, CountLimit.What.UNCOILERS, answer);
                case REJECTS, COIL_LENGTH, ELEMENT -> answer.value();
            };
            assertThat(limit).as(answer.lever().toString()).isEqualTo(answer.value());
        }
    }

    private static OptionalDouble count(Limits limits, CountLimit.What what, LeverAnswer answer) {
        CountLimit limit = limits.counts().stream()
                .filter(one -> one.what() == what)
                .findFirst()
                .orElseThrow();
        return (answer.isShown() ? limit.sure() : limit.smallest())
                .stream().asDoubleStream().findFirst();
    }

    private static void inSize(Levers levers, Sizing sizing) {
        levers.enough().stream()
                .filter(answer -> answer.lever().what() == Lever.What.CAPACITY)
                .forEach(answer -> assertThat(
                                answer.strand().isPresent()
                                        ? sizing.strands().orElseThrow().answer()
                                        : sizing.capacity().orElseThrow().answer())
                        .isEqualTo(answer.value()));
    }

    private static void inRun(Levers levers, SimulationRequest request) throws Exception {
        RunThroughResult verdict = RunThroughResult.of(
                new RunThroughStudy(request).run(StudyOptions.plain(), StudyListener.NONE),
                List.of(),
                new Provenance("program", Optional.empty(), Optional.empty()));
        RunThroughResult result = verdict.with(new WorthStudy(verdict.study()).run(2, StudyListener.NONE))
                .with(levers);
        Answer answer = VerdictAnswer.inWords(result);
        String terminal = TerminalWriter.render(answer, false).replaceAll("\\s+", " ");
        String page = HtmlWriter.render(answer)
                .replace('\u00a0', ' ')
                .replace("&nbsp;", " ")
                .replaceAll("\\s+", " ")
                .replace("&#34;", "\"");
        JsonNode json = new ObjectMapper().readTree(JsonWriter.render(answer));
        LeverWords words = LeverWords.of(request);
        for (LeverAnswer lever : levers.enough()) {
            assertThat(terminal).contains(words.value(lever, lever.value().orElseThrow()));
            assertThat(page).contains(words.sentence(lever));
        }
        assertThat(numbers(json.at("/levers")))
                .isEqualTo(levers.enough().stream()
                        .map(lever -> lever.value().orElseThrow())
                        .toList());
        WayWords ranked = WayWords.of(request);
        assertThat(levers.pairs()).allSatisfy(pair -> assertThat(page).contains(ranked.sentence(pair)));
        assertThat(numbers(json.at("/ways")))
                .isEqualTo(levers.ways().stream()
                        .flatMap(way -> way.changes().stream())
                        .map(LeverChange::value)
                        .toList());
        inDocument(levers, result, answer);
        // One margin: of the figure, of the JSON and of the verdict.
        assertThat(json.at("/margin_at_target/strip_m").asDouble())
                .isEqualTo(result.study().verdict().spare().orElseThrow().metres());
    }

    private static List<Double> numbers(JsonNode list) {
        return list.findValues("value").stream()
                .filter(JsonNode::isNumber)
                .map(JsonNode::asDouble)
                .toList();
    }

    /** Every number of the document that the run names, too, is the same; and the levers, causes and closed form are. */
    private static void inDocument(Levers levers, RunThroughResult result, Answer run) {
        Document document = DocumentMaker.of(
                result, Handover.NONE, List.of(), Optional.empty(), Optional.empty(), Alternative.AS_WRITTEN);
        Map<String, Figure> said = run.figures().stream().collect(Collectors.toMap(Figure::name, figure -> figure));
        List<Figure> shared = Stream.concat(document.figures().stream(), document.report().figures().stream())
                .filter(figure -> said.containsKey(figure.name()))
                .toList();
        assertThat(shared)
                .hasSizeGreaterThan(8)
                .allSatisfy(figure -> assertThat(figure).isEqualTo(said.get(figure.name())));
        assertThat(document.report().headline()).isEqualTo(run.headline());
        Texts texts =
                new Texts(levers.request().resultsIn(), result.study().verdict().chance());
        LeverWords words = LeverWords.of(levers.request());
        String cells = Stream.concat(
                        document.report().shownTables().stream(), document.report().body().tables().stream())
                .flatMap(table -> table.rows().stream())
                .flatMap(List::stream)
                .map(Cell::text)
                .collect(Collectors.joining(" | "));
        assertThat(levers.enough())
                .allSatisfy(lever -> assertThat(cells)
                        .contains(words.value(lever, lever.value().orElseThrow())));

        Table equipment = document.chapters().stream()
                .flatMap(chapter -> chapter.tables().stream())
                .filter(table -> table.caption().startsWith("Accumulator:"))
                .findFirst()
                .orElseThrow();
        Margin capacity =
                result.handCalculation().storage().orElseThrow().toRunThrough().capacity();
        assertThat(equipment.rows())
                .filteredOn(row -> row.get(0).text().equals("Capacity for a joint of mean time"))
                .singleElement()
                .satisfies(row -> assertThat(row)
                        .extracting(Cell::text)
                        .anySatisfy(text -> assertThat(text)
                                .contains(texts.notation(Kind.LENGTH).atLeast().text(capacity.needed()))));
        document.causes()
                .ifPresent(causes -> assertThat(causes.rows())
                        .hasSizeLessThanOrEqualTo(5)
                        .allSatisfy(row -> assertThat(result.worths())
                                .anySatisfy(worth -> assertThat(row.get(2).text())
                                        .isEqualTo(Cell.gainAlone(texts.value(
                                                        Notation.PLAIN.with(Rounding.AMOUNT), worth.stops()))
                                                .text()))));
    }

    private static void onThePage(Levers levers, Fixes fixes) {
        WayWords words = WayWords.of(levers.request());
        assertThat(fixes.fixes())
                .extracting(fix -> fix.words().toLowerCase(Locale.ROOT))
                // The page answers for the second target too.
                .filteredOn(said -> !said.endsWith("without a stop"))
                .zipSatisfy(
                        levers.ways(),
                        (said, way) ->
                                assertThat(said).startsWith(words.sentence(way).toLowerCase(Locale.ROOT)));
        assertThat(levers.ways().stream().flatMap(way -> way.alone().stream()))
                .containsExactlyInAnyOrderElementsOf(levers.enough());
    }
}
