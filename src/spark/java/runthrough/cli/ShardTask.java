package runthrough.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Serializable;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;

/** A shard of a sweep as a machine that knows nothing of it can run it. */
final class ShardTask implements Serializable {
    private static final long serialVersionUID = 1L;

    private final ArrayList<String> args;
    private final LinkedHashMap<String, byte[]> files;
    private final int shards;

    ShardTask(List<String> args, Map<String, byte[]> files, int shards) {
        this.args = new ArrayList<>(args);
        this.files = new LinkedHashMap<>(files);
        this.shards = shards;
    }

    /** The lines of shard {@code number}, from 1. One thread: Spark has a task for each of its own. */
    String lines(int number) throws IOException {
        Path folder = Files.createTempDirectory("runthrough-shard");
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Path place = folder.resolve(file.getKey());
                Files.createDirectories(place.resolveSibling("."));
                Files.write(place, file.getValue());
            }
            List<String> command = new ArrayList<>(List.of("sweep"));
            command.addAll(args);
            command.addAll(List.of("--threads", "1", "--shard", number + "/" + shards, "--quiet"));
            StringWriter out = new StringWriter();
            StringWriter err = new StringWriter();
            Environment environment =
                    new Environment(new PrintWriter(out), new PrintWriter(err), false, Map.of(), folder);
            int code = new Program(environment).run(command.toArray(String[]::new));
            if (code != ExitCode.DONE && code != ExitCode.CASE_FAILED) {
                throw new IOException("shard " + number + " of " + shards + " failed: " + err);
            }
            return out.toString();
        } finally {
            delete(folder);
        }
    }

    static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
