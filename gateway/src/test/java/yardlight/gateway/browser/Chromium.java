package yardlight.gateway.browser;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType.LaunchOptions;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The browser of this machine, started once for all tests of a run. */
final class Chromium {

    /** Says where it is, if it is nowhere usual. */
    private static final String VARIABLE = "YARDLIGHT_CHROMIUM";

    /** For everything that a page is waited for: a busy machine is no fault of the page. */
    static final int PATIENCE_MILLIS = 15_000;

    private static Browser browser;

    private Chromium() {}

    /** Skips the test, aloud, where there is none. */
    static synchronized Browser browser() {
        Optional<Path> found = found();
        assumeTrue(found.isPresent(), "NOT TRIED: no Chromium here; install Debian's chromium or set " + VARIABLE);
        if (browser == null) {
            var playwright = Playwright.create(
                    new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
            browser = playwright
                    .chromium()
                    .launch(new LaunchOptions()
                            .setExecutablePath(found.get())
                            .setArgs(List.of("--no-sandbox", "--disable-gpu", "--disable-background-networking")));
            PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MILLIS);
            Runtime.getRuntime().addShutdownHook(new Thread(playwright::close));
        }
        return browser;
    }

    private static Optional<Path> found() {
        return Stream.of(System.getenv(VARIABLE), "/usr/bin/chromium", "/usr/bin/chromium-browser")
                .filter(name -> name != null && !name.isBlank())
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst();
    }
}
