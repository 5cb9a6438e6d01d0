package runthrough.cli.option;

import java.util.function.DoublePredicate;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import runthrough.quantity.Dimension;
import runthrough.quantity.Quantity;
import runthrough.quantity.QuantityParser;
import runthrough.quantity.Reading;

/** Reads a number with its unit, as in a scenario; gives it in SI. */
public abstract class QuantityConverter implements ITypeConverter<Double> {
    private final Dimension dimension;
    private final DoublePredicate isAllowed;
    private final String rule;

    public QuantityConverter(Dimension dimension) {
        this(dimension, any -> true, "");
    }

    /**
     * For numbers within bounds.
     *
     * @param isAllowed whether a number (SI) is
     * @param rule what any other must be, and what to give
     */
    public QuantityConverter(Dimension dimension, DoublePredicate isAllowed, String rule) {
        this.dimension = dimension;
        this.isAllowed = isAllowed;
        this.rule = rule;
    }

    @Override
    public Double convert(String text) {
        Reading reading = QuantityParser.read(text, dimension);
        if (reading instanceof Reading.Unreadable unreadable) {
            throw new TypeConversionException(text + "; " + unreadable.rule() + ". " + unreadable.remedy());
        }
        double si = ((Quantity) reading).si();
        if (!isAllowed.test(si)) {
            throw new TypeConversionException(text + "; " + rule);
        }
        return si;
    }

    /** Whether {@code share} is more than nothing and less than all. */
    public static boolean isWithin(double share) {
        return share > 0 && share < 1;
    }

    /** A share of coil changes; more than nothing and less than all. */
    public static final class Target extends QuantityConverter {
        Target() {
            super(
                    Dimension.SHARE,
                    QuantityConverter::isWithin,
                    "must be more than 0 % and less than 100 %. Give the share of coil changes that should run through, such as"
                            + " 99.5%: no run, however long, can show that all of them will.");
        }
    }

    /** A confidence or a precision: more than nothing and less than all. */
    public static final class Within extends QuantityConverter {
        Within() {
            super(
                    Dimension.SHARE,
                    QuantityConverter::isWithin,
                    "must be more than 0 % and less than 100 %. Write it like 95%.");
        }
    }

    /** What is added to a basic time for rest and the like. */
    public static final class Allowance extends QuantityConverter {
        Allowance() {
            super(
                    Dimension.SHARE,
                    share -> share >= 0 && share <= 1,
                    "must be at least 0 % and at most 100 %. Give what is added for rest, such as 12%.");
        }
    }

    /** A part of a whole. */
    public static final class Part extends QuantityConverter {
        Part() {
            super(Dimension.SHARE);
        }
    }

    /** A speed. */
    public static final class Speed extends QuantityConverter {
        Speed() {
            super(Dimension.SPEED);
        }
    }
}
