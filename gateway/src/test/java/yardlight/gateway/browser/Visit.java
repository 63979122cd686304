package yardlight.gateway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import yardlight.gateway.GatewayTest;

/**
 * Somebody who opens pages in a browser. Nothing that a page's scripts complain of goes unnoticed: {@link #close} fails on
 * it.
 */
public final class Visit implements AutoCloseable {

    private static final Path PICTURES = Path.of(System.getProperty("yardlight.pages", "target/pages"));

    private final Look look;
    private final BrowserContext context;
    private final Page page;
    private final List<String> complaints = new CopyOnWriteArrayList<>();

    private Visit(int port, Look look, String language, boolean scripts) {
        this.look = look;
        context = Chromium.browser()
                .newContext(new Browser.NewContextOptions()
                        .setBaseURL("http://localhost:" + port)
                        .setViewportSize(look.width, look.height)
                        .setColorScheme(look.dark ? ColorScheme.DARK : ColorScheme.LIGHT)
                        .setReducedMotion(ReducedMotion.REDUCE)
                        .setLocale(language)
                        .setJavaScriptEnabled(scripts)
                        .setTimezoneId("America/Chicago"));
        context.setDefaultTimeout(Chromium.PATIENCE_MILLIS);
        page = context.newPage();
        page.onPageError(complaints::add);
        page.onConsoleMessage(message -> {
            if (message.type().equals("error")) {
                complaints.add(message.text());
            }
        });
    }

    public static Visit to(int port, Look look) {
        return new Visit(port, look, "en-US", true);
    }

    /** In a browser that runs none; {@link #check} needs them. */
    static Visit withoutScripts(int port, Look look) {
        return new Visit(port, look, "en-US", false);
    }

    public static Visit inSpanish(int port, Look look) {
        return new Visit(port, look, "es-MX", true);
    }

    /** Through the page, as a person does; ends on the first page, or where that leads the owner of an empty gateway. */
    public Visit signIn(String login) {
        page.navigate("/login");
        page.fill("input[name=username]", login);
        page.fill("input[name=password]", GatewayTest.PASSWORD);
        page.click("main button[type=submit]");
        page.waitForURL(url -> !url.contains("/login"));
        return this;
    }

    public Page page() {
        return page;
    }

    public Page open(String path) {
        page.navigate(path);
        return page;
    }

    /**
     * What holds for every page: nothing to scroll sideways, nothing that axe-core finds wrong (Deque's rules for WCAG 2.0
     * to 2.2, A and AA), every button and link of the page's own large enough for a thumb. Makes a picture of it.
     *
     * @param name of the picture
     */
    public void check(String name) {
        picture(name);
        assertThat(page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .as(name + ": pixels to scroll sideways")
                .isEqualTo(0);
        assertThat(new AxeBuilder(page)
                        .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"))
                        .analyze()
                        .getViolations())
                .as(name)
                .map(rule -> rule.getId() + " (" + rule.getHelp() + ") at "
                        + rule.getNodes().stream().map(node -> node.getHtml()).toList())
                .isEmpty();
    }

    /** Of the whole page, in a window as high as that: what stays at the window's edge then stands at the page's. */
    private void picture(String name) {
        Number height = (Number) page.evaluate("document.documentElement.scrollHeight");
        page.setViewportSize(look.width, Math.max(look.height, height.intValue()));
        page.screenshot(new Page.ScreenshotOptions().setPath(PICTURES.resolve(name + "-" + look.word() + ".png")));
        page.setViewportSize(look.width, look.height);
    }

    /** Forgets what scripts complained of so far, for a test that provokes it. */
    public void forgive() {
        complaints.clear();
    }

    @Override
    public void close() {
        context.close();
        assertThat(complaints).as("what scripts complained of").isEmpty();
    }
}
