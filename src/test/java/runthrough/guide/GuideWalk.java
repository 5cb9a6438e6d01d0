package runthrough.guide;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import runthrough.OwnProcess;
import runthrough.cli.Main;
import runthrough.cli.Session;

/** A reader who does everything that the guide says, in its order, in a folder of its own. */
final class GuideWalk {
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    private static final Pattern PART = Pattern.compile("(?m)^(?=\\S)");
    private static final Pattern PAGE_FILE = Pattern.compile("\\S+\\.html");
    private static final Pattern LINK = Pattern.compile("http://\\S+");

    private final Path folder;
    private final Session session;
    private final Map<String, String> parts = new LinkedHashMap<>();
    private final List<Ran> commands = new ArrayList<>();
    private final Map<String, String> drawings = new LinkedHashMap<>();

    /**
     * A command and what came of it.
     *
     * @param command as the guide has it
     * @param code its exit code
     * @param out what it printed
     * @param page the page that it wrote, in HTML; empty where it wrote none
     * @param shown what the guide shows of it
     */
    record Ran(String command, int code, String out, String page, List<String> shown) {
        /** Without the page, so that a failure can be read. */
        @Override
        public String toString() {
            return command + " gave " + code + ": " + out;
        }
    }

    GuideWalk(Path folder) {
        this.folder = folder;
        session = new Session(folder);
    }

    void walk(Guide guide) throws IOException, InterruptedException {
        for (Guide.Step step : guide.steps()) {
            switch (step.kind()) {
                case SCENARIO_PARTS -> session.write(Guide.SCENARIO, scenarioWith(step.text()));
                case TIME_STUDY_SHEET -> session.write(Guide.SHEET, step.text());
                case COMMAND -> commands.add(run(step.text()));
                case OUTPUT -> last().shown().add(step.text());
                case PICTURE -> {
                    if (step.text().endsWith(".svg")) {
                        drawings.put(step.text(), drawing(last().page(), step.text()));
                    }
                }
            }
        }
    }

    List<Ran> commands() {
        return commands;
    }

    /** The charts that the guide shows, by their files: each out of the report of the command before it. */
    Map<String, String> drawings() {
        return drawings;
    }

    private Ran last() {
        return commands.get(commands.size() - 1);
    }

    private String scenarioWith(String text) {
        PART.splitAsStream(text).forEach(part -> parts.put(part.substring(0, part.indexOf(':')), part));
        return String.join("", parts.values());
    }

    private Ran run(String command) throws IOException, InterruptedException {
        List<String> words = WORD.matcher(command)
                .results()
                .map(word -> word.group(1) == null ? word.group(2) : word.group(1))
                .toList();
        if (words.get(0).equals("serve")) {
            return serve(command, words);
        }
        Session.Done done = session.run(words.toArray(String[]::new));
        Matcher page = PAGE_FILE.matcher(done.out());
        return new Ran(
                command,
                done.code(),
                done.out() + done.err(),
                page.find() ? Files.readString(folder.resolve(page.group())) : "",
                new ArrayList<>());
    }

    /** Serves until the page has answered. The code is that of the answer, 0 for a page. */
    private Ran serve(String command, List<String> words) throws IOException, InterruptedException {
        Process process = OwnProcess.of(Main.class, words)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        try (BufferedReader out = process.inputReader()) {
            String said = out.readLine() + "\n";
            Matcher link = LINK.matcher(said);
            if (!link.find()) {
                return new Ran(command, 1, said, "", new ArrayList<>());
            }
            int status = HttpClient.newHttpClient()
                    .send(HttpRequest.newBuilder(URI.create(link.group())).build(), BodyHandlers.discarding())
                    .statusCode();
            return new Ran(command, status == 200 ? 0 : status, said, "", new ArrayList<>());
        } finally {
            process.destroy();
            process.waitFor();
        }
    }

    /** The chart of {@code page} that is named like {@code file}. */
    private static String drawing(String page, String file) {
        String id = file.replace(".svg", "");
        Matcher found = Pattern.compile("(?s)<figure id=\"" + id + "\">.*?(<svg.*?</svg\\s*>)")
                .matcher(page);
        if (!found.find()) {
            throw new IllegalArgumentException("no chart " + id + " in the report of the command before it");
        }
        return found.group(1) + "\n";
    }
}
