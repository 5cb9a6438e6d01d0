package runthrough.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runthrough.handcalc.HandCalculation;
import runthrough.handcalc.Limit;
import runthrough.handcalc.Margin;
import runthrough.handcalc.Standstill;
import runthrough.handcalc.Storage;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.quantity.Units;

/** The hand calculation: what there is against what is needed, or where the line always stops, what that costs. */
final class HandRows {
    private final HandCalculation hand;
    private final Units units;
    private final Paint paint;

    HandRows(HandCalculation hand, Units units, Paint paint) {
        this.hand = hand;
        this.units = units;
        this.paint = paint;
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(String.format("%-32s%13s%13s%13s", title(), "there is", "needed", "to spare"));
        hand.storage().ifPresent(storage -> lines.addAll(storage(storage)));
        lines.add(row("time to prepare a coil", hand.preparationTime(), binds(Limit.PREPARATION)));
        hand.standstill().ifPresent(standstill -> lines.addAll(standstill(standstill)));
        return lines;
    }

    private boolean binds(Limit limit) {
        return hand.binding().equals(Optional.of(limit));
    }

    private String title() {
        return hand.kinds() == 1 ? "By hand, with mean times" : "By hand, coil " + (hand.kind() + 1) + ", mean times";
    }

    private List<String> storage(Storage storage) {
        return List.of(
                row("accumulator capacity", storage.capacity(), binds(Limit.CAPACITY)),
                row("longest joint time", storage.jointTime(), false),
                row("fastest process speed", storage.speed(), false),
                storage.coilStrip()
                        .map(strip -> row("strip of a coil to refill with", strip, binds(Limit.REFILL)))
                        .orElse("  never refills: the entry cannot run faster than the process"));
    }

    private String row(String label, Margin margin, boolean binds) {
        Unit unit = units.unitFor(margin.kind(), Math.max(margin.needed(), finite(margin.given())));
        String spare = String.format("%13s", units.text(margin.spare(), unit));
        return String.format(
                        "  %-30s%13s%13s", label, units.text(margin.given(), unit), units.text(margin.needed(), unit))
                + (margin.isEnough() ? spare : paint.bad(spare))
                + (binds ? " < binds" : "");
    }

    private static double finite(double value) {
        return Double.isFinite(value) ? value : 0;
    }

    private List<String> standstill(Standstill standstill) {
        return List.of(
                row("strip stands at a coil change", Kind.TIME, standstill.standing()),
                row("until it runs at speed again", Kind.TIME, standstill.stopped()),
                row("strip not run meanwhile", Kind.LENGTH, standstill.lostMetres()),
                row("from coil change to coil change", Kind.TIME, standstill.cycle()),
                row("output", Kind.RATE_LENGTH, standstill.output()),
                row("of the rated speed", Kind.SHARE, standstill.utilisation()));
    }

    private String row(String label, Kind kind, double value) {
        return String.format("  %-30s%13s", label, units.text(kind, value));
    }
}
