package yardlight.gateway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.assertj.MockMvcTester.MockMvcRequestBuilder;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/** What every answer of every address says to a browser, whoever asks, whatever became of it. The addresses are those that there are. */
@GatewayTest
class HeadersTest {

    private static final Set<String> FILES = Set.of(
            "GET /yardlight.css",
            "GET /yardlight.svg",
            "GET /yardlight-192.png",
            "GET /phone.js",
            "GET /phone-worker.js",
            "GET /phone-app.json",
            "GET /webjars/htmx.org/2.0.10/dist/htmx.min.js");

    private static final Set<String> BESIDES = Set.of(
            "GET /actuator/health",
            "GET /actuator/health/readiness",
            "GET /actuator/prometheus",
            "GET /nothing/at/all",
            "GET //twice",
            "GET /a;b=c",
            "POST /login",
            "POST /logout");

    /** What nobody could forge in a browser: it needs a key or a token of its own. */
    private static final Set<String> WITH_A_KEY = Set.of(
            "POST /api/v1/events",
            "POST /api/v1/heartbeats",
            "POST /api/v1/readings",
            "POST /api/v1/replies",
            "POST /a/{token}");

    private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");
    private static final Path TEMPLATES = Path.of("src", "main", "resources", "templates");

    private final Doors doors;
    private final RequestMappingHandlerMapping routes;

    HeadersTest(Doors doors, @Qualifier("requestMappingHandlerMapping") RequestMappingHandlerMapping routes) {
        this.doors = doors;
        this.routes = routes;
    }

    private Set<String> routes() {
        var all = new TreeSet<String>();
        routes.getHandlerMethods()
                .keySet()
                .forEach(info -> info.getPatternValues()
                        .forEach(pattern -> info.getMethodsCondition()
                                .getMethods()
                                .forEach(method -> all.add(method + " " + pattern))));
        return all;
    }

    private MockMvcRequestBuilder as(String login, String route) {
        String[] parts = route.replaceAll("\\{\\w+}", "none").split(" ");
        HttpMethod method = HttpMethod.valueOf(parts[0]);
        return login.isEmpty() ? doors.stranger(method, parts[1]) : doors.as(login, method, parts[1]);
    }

    /** What is wrong with the answers of these routes. */
    private List<String> complaints(Set<String> asked, boolean secure, Complaint complaint) {
        var found = new ArrayList<String>();
        for (String route : asked) {
            for (String login : List.of("owner", "reader", "")) {
                for (String accept : List.of("*/*", "text/html")) {
                    MockHttpServletResponse answer = as(login, route)
                            .accept(accept)
                            .secure(secure)
                            .asyncExchange()
                            .getResponse();
                    complaint.about(answer).forEach(word -> found.add(route + " as '" + login + "': " + word));
                }
            }
        }
        return found;
    }

    private interface Complaint {
        Stream<String> about(MockHttpServletResponse answer);
    }

    private Set<String> everything() {
        var all = new TreeSet<>(routes());
        assertThat(all).hasSizeGreaterThan(30);
        all.addAll(BESIDES);
        all.addAll(FILES);
        return all;
    }

    private static Stream<String> unlike(MockHttpServletResponse answer, String header, String wanted) {
        String value = answer.getHeader(header);
        return wanted.equals(value) ? Stream.of() : Stream.of(header + ": " + value);
    }

    @Test
    void keep_every_answer_in_its_frame_its_type_and_its_origin() {
        assertThat(complaints(
                        everything(),
                        false,
                        answer -> Stream.of(
                                        unlike(answer, "X-Content-Type-Options", "nosniff"),
                                        unlike(answer, "X-Frame-Options", "DENY"),
                                        unlike(answer, "Referrer-Policy", "no-referrer"),
                                        unlike(answer, "Cross-Origin-Opener-Policy", "same-origin"),
                                        unlike(answer, "Cross-Origin-Resource-Policy", "same-origin"))
                                .flatMap(found -> found)))
                .isEmpty();
    }

    @Test
    void let_no_page_run_what_stands_in_it_nor_load_what_is_not_ours_nor_be_framed() {
        Pattern strict =
                Pattern.compile("default-src 'none';(?: [a-z-]+-(?:src|uri|action|ancestors) '(?:self|none)';?)*");

        assertThat(complaints(everything(), false, answer -> {
                    String policy = String.valueOf(answer.getHeader("Content-Security-Policy"));
                    boolean good = strict.matcher(policy).matches()
                            && policy.contains("frame-ancestors 'none'")
                            && policy.contains("base-uri 'none'")
                            && policy.contains("form-action 'self'");
                    return good ? Stream.of() : Stream.of(policy);
                }))
                .isEmpty();
    }

    @Test
    void let_nothing_be_stored_but_the_files_that_are_the_same_for_all() {
        Set<String> all = everything();
        all.removeAll(FILES);

        assertThat(complaints(
                        all,
                        false,
                        answer -> String.valueOf(answer.getHeader(HttpHeaders.CACHE_CONTROL))
                                        .contains("no-store")
                                ? Stream.of()
                                : Stream.of("Cache-Control: " + answer.getHeader(HttpHeaders.CACHE_CONTROL))))
                .isEmpty();
        assertThat(complaints(
                        FILES, false, answer -> unlike(answer, HttpHeaders.CACHE_CONTROL, "max-age=3600, public")))
                .isEmpty();
    }

    @Test
    void ask_for_tls_only_where_there_is_tls() {
        Set<String> all = everything();
        // Refused before anybody asked how it came.
        all.removeAll(Set.of("GET //twice", "GET /a;b=c"));

        assertThat(complaints(
                        all,
                        true,
                        answer -> unlike(answer, "Strict-Transport-Security", "max-age=31536000 ; includeSubDomains")))
                .isEmpty();
        assertThat(complaints(
                        all,
                        false,
                        answer -> answer.containsHeader("Strict-Transport-Security")
                                ? Stream.of("asks for TLS")
                                : Stream.of()))
                .isEmpty();
    }

    @Test
    void give_no_cookie_to_scripts_or_to_other_sites() {
        assertThat(complaints(
                        everything(),
                        true,
                        answer -> Stream.of(answer.getCookies())
                                .filter(cookie -> !cookie.getSecure()
                                        || !cookie.isHttpOnly()
                                        || !Set.of("Lax", "Strict")
                                                .contains(String.valueOf(cookie.getAttribute("SameSite"))))
                                .map(Object::toString)))
                .isEmpty();
    }

    /** With the cookie of a session, or a password that the browser remembers, and without the word that only a page of ours has. */
    @Test
    void do_not_open_a_door_to_what_a_page_elsewhere_makes_a_browser_send() {
        Set<String> changing = routes();
        changing.removeIf(route -> READING.contains(route.split(" ")[0]) || WITH_A_KEY.contains(route));
        var open = new ArrayList<String>();

        for (String route : changing) {
            int borrowed = as("", route)
                    .with(request -> {
                        request.setRequestedSessionId("of-a-session");
                        return request;
                    })
                    .asyncExchange()
                    .getResponse()
                    .getStatus();
            int remembered = as("owner", route)
                    .header("Origin", "https://elsewhere.example")
                    .asyncExchange()
                    .getResponse()
                    .getStatus();
            if (borrowed != 403 || remembered != 403) {
                open.add(route + ": " + borrowed + " " + remembered);
            }
        }

        assertThat(changing).hasSizeGreaterThan(10);
        assertThat(open).isEmpty();
    }

    @Test
    void are_kept_by_every_page_none_of_which_has_a_script_or_a_style_in_it() throws IOException {
        Pattern inline = Pattern.compile(
                "<script(?![^>]*\\s(?:th:)?src=)|<style|\\sstyle=|\\son[a-z]+=|javascript:", Pattern.CASE_INSENSITIVE);
        try (Stream<Path> pages = Files.walk(TEMPLATES)) {
            for (Path page :
                    pages.filter(file -> file.toString().endsWith(".html")).toList()) {
                assertThat(Files.readString(page)).as(page.toString()).doesNotContainPattern(inline);
            }
        }
    }
}
