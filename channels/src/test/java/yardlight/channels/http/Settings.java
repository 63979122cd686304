package yardlight.channels.http;

import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import yardlight.channels.http.HttpSettings.Form;
import yardlight.channels.http.HttpSettings.Reading;
import yardlight.channels.web.Limits;

/** Settings for a made-up provider, with the patience of a test. */
final class Settings {

    static final String SECRET = "k9-Zq.7/wellhead=";

    /** Long enough for a machine under load where a test does not wait for it to pass. */
    static final Limits PATIENT = new Limits(Duration.ofSeconds(10), Duration.ofSeconds(30));

    static final String JSON = "application/json";

    static final Reading ANY = new Reading(Set.of(), Set.of(), Optional.empty(), Optional.empty());

    private Settings() {}

    static HttpSettings of(Form form) {
        return with(form, ANY);
    }

    static HttpSettings with(Form form, Reading reading) {
        return with(form, reading, HttpSettings.PHONE);
    }

    static HttpSettings with(Form form, Reading reading, Pattern address) {
        Secret secret = new Secret(SECRET);
        return new HttpSettings(
                form,
                Optional.of(new Authentication.Bearer(secret)),
                Optional.of(secret),
                reading,
                address,
                Optional.empty(),
                PATIENT);
    }

    static Form json(String url, String body) {
        return new Form("POST", url, Map.of(), JSON, body, Optional.of("Message-Key"));
    }

    static Form get(String url) {
        return new Form("GET", url, Map.of(), JSON, "", Optional.empty());
    }

    static Form body(String contentType, String body) {
        return new Form("POST", "https://sms.example/send", Map.of(), contentType, body, Optional.empty());
    }

    static Form headers(Map<String, String> headers) {
        return new Form("POST", "https://sms.example/send", headers, JSON, "{}", Optional.empty());
    }
}
