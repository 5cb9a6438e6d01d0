package runthrough.web;

import io.javalin.http.Context;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.io.IOException;
import java.io.InputStream;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import runthrough.chart.ChartFonts;
import runthrough.web.job.Refusal;

/** The files of the page, by their addresses. */
final class PageFiles {
    private static final String UPLOT = "/META-INF/resources/webjars/uplot/1.6.30/dist/";

    private static final Map<String, String> TYPES = Map.of(
            "html", "text/html; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "css", "text/css; charset=utf-8",
            "svg", "image/svg+xml",
            "yaml", "application/yaml");

    private static final List<String> PAGE = List.of(
            "page.css",
            "drawing.css",
            "main.js",
            "api.js",
            "dom.js",
            "trace.js",
            "drawing.js",
            "dial.js",
            "files.js",
            "fixes.js",
            "grips.js",
            "joints.js",
            "machines.js",
            "map.js",
            "newline.js",
            "openapi.yaml",
            "pins.js",
            "race.js",
            "stores.js",
            "shown.js",
            "stopwatch.css",
            "stopwatch.js",
            "studies.js",
            "tabs.js",
            "taps.js",
            "player.js",
            "presentation.js",
            "projects.js",
            "charts.js",
            "history.js",
            "inputs.js",
            "sums.js",
            "work.js",
            "worker.js",
            "answer.js",
            "jobs.js",
            "words.js",
            "worth.js",
            "handover.js",
            "favicon.svg");

    private PageFiles() {}

    /** Serves each of them. */
    static void serve(JavalinDefaultRoutingApi routes) {
        routes.get("/", context -> send(context, "index.html"));
        routes.get("/stopwatch", context -> send(context, "stopwatch.html"));
        PAGE.forEach(name -> routes.get("/" + name, context -> send(context, name)));
        routes.get("/uplot/uPlot.esm.js", context -> resource(context, UPLOT + "uPlot.esm.js"));
        routes.get("/uplot/uPlot.min.css", context -> resource(context, UPLOT + "uPlot.min.css"));
        routes.get("/font/regular.woff2", context -> font(context, ChartFonts.regularForWeb()));
        routes.get("/font/bold.woff2", context -> font(context, ChartFonts.boldForWeb()));
    }

    private static void send(Context context, String name) throws IOException {
        resource(context, "/runthrough/web/" + name);
    }

    private static void resource(Context context, String name) throws IOException {
        try (InputStream in = PageFiles.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new Refusal(404, "There is no such file.");
            }
            String type = TYPES.getOrDefault(name.substring(name.lastIndexOf('.') + 1), "application/octet-stream");
            context.contentType(type).result(in.readAllBytes());
        }
    }

    private static void font(Context context, String base64) {
        context.contentType("font/woff2").result(Base64.getDecoder().decode(base64));
    }
}
