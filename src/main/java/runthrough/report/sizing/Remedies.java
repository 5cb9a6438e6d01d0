package runthrough.report.sizing;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import runthrough.quantity.Notation;
import runthrough.quantity.UnitSystem;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Texts;
import runthrough.report.lever.LeverWords;
import runthrough.study.TargetStatus;
import runthrough.study.sizing.Remedy;
import runthrough.study.sizing.Sizing;

/**
 * Says why no capacity is enough, and what would free it.
 *
 * @param none what was found
 * @param isMetByPresent whether the present capacity meets the target in the run, though not in the long run
 * @param texts for its numbers
 * @param words for values of levers
 */
record Remedies(Sizing.NoneEnough none, boolean isMetByPresent, Texts texts, LeverWords words) {
    private static final String FILE = "what-would-free-it.csv";

    /** Those of the sizing of {@code words}; none where some capacity is enough. */
    static Optional<Remedies> of(SizeWords words) {
        Sizing sizing = words.sizing();
        return sizing.noneEnough()
                .map(none -> new Remedies(
                        none, words.present() == TargetStatus.MEETS, words.texts(), LeverWords.of(sizing.request())));
    }

    /** Why, in a sentence. */
    String reason() {
        return "However large the accumulator, it runs empty "
                + (none.byDowntime() ? "while the process runs" : "in the long run") + ": " + why()
                + ". After each coil change "
                + texts.length(none.growth().mean()) + " more strip is lacking than after the one before.";
    }

    private String why() {
        return switch (none.cause()) {
            case WAITING_FOR_PREPARATION ->
                "joints wait for their coils to be prepared, longer than the entry can make up for";
            case WAITING_FOR_PEOPLE -> "joints wait for people, longer than the entry can make up for";
            case BOTH_WAITS ->
                "joints wait for their coils to be prepared and for people, together longer than the entry can make up for";
            default -> "between coil changes the entry cannot bring back what a joint takes";
        };
    }

    /** What would help and what would not, each on its own. */
    List<String> advice() {
        List<String> advice = new ArrayList<>();
        if (isMetByPresent) {
            advice.add(
                    "The present one meets the target in this run, which begins with it full: the stops that there are refill it, or"
                            + " they are yet to come. More capacity does not change what the entry brings.");
        }
        if (none.byDowntime()) {
            advice.add(
                    "Only process downtime lets the accumulator fill again. Do not build on that: mend the line first, then"
                            + " size it.");
        }
        List<Remedy> useful =
                none.remedies().stream().filter(r -> r.needed().isPresent()).toList();
        if (useful.isEmpty()) {
            advice.add("No single change that was tried is enough; it takes several together.");
        } else {
            advice.add("Each of these alone would let some capacity be enough: "
                    + useful.stream().map(this::instead).collect(Collectors.joining("; ")) + ".");
        }
        List<Remedy> useless = none.remedies().stream()
                .filter(r -> r.needed().isEmpty() && isWorthARow(r))
                .toList();
        if (!useless.isEmpty()) {
            advice.add("Not enough alone: "
                    + useless.stream()
                            .map(r -> name(r) + ", tried as far as " + value(r, r.tried(), words))
                            .collect(Collectors.joining("; "))
                    + ".");
        }
        return advice;
    }

    private String instead(Remedy remedy) {
        double needed = remedy.needed().orElseThrow();
        return remedy.lever()
                .map(lever -> words.change(lever, remedy.now(), needed) + words.cost(", ", remedy.cost()))
                .orElseGet(() -> noLever(remedy, needed));
    }

    private String noLever(Remedy remedy, double needed) {
        String text = value(remedy, needed, words);
        String now = value(remedy, remedy.now(), words);
        return switch (remedy.what()) {
            case CREW_OF_SHIFT ->
                "a crew of " + text + " in " + remedy.shift().orElseThrow() + " alone, instead of " + now;
            case BREAKS -> "no breaks, instead of " + now + " of them in all shifts together";
            default -> name(remedy) + " " + text + ", instead of " + now;
        };
    }

    /** One row for each change; none where some capacity is enough. */
    static Table table(Optional<Remedies> remedies, UnitSystem system) {
        LeverWords words = new LeverWords(system, false);
        return TableMaker.<Remedy>of("What would make some capacity enough, each change alone")
                .intoFile(FILE)
                .words("change", Remedies::name)
                .pageWords("now", remedy -> value(remedy, remedy.now(), words))
                .pageWords("needed", remedy -> needed(remedy, words))
                .pageWords("tried as far as", remedy -> value(remedy, remedy.tried(), words))
                .fileNumber("now (SI)", Notation.PLAIN, Remedy::now)
                .fileNumber(
                        "needed (SI)", Notation.PLAIN, remedy -> remedy.needed().orElse(Double.NaN))
                .fileNumber("tried as far as (SI)", Notation.PLAIN, Remedy::tried)
                .of(remedies.map(found -> found.none.remedies()).orElse(List.of()).stream()
                        .filter(Remedies::isWorthARow)
                        .toList());
    }

    /** Elements that are not enough on their own are many and say nothing. */
    private static boolean isWorthARow(Remedy remedy) {
        return remedy.what() != Remedy.What.ELEMENT || remedy.needed().isPresent();
    }

    private static String name(Remedy remedy) {
        return switch (remedy.what()) {
            case FILL_RATE_LIMIT -> "fastest filling";
            case PREPARATION_TIME -> "mean time to prepare a coil";
            case CREW_OF_SHIFT -> "crew of " + remedy.shift().orElseThrow() + " alone";
            case BREAKS -> "breaks of all shifts";
            case JOINT_CYCLE_TIME, PROCESS_SPEED, REJECTS, CREW, UNCOILERS, ENTRY_TOP_SPEED, ELEMENT ->
                LeverWords.name(remedy.lever().orElseThrow());
        };
    }

    private static String needed(Remedy remedy, LeverWords words) {
        return remedy.needed().isPresent() ? value(remedy, remedy.needed().getAsDouble(), words) : "does not help";
    }

    private static String value(Remedy remedy, double si, LeverWords words) {
        return remedy.lever()
                .map(lever -> words.shown(lever, si))
                .orElseGet(() -> words.shown(remedy.what().kind(), si, RoundingMode.FLOOR));
    }
}
