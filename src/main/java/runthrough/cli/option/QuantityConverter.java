package runthrough.cli.option;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import runthrough.quantity.Dimension;
import runthrough.quantity.Quantity;
import runthrough.quantity.QuantityParser;
import runthrough.quantity.Reading;

/** Reads a number with its unit, as in a scenario; gives it in SI. */
public abstract class QuantityConverter implements ITypeConverter<Double> {
    private final Dimension dimension;

    public QuantityConverter(Dimension dimension) {
        this.dimension = dimension;
    }

    @Override
    public Double convert(String text) {
        Reading reading = QuantityParser.read(text, dimension);
        if (reading instanceof Reading.Unreadable unreadable) {
            throw new TypeConversionException(text + "; " + unreadable.rule() + ". " + unreadable.remedy());
        }
        return ((Quantity) reading).si();
    }

    /** A share of coil changes; more than nothing and less than all. */
    public static final class Target extends QuantityConverter {
        Target() {
            super(Dimension.SHARE);
        }

        @Override
        public Double convert(String text) {
            double share = super.convert(text);
            if (!(share > 0 && share < 1)) {
                throw new TypeConversionException(
                        text + "; must be more than 0 % and less than 100 %. Give the share of"
                                + " coil changes that should run through, such as 99.5%: no run, however long, can show that"
                                + " all of them will.");
            }
            return share;
        }
    }

    /** A confidence or a precision: more than nothing and less than all. */
    public static final class Within extends QuantityConverter {
        Within() {
            super(Dimension.SHARE);
        }

        @Override
        public Double convert(String text) {
            double share = super.convert(text);
            if (!(share > 0 && share < 1)) {
                throw new TypeConversionException(
                        text + "; must be more than 0 % and less than 100 %. Write it like 95%.");
            }
            return share;
        }
    }

    /** What is added to a basic time for rest and the like. */
    public static final class Allowance extends QuantityConverter {
        Allowance() {
            super(Dimension.SHARE);
        }

        @Override
        public Double convert(String text) {
            double share = super.convert(text);
            if (!(share >= 0 && share <= 1)) {
                throw new TypeConversionException(
                        text + "; must be at least 0 % and at most 100 %. Give what is added for rest, such as 12%.");
            }
            return share;
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
