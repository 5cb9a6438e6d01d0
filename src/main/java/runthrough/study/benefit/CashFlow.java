package runthrough.study.benefit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Money over time.
 *
 * @param flows at time zero and at the end of each year after it, in the user's currency; what is spent is negative
 */
public record CashFlow(List<Double> flows) {
    private static final double HIGHEST_RATE = 1e6;

    public CashFlow {
        flows = List.copyOf(flows);
        if (flows.isEmpty()) {
            throw new IllegalArgumentException("a cash flow without a flow; give at least that at time zero");
        }
    }

    /**
     * A price paid now, and the same every year after it.
     *
     * @param price {@code >= 0}
     * @param yearly what comes in each year, less what goes out
     * @param years {@code >= 1}
     */
    public static CashFlow level(double price, double yearly, int years) {
        List<Double> flows = new ArrayList<>();
        flows.add(-price);
        flows.addAll(Collections.nCopies(years, yearly));
        return new CashFlow(flows);
    }

    /** Single present value factor {@code (1+d)^-n} of what comes after {@code years}, at {@code rate > -1} a year. */
    public static double singlePresentValue(double rate, double years) {
        return Math.pow(1 + rate, -years);
    }

    /** Uniform present value factor {@code ((1+d)^n - 1)/(d (1+d)^n)} of what comes at the end of each of {@code years}. */
    public static double uniformPresentValue(double rate, int years) {
        // expm1 and log1p keep the digits at a rate near zero, where the factor is the number of years.
        return rate == 0 ? years : -Math.expm1(-years * Math.log1p(rate)) / rate;
    }

    /** Net present value at {@code rate > -1} a year; the first flow is not discounted. */
    public double presentValue(double rate) {
        double value = 0;
        for (int year = flows.size() - 1; year >= 0; year--) {
            value = value / (1 + rate) + flows.get(year);
        }
        return value;
    }

    /** What has come in until the end of each year, each flow worth what it is worth now. */
    public List<Double> runningTotal(double rate) {
        List<Double> totals = new ArrayList<>();
        double total = 0;
        for (int year = 0; year < flows.size(); year++) {
            total += flows.get(year) * singlePresentValue(rate, year);
            totals.add(total);
        }
        return List.copyOf(totals);
    }

    /**
     * Internal rate of return: the rate at which the present value is nothing.
     *
     * @return empty where there is none, or where more than one is possible because money goes out again after it came in
     */
    public OptionalDouble internalRate() {
        if (signChanges() != 1) {
            return OptionalDouble.empty();
        }
        double low = -1 + 1e-9;
        double high = HIGHEST_RATE;
        boolean rising = presentValue(low) < 0;
        if (presentValue(low) < 0 == presentValue(high) < 0) {
            return OptionalDouble.empty();
        }
        // One change of sign, so one root: halved until no number lies between.
        while (true) {
            double middle = low + (high - low) / 2;
            if (!(low < middle && middle < high)) {
                return OptionalDouble.of(middle);
            }
            if (presentValue(middle) < 0 == rising) {
                low = middle;
            } else {
                high = middle;
            }
        }
    }

    /** By Descartes' rule there are no more roots than this. */
    private int signChanges() {
        int changes = 0;
        double last = 0;
        for (double flow : flows) {
            changes += flow * last < 0 ? 1 : 0;
            last = flow == 0 ? last : flow;
        }
        return changes;
    }

    /** Simple payback (years) of a price by the same gain every year: price over gain; empty where it never comes back, as
     * what costs more every year does not, even for no price. */
    public static OptionalDouble simplePayback(double price, double yearly) {
        return price == 0 && yearly >= 0
                ? OptionalDouble.of(0)
                : yearly > 0 ? OptionalDouble.of(price / yearly) : OptionalDouble.empty();
    }

    /**
     * Discounted payback (years): {@code -ln(1 - C d/S)/ln(1+d)}, as if the gain came all through the year in the same
     * proportion; empty where it never comes back.
     */
    public static OptionalDouble discountedPayback(double price, double yearly, double rate) {
        if (rate == 0 || price == 0) {
            return simplePayback(price, yearly);
        }
        double left = 1 - price * rate / yearly;
        return yearly > 0 && left > 0 ? OptionalDouble.of(-Math.log(left) / Math.log1p(rate)) : OptionalDouble.empty();
    }
}
