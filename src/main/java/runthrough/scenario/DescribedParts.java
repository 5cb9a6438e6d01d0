package runthrough.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import runthrough.plant.Accumulator;
import runthrough.plant.Coil;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.ProcessSection;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.check.LineCheck;
import runthrough.plant.check.Message;
import runthrough.plant.check.StandIn;
import runthrough.quantity.UnitSystem;
import runthrough.scenario.coil.CoilSourceReader;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Values;
import runthrough.scenario.part.PracticeWord;
import runthrough.scenario.source.Raw;

/**
 * What a scenario describes, part by part. Where a number of a part cannot be read, {@code standIn} takes its place; where more is
 * wrong with a part, it takes the place of the whole.
 *
 * <p>Rule CHECK-35.
 *
 * @param scenario as far as it could be read
 * @param readCoils the coils, if they could be read
 * @param standIn for what could not
 */
record DescribedParts(Values scenario, Optional<CoilSource> readCoils, StandIn standIn) {

    /** What is asked; without any stand-in where all could be read. */
    SimulationRequest request() {
        return new SimulationRequest(
                scenario.find(ScenarioKeys.TITLE).orElse(""),
                scenario.get(ScenarioKeys.NOTES),
                line(),
                run().orElseGet(RunKeys::defaultRun),
                scenario.get(ScenarioKeys.RESULTS_IN));
    }

    /** What is wrong between the parts, and what the practice makes no use of, in {@code units}. */
    List<Message> messages(UnitSystem units) {
        List<Message> all = new ArrayList<>(unused(units));
        all.addAll(LineCheck.check(line(), run(), unknownCoils(), units));
        return all;
    }

    /** Warnings of what is described although the practice makes no use of it. */
    List<Message> unused(UnitSystem units) {
        return LineCheck.unused(practice(), accumulator(), rethread(), units);
    }

    /** The coils of a mix, counted from 0, whose size or speed is stood in for. */
    private Set<Integer> unknownCoils() {
        if (readCoils.isPresent()) {
            return Set.of();
        }
        List<Coil> here = coils().kinds();
        List<Coil> there =
                new DescribedParts(scenario, readCoils, standIn.other()).coils().kinds();
        return IntStream.range(0, Math.min(here.size(), there.size()))
                .filter(index -> !isAlike(here.get(index), there.get(index)))
                .boxed()
                .collect(Collectors.toSet());
    }

    private static boolean isAlike(Coil one, Coil other) {
        return one.processSpeed().equals(other.processSpeed())
                && DoubleStream.of(Distribution.LEAST_DRAW, 1 - Distribution.LEAST_DRAW)
                        .allMatch(p -> one.usableLength(p) == other.usableLength(p));
    }

    private Line line() {
        CoilSource coils = coils();
        ProcessSection process =
                part(ScenarioKeys.PROCESS).map(ProcessKeys::process).orElseGet(standIn::process);
        return new Line(
                coils,
                entry(coils, process),
                process,
                part(ScenarioKeys.CHANGE).map(ChangeKeys::change).orElseGet(standIn::work),
                practice(),
                scenario.find(ScenarioKeys.BENDING).map(ScenarioKeys::bending));
    }

    private CoilSource coils() {
        Optional<CoilSource> alone = isWritten(CoilSourceReader.COILS)
                ? Optional.empty()
                : part(CoilSourceReader.COIL).map(CoilSourceReader::repeated);
        boolean isTwice = isWritten(CoilSourceReader.COILS) && isWritten(CoilSourceReader.COIL);
        return readCoils.filter(any -> !isTwice).or(() -> alone).or(this::mix).orElseGet(standIn::coils);
    }

    private Optional<CoilSource> mix() {
        return isWritten(CoilSourceReader.COIL)
                ? Optional.empty()
                : scenario.raw()
                        .find(CoilSourceReader.COILS.name())
                        .filter(written -> written instanceof Raw.Mapping)
                        .flatMap(written -> CoilSourceReader.standIn((Raw.Mapping) written, standIn));
    }

    private Entry entry(CoilSource coils, ProcessSection process) {
        // Without a joiner the strip runs at the process speed from the uncoiler on.
        boolean needsNone = word().filter(PracticeWord.RETHREAD::equals).isPresent();
        double fastest = coils.kinds().stream()
                .mapToDouble(coil -> coil.processSpeed().orElse(process.speed()))
                .max()
                .orElse(process.speed());
        double otherwise = needsNone ? fastest : standIn.entry().topSpeed();
        Entry implied = new Entry(1, fastest, process.acceleration(), process.deceleration(), Optional.empty(), 0);
        return part(ScenarioKeys.ENTRY)
                .map(values -> EntryKeys.entry(values, otherwise))
                .orElseGet(() -> needsNone && isLeftOut(ScenarioKeys.ENTRY) ? implied : standIn.entry());
    }

    private Practice practice() {
        return word().map(known -> known.practice(
                        accumulator().orElseGet(standIn::accumulator),
                        rethread().orElseGet(standIn::time)))
                .orElseGet(standIn::practice);
    }

    /** The practice; empty where it is not known. */
    private Optional<PracticeWord> word() {
        return part(ScenarioKeys.PRACTICE)
                .or(() -> isLeftOut(ScenarioKeys.PRACTICE) ? ScenarioKeys.PRACTICE.fallbackValue() : Optional.empty());
    }

    private Optional<Accumulator> accumulator() {
        return part(ScenarioKeys.ACCUMULATOR)
                .map(given -> given.map(AccumulatorKeys::accumulator).orElseGet(Accumulator::none));
    }

    private Optional<Distribution> rethread() {
        return part(ScenarioKeys.CHANGE).flatMap(change -> change.find(ChangeKeys.RETHREAD));
    }

    /** How it is to be run; empty where that is not known. */
    private Optional<RunPlan> run() {
        return part(ScenarioKeys.RUN)
                .map(RunKeys::run)
                .or(() -> isLeftOut(ScenarioKeys.RUN) ? Optional.of(RunKeys.defaultRun()) : Optional.empty());
    }

    /** The part as it was read, or with stand-ins for what could not be read of it; empty where nothing is known of it. */
    private <T> Optional<T> part(Key<T> key) {
        List<Raw.Entry> written = scenario.raw().entries().stream()
                .filter(entry -> entry.key().equals(key.name()))
                .toList();
        if (written.size() != 1) {
            return Optional.empty();
        }
        return scenario.find(key).or(() -> key.shape().standIn(written.get(0).value(), standIn));
    }

    private boolean isWritten(Key<?> key) {
        return scenario.raw().find(key.name()).isPresent();
    }

    /** Whether the default holds: the part is not there, and nothing that may be meant for it. */
    private boolean isLeftOut(Key<?> key) {
        return !isWritten(key)
                && ScenarioKeys.SCENARIO.perhaps(key, scenario.raw()).isEmpty();
    }
}
