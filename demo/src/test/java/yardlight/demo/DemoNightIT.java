package yardlight.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import yardlight.demo.gateway.Launch;

/** The whole demo as it is delivered: its jar, the gateway's jar, real HTTP and SMTP, a night in about two minutes. */
@Timeout(value = 240, unit = TimeUnit.SECONDS)
class DemoNightIT {

    private static final Pattern PAGE = Pattern.compile("Phones and sites: (http://localhost:\\d+)");

    private final HttpClient http = HttpClient.newHttpClient();
    private final List<String> printed = new ArrayList<>();
    private Process demo;

    @AfterEach
    void stop() {
        demo.destroy();
    }

    @Test
    void plays_the_night_as_written_and_shows_it() throws IOException, InterruptedException {
        demo = start();
        BufferedReader output =
                new BufferedReader(new InputStreamReader(demo.getInputStream(), StandardCharsets.UTF_8));

        URI page = URI.create(awaitLine(output, PAGE).group(1));
        assertThat(get(page.resolve("/"))).contains("Not a safety system; hard-wired shutdowns stay.");

        awaitLine(output, Pattern.compile("Ben's phone .*WATER TANK"));
        assertThat(get(page.resolve("/phones"))).containsPattern("\"Ben Tso\".*WATER TANK.*http://localhost:");
        assertThat(get(page.resolve("/sites"))).contains("18.4 ft");
        assertThat(get(page.resolve("/night"))).contains("\"ready\":true", "2:13 AM");

        awaitLine(output, Pattern.compile("Ben .*presses the button"));
        assertThat(type(page.resolve("/phones/ana/reply"), "ok"))
                .as("what comes back when Ana types")
                .containsPattern("\"line\":\"Ben Tso has it since 2:\\d\\d AM");

        awaitLine(output, Pattern.compile("The night went as written\\.|did not go as written"));
        output.lines().forEach(printed::add);
        assertThat(demo.waitFor()).as(() -> String.join("\n", printed)).isZero();
    }

    private static Process start() throws IOException {
        return new ProcessBuilder(
                        Launch.java(),
                        "-XX:TieredStopAtLevel=1",
                        "-jar",
                        Path.of("target", "demo.jar").toString(),
                        "--demo.exit-after-night=true",
                        "--demo.speed=120",
                        "--demo.curtain=2026-11-25T02:05",
                        "--demo.head-start=PT12S",
                        "--demo.gateway-port=0",
                        "--server.port=0")
                .redirectErrorStream(true)
                .start();
    }

    private Matcher awaitLine(BufferedReader output, Pattern wanted) throws IOException {
        for (String line = output.readLine(); line != null; line = output.readLine()) {
            printed.add(line);
            Matcher found = wanted.matcher(line);
            if (found.find()) {
                return found;
            }
        }
        throw new AssertionError("the demo ended before it said " + wanted + ":\n" + String.join("\n", printed));
    }

    private String type(URI address, String text) throws IOException, InterruptedException {
        var request = HttpRequest.newBuilder(address)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString("text=" + text))
                .build();
        return http.send(request, BodyHandlers.ofString()).body();
    }

    private String get(URI address) throws IOException, InterruptedException {
        return http.send(HttpRequest.newBuilder(address).build(), BodyHandlers.ofString())
                .body();
    }
}
