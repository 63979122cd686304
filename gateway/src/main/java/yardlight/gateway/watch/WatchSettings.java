package yardlight.gateway.watch;

import java.net.URI;
import java.net.URISyntaxException;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import yardlight.channels.web.Limits;
import yardlight.gateway.settings.SecretText;

/**
 * The gateway that watches this one, by the names that docs/operating.md gives the properties.
 *
 * @param url of the other gateway, without the path of its doors
 * @param key of the box that this gateway is over there
 * @param every from one heartbeat to the next, until the other gateway says what it expects
 * @param allowHttp whether the key may go over the wire in the clear
 */
@ConfigurationProperties("yardlight.watched-by")
record WatchSettings(
        Optional<String> url,
        Optional<String> key,
        Optional<String> keyFile,
        @DefaultValue("1m") Duration every,
        @DefaultValue("5s") Duration connectTimeout,
        @DefaultValue("10s") Duration timeout,
        @DefaultValue("false") boolean allowHttp) {

    static final String PREFIX = "yardlight.watched-by.";

    private static final Set<String> THIS_MACHINE = Set.of("localhost", "127.0.0.1", "[::1]");
    private static final String URL_RULE =
            "url must be a whole https address without a login, a query and #, such as https://yard.example: ";
    private static final int LONGEST_KEY = 200;

    /**
     * Empty when nobody is to watch.
     *
     * @throws IllegalArgumentException in a sentence that begins with the name of the property, without the key
     */
    Optional<Watcher> read() {
        Optional<String> where = given(url);
        Optional<String> shown = SecretText.of("key", key, given(keyFile));
        if (where.isEmpty() && shown.isPresent()) {
            throw new IllegalArgumentException("url must be set beside key and key-file: nothing is set");
        }
        if (where.isPresent() && shown.isEmpty()) {
            throw new IllegalArgumentException("key must be set, or key-file, beside url: " + where.get());
        }
        return where.map(address ->
                new Watcher(url(address), key(shown.orElseThrow()), pace(), new Limits(connectTimeout, timeout)));
    }

    private URI url(String address) {
        URI whole = parsed(address);
        boolean plain = "http".equals(whole.getScheme());
        boolean clean = whole.getHost() != null
                && whole.getRawUserInfo() == null
                && whole.getRawQuery() == null
                && whole.getRawFragment() == null;
        if (!clean || !(plain || "https".equals(whole.getScheme()))) {
            throw new IllegalArgumentException(URL_RULE + address);
        }
        if (plain && !allowHttp && !THIS_MACHINE.contains(whole.getHost())) {
            throw new IllegalArgumentException("url must be https, or allow-http must be true: " + address);
        }
        return whole;
    }

    private static URI parsed(String address) {
        try {
            return new URI(address);
        } catch (URISyntaxException e) {
            throw new IllegalArgumentException(URL_RULE + address, e);
        }
    }

    private static String key(String shown) {
        if (shown.length() > LONGEST_KEY || !shown.matches("[!-~]+")) {
            throw new IllegalArgumentException("key must be 1 to " + LONGEST_KEY
                    + " printable ASCII characters without a space, and has " + shown.length() + " characters");
        }
        return shown;
    }

    private Duration pace() {
        if (every.compareTo(Round.SHORTEST) < 0 || every.compareTo(Round.LONGEST) > 0) {
            throw new IllegalArgumentException("every must be from 1 s to 1 h: " + every);
        }
        return every;
    }

    private static Optional<String> given(Optional<String> text) {
        return text.filter(words -> !words.isBlank());
    }

    /** Keeps the key back. */
    @Override
    public String toString() {
        return "WatchSettings[" + url.orElse("none") + "]";
    }
}
