package runthrough.cli.option;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a whole number within bounds. */
public abstract class WholeNumber implements ITypeConverter<Long> {
    private final long least;
    private final long most;

    public WholeNumber(long least, long most) {
        this.least = least;
        this.most = most;
    }

    @Override
    public Long convert(String text) {
        try {
            long number = Long.parseLong(text);
            if (number >= least && number <= most) {
                return number;
            }
        } catch (NumberFormatException e) {
            // Reported below, like a number out of bounds.
        }
        throw new TypeConversionException(text + "; must be a whole number from " + least + " to " + most);
    }
}
