package yardlight.demo.phone;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.Optional;

/** What a person does with the link in a text: open the page, press its button. */
public final class Browser {

    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private Browser() {}

    /**
     * Opens the page with GET and sends its form with POST, cookies kept in between.
     *
     * @return what went wrong; empty when the answer was taken
     */
    public static Optional<String> answer(URI link) throws InterruptedException {
        HttpClient http = HttpClient.newBuilder()
                .version(HttpClient.Version.HTTP_1_1)
                .cookieHandler(new CookieManager())
                .followRedirects(HttpClient.Redirect.NORMAL)
                .build();
        try {
            HttpResponse<String> page =
                    http.send(HttpRequest.newBuilder(link).timeout(PATIENCE).build(), BodyHandlers.ofString());
            if (page.statusCode() != 200) {
                return Optional.of("the page answered with " + page.statusCode());
            }
            Optional<AnswerForm> form = AnswerForm.on(page.uri(), page.body());
            return form.isEmpty() ? Optional.of("the page has no button any more") : press(http, form.get());
        } catch (IOException e) {
            return Optional.of("the page did not open: " + e.getMessage());
        }
    }

    private static Optional<String> press(HttpClient http, AnswerForm form) throws IOException, InterruptedException {
        HttpRequest send = HttpRequest.newBuilder(form.action())
                .timeout(PATIENCE)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(form.encoded()))
                .build();
        int status = http.send(send, BodyHandlers.discarding()).statusCode();
        return status == 200 ? Optional.empty() : Optional.of("the button was answered with " + status);
    }
}
