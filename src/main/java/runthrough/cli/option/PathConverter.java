package runthrough.cli.option;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the name of a file or folder, which is not empty: a shell makes that of a variable that is not set. */
public final class PathConverter implements ITypeConverter<Path> {
    @Override
    public Path convert(String text) {
        if (text.isBlank()) {
            throw new TypeConversionException(
                    "\"" + text + "\"; must be the name of a file or folder, such as . for this one");
        }
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            throw new TypeConversionException(
                    text
                            + "; has letters that the present locale cannot write. Set LC_ALL=C.UTF-8, or give the file a plain name.");
        }
    }
}
