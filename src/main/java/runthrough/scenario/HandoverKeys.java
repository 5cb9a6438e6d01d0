package runthrough.scenario;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.handover.Cover;
import runthrough.plant.handover.Drive;
import runthrough.plant.handover.Handover;
import runthrough.plant.handover.Origin;
import runthrough.quantity.Dimension;
import runthrough.scenario.grammar.Amount;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Route;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.Text;
import runthrough.scenario.grammar.Values;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/** What may be said for the document that is handed over: its cover, the drive, where values came from, money. */
final class HandoverKeys {
    private static final Key<String> DATE =
            Key.optional("date", "the date to print", new Text("a date as you want it printed"), "25 November 2031");
    private static final Key<String> NUMBER =
            Key.optional("number", "the number under which it is filed", new Text("a number or text"), "RT-1042");
    private static final Key<String> BY =
            Key.optional("prepared-by", "who made it", new Text("a text"), "Line planning");
    private static final Key<String> FOR =
            Key.optional("prepared-for", "for whom it was made", new Text("a text"), "Mill management");
    static final Key<Values> DOCUMENT = Key.optional(
            "document",
            "the cover of the document that is handed over",
            Section.of("document", "what stands on its cover", DATE, NUMBER, BY, FOR),
            "");

    private static final Key<Double> TORQUE = Key.optional(
            "torque", "the torque it delivers at the mandrel", Amount.positive(Dimension.TORQUE), "3 kN m");
    private static final Key<Double> POWER =
            Key.optional("power", "its power", Amount.positive(Dimension.POWER), "30 kW");
    static final Key<Values> DRIVE = Key.optional(
            "drive",
            "what the drive of an uncoiler can deliver",
            Section.of("drive", "reported against what a full coil takes, not simulated", TORQUE, POWER),
            "");

    static final Key<List<Raw.Entry>> ORIGINS = Key.optional(
            "origins",
            "where values came from; each path of a value, or of a part with all its values, and what you say of it",
            new TextsByName("paths of this scenario, each with a text", new Text("a text")),
            "{entry.top-speed: vendor figure, coil-change.join: \"measured, n = 40\"}");

    static final Key<Values> MONEY = Key.optional("money", "what time and strip are worth", MoneyKeys.MONEY, "");

    private HandoverKeys() {}

    /** The keys whose values are no numbers of the line. */
    static boolean isBesideTheLine(String path) {
        return List.of(DOCUMENT.name(), DRIVE.name(), ORIGINS.name(), MONEY.name()).stream()
                .anyMatch(name -> path.equals(name) || path.startsWith(name + "."));
    }

    /** What {@code scenario} says, which stands in {@code root}; {@code problems} takes paths that lead nowhere. */
    static Handover handover(Values scenario, Raw.Mapping root, Problems problems) {
        new PricedLevers(root, problems).check();
        return new Handover(
                scenario.find(DOCUMENT).map(HandoverKeys::cover).orElse(Cover.EMPTY),
                scenario.find(DRIVE).map(HandoverKeys::drive).orElse(Drive.UNKNOWN),
                scenario.find(ORIGINS).orElse(List.of()).stream()
                        .flatMap(entry -> origin(entry, root, problems).stream())
                        .toList(),
                scenario.find(MONEY).map(values -> MoneyKeys.money(values, root)));
    }

    private static Cover cover(Values values) {
        return new Cover(values.find(DATE), values.find(NUMBER), values.find(BY), values.find(FOR));
    }

    private static Drive drive(Values values) {
        return new Drive(optional(values.find(TORQUE)), optional(values.find(POWER)));
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    private static Optional<Origin> origin(Raw.Entry entry, Raw root, Problems problems) {
        Optional<Route> route = Route.find(ScenarioKeys.SCENARIO, root, entry.key());
        if (route.isEmpty()) {
            problems.error(
                    entry.place(),
                    ORIGINS.name() + "." + entry.key(),
                    entry.value().shown(),
                    "is not a part of this scenario",
                    PathGuess.nearest(entry.key(), root)
                            .map(near -> "Did you mean " + near + "?")
                            .orElse("Name a value by its path, such as entry.top-speed."));
        }
        return route.map(
                found -> new Origin(found.path(), Text.inOneLine(entry.value().shown())));
    }
}
