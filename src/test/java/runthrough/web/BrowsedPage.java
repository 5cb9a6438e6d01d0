package runthrough.web;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;

/** The page, served, and a real browser to open it in; skipped where there is none. */
abstract class BrowsedPage {
    static PageServer page;
    static BrowserSession browser;

    @BeforeAll
    static void open() throws IOException {
        Optional<String> missing = BrowserSession.missing();
        missing.ifPresent(System.err::println);
        assumeTrue(missing.isEmpty(), missing.orElse(""));
        page = PageServer.start("runthrough test", 2, 0);
        browser = BrowserSession.open(1440, 1000);
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
            page.close();
        }
    }

    @BeforeEach
    void theBrowserAnswers() {
        browser.assertAnswers();
    }

    @AfterEach
    void theConsoleIsClean() {
        browser.assertNoErrors();
    }

    /** Opens the page as somebody who was never there. */
    static void openPage() {
        browser.visitAnew(page.address().toString());
        browser.awaitSettled();
        browser.pause();
    }
}
