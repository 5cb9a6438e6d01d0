package runthrough.bars;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import runthrough.simulation.EngineBars;

/**
 * Prints how long two jars take, in turn: whole commands, and the server of the page; then how long a coil change takes in the
 * engine of each, and in that of the classes at hand, in the bare model and in its draws alone. Medians. Its arguments are the jar to compare with, the
 * jar to measure, and the folder of the scenarios of the first, whose names may be those of an earlier edition; {@code scenarios}
 * where none is given, and for the second.
 */
public final class BarTable {
    private BarTable() {}

    /** Measures and prints. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        List<String> jars = List.of(arguments[0], arguments[1]);
        Path today = Path.of("scenarios").toAbsolutePath();
        List<Path> lines = List.of(arguments.length > 2 ? Path.of(arguments[2]).toAbsolutePath() : today, today);
        new CommandBars(jars, lines).print(System.out);
        new ServerBars(jars, List.of("tube-line", "slitter", "coating-line", "roll-former")).print(System.out);
        EngineOfJar.print(jars, lines, System.out);
        EngineBars.print(System.out);
    }
}
