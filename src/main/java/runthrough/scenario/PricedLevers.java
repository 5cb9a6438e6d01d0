package runthrough.scenario;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import runthrough.plant.LineFigure;
import runthrough.quantity.Dimension;
import runthrough.quantity.QuantityParser;
import runthrough.scenario.grammar.Amount;
import runthrough.scenario.grammar.Context;
import runthrough.scenario.grammar.Count;
import runthrough.scenario.grammar.Items;
import runthrough.scenario.grammar.Route;
import runthrough.scenario.source.Nearest;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/** Holds what a scenario gives prices of changes for against the numbers that can be changed by themselves. */
final class PricedLevers {
    private static final String SECTION = HandoverKeys.MONEY.name() + "." + MoneyKeys.LEVERS.name();
    private static final Count ONE_OR_MORE = new Count(1, 100);
    private static final Pattern ELEMENT = Pattern.compile("coil-change\\.(prepare|tail|join)\\.[^.\\[]+");

    /** What is measured of each; nothing of what is counted. */
    private static final Map<String, Optional<Dimension>> KNOWN = known();

    /** Other names of the same. */
    private static final Map<String, String> OTHERWISE = Map.of(
            "accumulator.capacity", LineFigure.USABLE_CAPACITY.path(),
            "accumulator.strands", LineFigure.USABLE_CAPACITY.path(),
            "coil-change.join-shorter-by", LineFigure.JOINT_CYCLE_TIME.path(),
            "coil-change.reject.every", "coil-change.reject.chance");

    private final Raw.Mapping root;
    private final Problems problems;

    /** Prices in {@code root}; {@code problems} takes what is wrong with them. */
    PricedLevers(Raw.Mapping root, Problems problems) {
        this.root = root;
        this.problems = problems;
    }

    private static Map<String, Optional<Dimension>> known() {
        Map<String, Optional<Dimension>> known = new LinkedHashMap<>();
        known.put(LineFigure.USABLE_CAPACITY.path(), Optional.of(Dimension.LENGTH));
        known.put(LineFigure.JOINT_CYCLE_TIME.path(), Optional.of(Dimension.TIME));
        known.put("coil-change.reject.chance", Optional.of(Dimension.SHARE));
        known.put("coil-change.crew", Optional.empty());
        known.put("entry.uncoilers", Optional.empty());
        known.put("entry.top-speed", Optional.of(Dimension.SPEED));
        return known;
    }

    /**
     * What has a price.
     *
     * @param path of it, one for each
     * @param per how much of it (SI), or how many
     */
    record Found(String path, double per) {}

    /** Reports all that is wrong with them, whatever else is wrong with the scenario. */
    void check() {
        Map<String, String> priced = new HashMap<>();
        for (Raw.Entry entry : levers()) {
            if (entry.value() instanceof Raw.Mapping price) {
                find(entry.key(), price).ifPresent(found -> {
                    String earlier = priced.putIfAbsent(found.path(), entry.key());
                    // The same name twice is refused as in any group.
                    if (earlier != null && !earlier.equals(entry.key())) {
                        problems.error(
                                price.place(),
                                SECTION + "." + entry.key(),
                                "",
                                "is another name of " + earlier + ", which has a price already",
                                "Leave out one.");
                    }
                });
            }
        }
    }

    private List<Raw.Entry> levers() {
        return root.findMapping(HandoverKeys.MONEY.name())
                .flatMap(money -> money.findMapping(MoneyKeys.LEVERS.name()))
                .filter(Items::areFew)
                .map(Raw.Mapping::entries)
                .orElse(List.of());
    }

    /** What {@code path} is, with what {@code price} says of it; empty where it is wrong. */
    Optional<Found> find(String path, Raw.Mapping price) {
        String own = OTHERWISE.getOrDefault(path.strip(), path.strip());
        Optional<Dimension> measured = KNOWN.getOrDefault(own, Optional.of(Dimension.TIME));
        if (ELEMENT.matcher(own).matches() && !isThere(own)) {
            // An element may go, as in an alternative, and its price stay.
            problems.warning(
                    price.place(),
                    SECTION + "." + path,
                    "",
                    "is no work element of this scenario, so its price is ignored",
                    PathGuess.nearest(own, root)
                            .filter(near -> ELEMENT.matcher(near).matches())
                            .map(near -> "Did you mean " + near + "?")
                            .orElse("Leave it out, or name one that is there."));
        } else if (!KNOWN.containsKey(own) && !ELEMENT.matcher(own).matches()) {
            problems.error(
                    price.place(),
                    SECTION + "." + path,
                    "",
                    "has no price: it is not a number of this scenario of which more, or less, would meet its target",
                    remedy(path));
            return Optional.empty();
        }
        String what = own.equals(path.strip()) ? "the change" : own;
        return per(path, price, measured, what).map(per -> new Found(own, per));
    }

    private boolean isThere(String path) {
        return Route.find(ScenarioKeys.SCENARIO, root, path).isPresent();
    }

    private static String remedy(String path) {
        return Nearest.to(path, KNOWN.keySet())
                .map(nearest -> "Did you mean " + nearest + "?")
                .orElseGet(() -> "There are: " + String.join(", ", KNOWN.keySet())
                        + ", and each work element by its path, such as coil-change.join.weld.");
    }

    private Optional<Double> per(String path, Raw.Mapping price, Optional<Dimension> measured, String what) {
        Optional<Raw> written = price.find(MoneyKeys.PER.name());
        if (written.isEmpty() && measured.isEmpty()) {
            return Optional.of(1.0);
        }
        String shown = measured.map(dimension -> "1 " + unit(dimension)).orElse("1");
        Context context = Context.top(problems)
                .named(SECTION)
                .named(path)
                .named(MoneyKeys.PER.name())
                .withRemedy("Give how much of " + what + " that pays for, such as " + shown + ".");
        if (written.isEmpty()) {
            problems.error(
                    price.place(),
                    context.path(),
                    "",
                    "is missing; must be "
                            + Amount.positive(measured.orElseThrow()).allowed(),
                    context.remedy());
            return Optional.empty();
        }
        if (measured.isPresent() && isBare(written.get())) {
            // The unit alone does not tell of what: another name may count something else.
            context.error(
                    written.get(), "must be " + Amount.positive(measured.get()).allowed());
            return Optional.empty();
        }
        return measured.isPresent()
                ? Amount.positive(measured.get()).read(written.get(), context)
                : ONE_OR_MORE.read(written.get(), context).map(Long::doubleValue);
    }

    private static boolean isBare(Raw written) {
        return written instanceof Raw.Scalar scalar
                && QuantityParser.readNumber(scalar.text()).isPresent();
    }

    private static String unit(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> "m";
            case TIME -> "s";
            case SPEED -> "m/min";
            default -> "%";
        };
    }
}
