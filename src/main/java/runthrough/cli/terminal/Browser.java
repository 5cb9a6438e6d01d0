package runthrough.cli.terminal;

import java.io.IOException;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Opens an address in the user's browser by the means of the system, where there is a desktop. */
public final class Browser {
    private Browser() {}

    /** Opens {@code address}; where that fails, the address that was printed has to do. */
    public static void open(URI address, Map<String, String> environment) {
        Optional<List<String>> opener = opener(System.getProperty("os.name", ""), environment);
        if (opener.isEmpty()) {
            return;
        }
        ProcessBuilder command = new ProcessBuilder(Stream.concat(opener.get().stream(), Stream.of(address.toString()))
                .toList());
        command.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
        try {
            command.start();
        } catch (IOException e) {
            // There is no such program: the user opens the address.
        }
    }

    /** The program that opens an address with the default browser; empty where there is no desktop. */
    public static Optional<List<String>> opener(String system, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("mac")) {
            return Optional.of(List.of("open"));
        } else if (name.startsWith("windows")) {
            return Optional.of(List.of("rundll32", "url.dll,FileProtocolHandler"));
        }
        boolean isDesktop = environment.containsKey("DISPLAY") || environment.containsKey("WAYLAND_DISPLAY");
        return isDesktop ? Optional.of(List.of("xdg-open")) : Optional.empty();
    }
}
