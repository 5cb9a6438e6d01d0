package runthrough.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runthrough.scenario.grammar.Items;
import runthrough.scenario.source.Nearest;
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Raw;

/** Holds what a scenario gives prices for against the alternatives that it has, and against the one that it calls today. */
final class PricedAlternatives {
    private static final String SECTION = HandoverKeys.MONEY.name() + "." + ScenarioKeys.ALTERNATIVES.name();

    private final Raw.Mapping root;
    private final List<String> names;

    /** Prices in {@code root} of the alternatives called {@code names}, the scenario as written among them. */
    PricedAlternatives(Raw.Mapping root, List<String> names) {
        this.root = root;
        this.names = List.copyOf(names);
    }

    /**
     * What is wrong with them.
     *
     * @param today as the scenario names it; empty where it does not, or in a way that cannot be read
     * @param mustName whether it is certain that it names none
     */
    List<Problem> problems(Optional<String> today, boolean mustName) {
        List<Problem> problems = new ArrayList<>();
        Optional<Raw.Mapping> priced = root.findMapping(HandoverKeys.MONEY.name())
                .flatMap(money -> money.findMapping(ScenarioKeys.ALTERNATIVES.name()))
                .filter(prices -> !prices.entries().isEmpty())
                .filter(Items::areFew);
        if (priced.isPresent() && today.isEmpty() && mustName) {
            problems.add(Problem.at(
                    priced.get().place(),
                    ScenarioKeys.TODAY.name(),
                    "",
                    "is missing: what an alternative with a price is worth is given against the one called today",
                    "Name it, such as " + ScenarioKeys.TODAY.name() + ": " + names.get(0) + "."));
        }
        priced.ifPresent(prices ->
                prices.entries().forEach(entry -> problem(entry, today).ifPresent(problems::add)));
        return problems;
    }

    private Optional<Problem> problem(Raw.Entry entry, Optional<String> today) {
        String name = entry.key();
        if (!names.contains(name)) {
            return Optional.of(Problem.at(
                    entry.place(),
                    SECTION + "." + name,
                    "",
                    "is not an alternative of this scenario",
                    Nearest.remedy(name, names)));
        }
        return today.filter(name::equals)
                .map(same -> Problem.at(
                        entry.place(),
                        SECTION + "." + name,
                        "",
                        "has a price, but is the one called today: it is there already",
                        "Leave the price out, or call another one today."));
    }
}
