package runthrough.cli.sweep;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import runthrough.study.sweep.Shard;

/** Reads the part of a sweep that is to be run: {@code 2/8} is the second of eight. */
public final class ShardConverter implements ITypeConverter<Shard> {

    @Override
    public Shard convert(String text) {
        String[] parts = text.split("/", -1);
        try {
            if (parts.length == 2) {
                return new Shard(Integer.parseInt(parts[0].strip()), Integer.parseInt(parts[1].strip()));
            }
        } catch (IllegalArgumentException e) {
            // Reported below, like what has no slash.
        }
        throw new TypeConversionException(text
                + "; must be the number of a part and how many there are, such as 2/8, at" + " most " + Shard.MOST);
    }
}
