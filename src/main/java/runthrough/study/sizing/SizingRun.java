package runthrough.study.sizing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.Accumulator;
import runthrough.plant.Coil;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.study.Evaluation;
import runthrough.study.Evaluator;
import runthrough.study.Goal;
import runthrough.study.ProgressCounter;
import runthrough.study.StudyListener;
import runthrough.study.Verdict;
import runthrough.study.lever.LeverRun;
import runthrough.study.lever.LeverSearch;
import runthrough.study.lever.LineLevers;
import runthrough.study.lever.Varied;
import runthrough.study.search.Crossing;
import runthrough.study.search.Crossing.Harder;
import runthrough.study.search.Scale;
import runthrough.study.search.TargetSearch;
import runthrough.study.search.TargetSearch.Guess;
import runthrough.study.sizing.Sizing.Answer;
import runthrough.study.sizing.Sizing.NoneEnough;
import runthrough.study.sizing.Sizing.Point;
import runthrough.study.statistics.RelativeHalfWidth;

/** One run of a {@link SizingStudy}, for a line with an accumulator. */
final class SizingRun {
    /** What never runs empty, as a multiple of what the hand calculation needs or of what there is. */
    private static final double AMPLE = 2000;

    /** The same where coils have speeds of their own, which the process takes up only as they come through. */
    private static final double HARDLY_MORE = 10;

    /** So many coils such an accumulator holds in the long run: a small part of those that are watched. */
    private static final double COILS = 100;

    /** Capacities closer than this are not distinguished where nothing is random. */
    private static final double EXACT = 1e-4;

    /** The same as a part of the interval's half-width, where something is. */
    private static final double FINE = 0.2;

    /** The part of the half-width asked for that the needs must promise, for they are a guess. */
    private static final double PROMISE = 0.95;

    /** About so many capacities are tried. */
    private static final int EXPECTED_TRIALS = 20;

    /** What is found so many times as large as the present capacity is not taken before smaller ones have been tried; nor is more than
     * a present one that is enough. */
    private static final double FAR_OFF = 4;

    /** So many times the capacity for a mean joint is more than anybody builds. */
    private static final double HUGE = 10;

    private final SimulationRequest request;
    private final SizingOptions options;
    private final boolean chance;
    private final Evaluator evaluator;
    private final ProgressCounter steps;
    private final Capacities capacities;
    private final HandCalculation handCalculation;
    private final Line ample;
    private final StripDemand needs;
    private final Varied asLever;
    private final LeverRun leverRun;
    private final LeverSearch alongLever;
    private RunPlan plan;

    SizingRun(SimulationRequest request, SizingOptions options, Evaluator evaluator, StudyListener listener) {
        this.request = request;
        this.options = options;
        this.chance = !request.line().isDeterministic();
        this.evaluator = evaluator;
        this.steps = new ProgressCounter(listener, EXPECTED_TRIALS);
        this.plan = request.run();
        this.handCalculation = HandCalculation.of(request.line());
        this.ample = request.line().with(ample(COILS));
        this.needs = new StripDemand(request.line().with(ample(0)));
        this.capacities = new Capacities(request.line(), evaluator, needs);
        this.asLever = new LineLevers(request.line(), request.resultsIn()).capacity();
        this.leverRun = new LeverRun(request, evaluator, steps);
        this.alongLever = leverRun.along(asLever);
    }

    /** One that never runs empty; where coils have speeds of their own, of at most so many {@code coils}, but {@link #HARDLY_MORE} at least. */
    private Accumulator ample(double coils) {
        Line line = request.line();
        double needed = handCalculation
                .storage()
                .orElseThrow()
                .toRunThrough()
                .capacity()
                .needed();
        double usual = Math.max(needed, line.accumulator().capacity());
        double capacity = line.hasOneSpeed()
                ? AMPLE * usual
                : Math.min(AMPLE * usual, Math.max(HARDLY_MORE * usual, coils * meanLength(line)));
        return line.accumulator().resizedTo(capacity);
    }

    private static double meanLength(Line line) {
        return line.coils().stream()
                .mapToDouble(Coil::meanUsableLength)
                .average()
                .orElseThrow();
    }

    Sizing run() {
        LongRunBalance endurance = LongRunBalance.of(ample, plan.seed(), evaluator);
        Optional<Crossing> ofLarge = endurance.lasts()
                ? Optional.of(smallest()).filter(c -> c.value().isPresent())
                : Optional.empty();
        Optional<Crossing> found = smallerNearPresent(ofLarge);
        Sizing sizing = found.isEmpty()
                ? noneEnough(ample, endurance, false)
                : onlyByDowntime(found.get()).orElseGet(() -> sizing(Answer.FOUND, found, Optional.empty()));
        steps.finish();
        return sizing;
    }

    /** Of what is found near the present capacity, and of {@code ofLarge}, the smaller. */
    private Optional<Crossing> smallerNearPresent(Optional<Crossing> ofLarge) {
        double large = ofLarge.map(found -> found.answer().orElse(Double.POSITIVE_INFINITY))
                .orElse(Double.POSITIVE_INFINITY);
        double now = asLever.present();
        return large > FAR_OFF * now || (large > now && isEnough(Goal.runThrough(options.target()), now))
                ? nearPresent()
                        .filter(near -> near.answer().orElseThrow() < large)
                        .or(() -> ofLarge)
                : ofLarge;
    }

    /** The smallest that is enough of those not far from the present one: where more does worse, a very large one may not be. */
    private Optional<Crossing> nearPresent() {
        Goal goal = Goal.runThrough(options.target());
        Varied capacity = new LineLevers(request.line(), request.resultsIn()).continuousCapacity();
        LeverSearch search = leverRun.along(capacity);
        Optional<Crossing> found = Optional.of(search.find(goal, capacity.present()))
                .filter(crossing -> search.lasts(goal, crossing)
                        && isEnough(goal, crossing.answer().orElseThrow()));
        if (found.isPresent()) {
            needs.extend(evaluator, plan);
        }
        return found;
    }

    /** Whether {@code capacity} is enough in the run that was asked for. */
    private boolean isEnough(Goal goal, double capacity) {
        return capacities
                .evaluate(capacity, request.run())
                .filter(goal::isSeenMet)
                .isPresent();
    }

    /**
     * That none is enough, where a huge accumulator is full again only because the process stands for reasons of its own: what one
     * would size then is the strip that is lacking from one downtime to the next.
     */
    private Optional<Sizing> onlyByDowntime(Crossing crossing) {
        double usual = handCalculation
                .storage()
                .orElseThrow()
                .toRunThrough()
                .capacity()
                .needed();
        boolean isHuge = crossing.value().orElseThrow() > HUGE * usual;
        if (!isHuge || ample.process().downtime().isEmpty()) {
            return Optional.empty();
        }
        Line running = new Line(
                ample.coilSource(),
                ample.entry(),
                ample.process().withDowntime(Optional.empty()),
                ample.change(),
                ample.practice(),
                ample.bending());
        LongRunBalance endurance = LongRunBalance.of(running, plan.seed(), evaluator);
        return endurance.lasts() ? Optional.empty() : Optional.of(noneEnough(running, endurance, true));
    }

    private Crossing smallest() {
        needs.extend(evaluator, plan);
        while (chance && promised() > PROMISE * options.halfWidth() && mayRunMore()) {
            // Intervals narrow with the square root; where there is none yet, twice as many may give one.
            double more = Math.min(2, Math.pow(promised() / (PROMISE * options.halfWidth()), 2));
            runMore(Math.max(plan.replications() + 1, (int) Math.ceil(more * plan.replications())));
        }
        Crossing crossing = search();
        RelativeHalfWidth halfWidth = halfWidth(crossing);
        while (!halfWidth.reached() && halfWidth.wouldDo().isPresent() && mayRunMore()) {
            runMore(halfWidth.wouldDo().getAsInt());
            crossing = search();
            halfWidth = halfWidth(crossing);
        }
        return crossing;
    }

    private boolean mayRunMore() {
        return plan.replications() < options.maxReplications();
    }

    private void runMore(int replications) {
        plan = plan.withReplications(Math.min(replications, options.maxReplications()));
        needs.extend(evaluator, plan);
    }

    /** The relative half-width that the needs promise. */
    private double promised() {
        double target = options.target();
        return needs.canBeSure(target)
                ? (needs.forSure(target) - needs.forPossible(target)) / (2 * needs.forSeen(target))
                : Double.POSITIVE_INFINITY;
    }

    private Crossing search() {
        double target = options.target();
        double precision = precision();
        // A little more than the needs, so that rounding does not make a capacity of just the right size too small.
        double ease = 1 + precision / 10;
        double seen = ease * needs.forSeen(target);
        Guess guess = new Guess(seen, ease * needs.forSure(target), ease * needs.forPossible(target), true);
        double step = new LineLevers(request.line(), request.resultsIn())
                .continuousCapacity()
                .scale()
                .step();
        // Steps of the lever, so that all who ask for a capacity get the same one.
        Scale scale = new Scale(Harder.SMALLER, step, ample.accumulator().capacity(), step, 0);
        return new TargetSearch(this::evaluate, target, scale).from(guess);
    }

    /** Capacities closer than this, relatively, are not distinguished. */
    private double precision() {
        return chance ? Math.max(EXACT, FINE * Math.min(options.halfWidth(), promised())) : EXACT;
    }

    private Optional<Evaluation> evaluate(double capacity) {
        steps.next();
        return capacities.evaluate(capacity, plan);
    }

    private RelativeHalfWidth halfWidth(Crossing crossing) {
        if (!chance) {
            return RelativeHalfWidth.exact(options.halfWidth(), options.maxReplications());
        }
        OptionalDouble half = OptionalDouble.empty();
        if (crossing.sure().isPresent() && crossing.possible().isPresent()) {
            double width = crossing.sure().getAsDouble() - crossing.possible().getAsDouble();
            half = OptionalDouble.of(width / (2 * crossing.value().orElseThrow()));
        }
        return RelativeHalfWidth.of(options.halfWidth(), half, plan.replications(), options.maxReplications());
    }

    private Sizing noneEnough(Line line, LongRunBalance endurance, boolean byDowntime) {
        List<Remedy> remedies =
                new RemedySearch(line, request, options.target(), plan.seed(), evaluator, leverRun).remedies();
        NoneEnough none = new NoneEnough(
                endurance.cause(line, plan.seed(), evaluator), endurance.drift().growth(), byDowntime, remedies);
        return sizing(Answer.NONE_IS_ENOUGH, Optional.empty(), Optional.of(none));
    }

    private Sizing sizing(Answer answer, Optional<Crossing> capacity, Optional<NoneEnough> none) {
        RunPlan asPlanned = request.run();
        double now = request.line().accumulator().capacity();
        CapacityCurve curve =
                new CapacityCurve(c -> capacities.evaluate(c, asPlanned), capacities::size, asPlanned.yearlyTime());
        List<Point> points =
                capacity.map(crossing -> curve.about(crossing, needs, now)).orElse(List.of());
        Evaluation present = capacities.evaluate(now, asPlanned).orElseThrow();
        return new Sizing(
                request,
                options.target(),
                answer,
                chance,
                chance ? plan.replications() : 1,
                capacity,
                capacity.flatMap(crossing -> size(crossing.answer())),
                capacity.flatMap(crossing -> size(crossing.sure())),
                capacity.flatMap(crossing -> size(crossing.possible())),
                Optional.of(curve.point(now)),
                evaluator.findingCauses().evaluate(request.line(), asPlanned).causes(),
                capacity.map(this::halfWidth),
                new Verdict.Resolution(present.resolution(options.target()).leastToShow(), Optional.empty()),
                points,
                handCalculation,
                none,
                inStrands(),
                withoutStop());
    }

    /** The same question in whole strands, as everybody else answers it. */
    private Optional<Crossing> inStrands() {
        return request.line().accumulator().form() instanceof StorageForm.Strands
                ? Optional.of(asLever(Goal.runThrough(options.target())))
                : Optional.empty();
    }

    private Optional<Crossing> withoutStop() {
        return request.run().targetWithoutStop().stream()
                .mapToObj(target -> asLever(Goal.withoutStop(target)))
                .findFirst();
    }

    private Crossing asLever(Goal goal) {
        return alongLever.find(goal, asLever.present());
    }

    private Optional<Size> size(OptionalDouble capacity) {
        return capacity.isPresent() ? Optional.of(capacities.size(capacity.getAsDouble())) : Optional.empty();
    }
}
