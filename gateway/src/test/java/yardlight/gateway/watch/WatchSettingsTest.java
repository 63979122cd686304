package yardlight.gateway.watch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.context.properties.bind.Bindable;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.context.properties.source.MapConfigurationPropertySource;

class WatchSettingsTest {

    private static final String KEY = "k9-of-the-other-yard";

    @TempDir
    private Path folder;

    private static WatchSettings of(Map<String, String> properties) {
        var named = new HashMap<String, String>();
        properties.forEach((name, value) -> named.put(WatchSettings.PREFIX + name, value));
        return new Binder(new MapConfigurationPropertySource(named))
                .bindOrCreate("yardlight.watched-by", Bindable.of(WatchSettings.class));
    }

    @Test
    void nobody_watches_unless_that_is_set_up() {
        assertThat(of(Map.of()).read()).isEmpty();
        assertThat(of(Map.of("url", "", "key", "")).read()).isEmpty();
    }

    @Test
    void an_address_and_a_key_are_enough() {
        Optional<Watcher> watcher =
                of(Map.of("url", "https://yard.example/", "key", KEY)).read();

        assertThat(watcher).hasValueSatisfying(one -> {
            assertThat(one.door()).hasToString("https://yard.example/api/v1/heartbeats");
            assertThat(one.name()).isEqualTo("yard.example");
            assertThat(one.every()).isEqualTo(Duration.ofMinutes(1));
            assertThat(one.limits().whole()).isEqualTo(Duration.ofSeconds(10));
        });
    }

    @Test
    void the_key_may_stand_in_a_file_and_is_in_no_text_form() throws IOException {
        Path file = Files.writeString(folder.resolve("key"), KEY + "\n");
        WatchSettings settings = of(Map.of("url", "https://yard.example", "key-file", file.toString()));

        Watcher watcher = settings.read().orElseThrow();

        assertThat(watcher.key()).isEqualTo(KEY);
        assertThat(watcher + " " + settings + " " + of(Map.of("url", "https://yard.example", "key", KEY)))
                .contains("yard.example")
                .doesNotContain(KEY);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ftp://yard.example      | url must be a whole https address without a login, a query and #, such as https://yard.example: ftp://yard.example",
                "yard.example            | url must be a whole https address without a login, a query and #, such as https://yard.example: yard.example",
                "https://a:b@yard.example| url must be a whole https address",
                "https://yard.example?a=b| url must be a whole https address",
                "https://yard example    | url must be a whole https address",
                "http://yard.example     | url must be https, or allow-http must be true: http://yard.example"
            })
    void an_address_that_cannot_be_used_is_said_with_the_rule_and_the_value(String url, String words) {
        assertThatThrownBy(() -> of(Map.of("url", url, "key", KEY)).read())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith(words)
                .hasMessageEndingWith(url);
    }

    @ParameterizedTest
    @CsvSource({"http://127.0.0.1:8081, false", "http://localhost:8081, false", "http://10.0.0.7:8080, true"})
    void the_key_goes_in_the_clear_only_to_this_machine_or_where_that_is_wanted(String url, String allowed) {
        assertThat(of(Map.of("url", url, "key", KEY, "allow-http", allowed)).read())
                .isPresent();
    }

    @Test
    void an_address_without_a_key_is_refused() {
        assertThatThrownBy(() -> of(Map.of("url", "https://yard.example")).read())
                .hasMessage("key must be set, or key-file, beside url: https://yard.example");
    }

    @Test
    void a_key_without_an_address_is_refused_and_not_shown() {
        assertThatThrownBy(() -> of(Map.of("key", KEY)).read())
                .hasMessage("url must be set beside key and key-file: nothing is set");
    }

    @Test
    void a_key_that_cannot_be_one_is_refused_and_not_shown() {
        assertThatThrownBy(() -> of(Map.of("url", "https://yard.example", "key", "two words"))
                        .read())
                .hasMessageStartingWith("key must be 1 to 200 printable ASCII characters")
                .hasMessageNotContaining("two words");
    }

    @ParameterizedTest
    @CsvSource({
        "every, 2h, every must be from 1 s to 1 h: PT2H",
        "every, 10ms, every must be from 1 s to 1 h: PT0.01S",
        "timeout, 1h, timeout must be from 1 ms to 10 minutes: PT1H"
    })
    void a_time_out_of_bounds_is_refused(String property, String value, String words) {
        assertThatThrownBy(() -> of(Map.of("url", "https://yard.example", "key", KEY, property, value))
                        .read())
                .hasMessage(words);
    }
}
