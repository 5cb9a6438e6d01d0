package runthrough.report.verdict;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.quantity.Units;
import runthrough.report.write.CsvWriter;
import runthrough.simulation.Replication;
import runthrough.simulation.records.Totals;

/** The columns of a replication's totals: names with their units, and how each is taken. */
final class ReplicationRows {
    private final Map<String, ToDoubleFunction<Totals>> columns = new LinkedHashMap<>();

    ReplicationRows(Units units) {
        Unit length = units.unit(Kind.LENGTH);
        Unit mass = units.unit(Kind.MASS);
        count("counted time (s)", Totals::duration);
        count("coil changes", Totals::changes);
        count("ran through", Totals::ranThrough);
        count("slowed", Totals::slowedChanges);
        count("stopped", Totals::stoppedChanges);
        count("refilled", Totals::refilledChanges);
        count("starved stops", Totals::starvedStops);
        count("slowings", Totals::slowings);
        count("stops of process downtime", Totals::downtimes);
        in(length, "good", Totals::goodMetres);
        in(mass, "good mass", Totals::goodKilograms);
        in(length, "processed", Totals::processedMetres);
        in(mass, "processed mass", Totals::processedKilograms);
        in(length, "entered", Totals::enteredMetres);
        in(length, "at rated speed", Totals::ratedMetres);
        in(length, "strip not run", Totals::lostMetres);
        count("lost time (starved) (s)", Totals::lostTime);
        in(length, "scrap", Totals::scrapMetres);
        in(mass, "scrap mass", Totals::scrapKilograms);
        count("strip standing at the joiner (s)", Totals::jointSeconds);
        count("waiting for preparation (s)", Totals::waitingForPreparationSeconds);
        count("waiting for people (s)", Totals::waitingForPeopleSeconds);
        in(length, "lost to joint passages", Totals::passageLostMetres);
        count("joint breaks", Totals::jointBreaks);
        in(length, "lost to joint breaks", Totals::breakLostMetres);
        count("lost time (joint breaks) (s)", Totals::breakLostTime);
        count("repair of joint breaks (s)", Totals::breakSeconds);
        in(Unit.HOUR, "paid hours", Totals::paidSeconds);
        count("process standing starved (s)", Totals::starvedSeconds);
        count("process downtime (s)", Totals::downtimeSeconds);
        count("entry blocked by a full accumulator (s)", Totals::blockedSeconds);
        in(length, "mean level", Totals::meanLevel);
        in(length, "lowest level", Totals::lowestLevel);
        in(length, "overtravel", Totals::overtravel);
        count("times overfull", Totals::overfull);
        count("strip breaks", Totals::stripBreaks);
    }

    private void count(String name, ToDoubleFunction<Totals> value) {
        columns.put(name, value);
    }

    private void in(Unit unit, String name, ToDoubleFunction<Totals> value) {
        columns.put(name + " (" + unit.symbol() + ")", totals -> unit.fromSi(value.applyAsDouble(totals)));
    }

    List<String> header() {
        return Stream.concat(Stream.of("replication"), columns.keySet().stream())
                .toList();
    }

    List<String> row(Replication replication) {
        return Stream.concat(
                        Stream.of(Integer.toString(replication.index() + 1)),
                        columns.values().stream()
                                .map(column -> CsvWriter.number(column.applyAsDouble(replication.totals()))))
                .toList();
    }
}
