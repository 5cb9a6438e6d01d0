package runthrough.report.document;

import java.util.List;
import runthrough.report.Cell;
import runthrough.report.Figure;

/** The words of the trade and of statistics as the document uses them. */
final class Glossary {
    static final List<Figure> TERMS = List.of(
            term(
                    "accumulator",
                    "holds strip between joiner and process, so that the process runs while the entry stands"),
            term("capacity", "strip that an accumulator holds between its empty and its full position"),
            term(
                    "coil change",
                    "from the moment the entry begins to slow for the end of a coil until the next one begins"),
            term(
                    "confidence interval, 95 %",
                    "a range made so that 95 of 100 such ranges hold the true mean; it covers the random"
                            + " numbers of the simulation, not a wrong description"),
            term("creep", "slow running over the last metres of a coil"),
            term("crop", "strip cut off a head or a tail at a joint, as scrap"),
            term("entry", "from the uncoilers to the joiner"),
            term("fill-rate limit", "how much faster than the process the entry may run while the accumulator fills"),
            term(
                    "joint",
                    "tail of one coil joined to the head of the next; its time is how long the strip stands for it"),
            term("margin", "strip that a coil change would leave above the stop level at the rated speed"),
            term("percentile", "the value that so many of all coil changes stay below"),
            term("process", "what must not stop: a mill, a press, an oven"),
            term("rated speed", "the speed at which the process should run"),
            term("refill", "from the release of a joint until the accumulator is full again"),
            term("replication", "one run of the whole simulation with random numbers of its own"),
            term("reserve", "strip that is never planned to be used"),
            term("rethread", "to thread the head of a new coil through the line, where there is no joiner"),
            term("runs through", "of a coil change: the process holds its rated speed until the next one begins"),
            term("seed", "the number from which the random numbers of a simulation follow"),
            term("starved stop", "the process stops because the level is too low"),
            term("stop level", "reserve and the distance in which the process stops: at this level it begins to"),
            term("strip drawn", "by how much a coil change lowers the level"),
            term("target", "the share of coil changes that should run through"),
            term("utilisation", "strip processed over strip that the rated speed would have processed"),
            term("yield", "good output over gross output, by mass: what is processed and not scrap afterwards"));

    private Glossary() {}

    private static Figure term(String word, String meaning) {
        return Figure.of(word, Cell.of(meaning));
    }
}
