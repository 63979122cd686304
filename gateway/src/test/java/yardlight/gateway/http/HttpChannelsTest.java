package yardlight.gateway.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.env.YamlPropertySourceLoader;
import org.springframework.context.annotation.AnnotationConfigApplicationContext;
import org.springframework.core.env.MapPropertySource;
import org.springframework.core.env.PropertySource;
import org.springframework.core.io.ByteArrayResource;
import yardlight.channels.Channel;
import yardlight.channels.Health;
import yardlight.gateway.settings.SettingsTrouble;

class HttpChannelsTest {

    @TempDir
    private Path folder;

    private static void with(PropertySource<?> properties, Consumer<List<Channel>> look) {
        try (var context = new AnnotationConfigApplicationContext()) {
            context.getEnvironment().getPropertySources().addFirst(properties);
            context.register(HttpConfiguration.class);
            context.refresh();
            look.accept(context.getBeanProvider(Channel.class).orderedStream().toList());
        }
    }

    private static void with(Map<String, Object> properties, Consumer<List<Channel>> look) {
        with(new MapPropertySource("test", properties), look);
    }

    private static PropertySource<?> yaml(String text) throws IOException {
        return new YamlPropertySourceLoader()
                .load("test", new ByteArrayResource(text.getBytes()))
                .get(0);
    }

    @Test
    void there_is_none_without_a_provider() {
        with(Map.of(), channels -> assertThat(channels).isEmpty());
    }

    @Test
    void there_is_one_for_each_provider_that_is_called_so() {
        with(
                Map.of("yardlight.http.voice.url", "https://voice.example/", "yardlight.http.text-2.url", ""),
                channels -> {
                    assertThat(channels)
                            .extracting(Channel::name)
                            .containsExactlyInAnyOrder("http-voice", "http-text-2");
                    assertThat(channels)
                            .extracting(channel -> channel.health().state())
                            .containsExactlyInAnyOrder(Health.State.READY, Health.State.NOT_CONFIGURED);
                });
    }

    @Test
    void they_are_closed_with_the_gateway() {
        List<Channel> seen = new ArrayList<>();

        with(Map.of("yardlight.http.voice.url", "https://voice.example/"), seen::addAll);

        assertThat(seen.get(0).knock()).contains("the channel is closed");
    }

    /** The example of the page is the one that is tried here. */
    @Test
    void the_example_in_the_docs_can_be_used() throws IOException {
        String page = Files.readString(Path.of("../docs/channels.md"));
        String example = page.substring(page.indexOf("```yaml\nyardlight:\n  http:") + 8);
        Path secret = Files.writeString(folder.resolve("secret"), "not-a-real-one\n");

        with(
                yaml(example.substring(0, example.indexOf("```"))
                        .replace("/etc/yardlight/voice-key", secret.toString())),
                channels -> assertThat(channels).singleElement().satisfies(channel -> {
                    assertThat(channel.name()).isEqualTo("http-voice");
                    assertThat(channel.health().state()).isEqualTo(Health.State.READY);
                    assertThat(channel.complaintAbout("+15755550101")).isEmpty();
                }));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "url | http://voice.example/ | yardlight.http.voice.url must be a whole https address",
                "method | SEND | yardlight.http.voice.method must be POST, PUT or GET: SEND",
                "body | {\"a\":{to}} | yardlight.http.voice.body must be JSON",
                "content-type | text/html | yardlight.http.voice.content-type must be JSON",
                "headers[X A] | 1 | yardlight.http.voice.headers.X A must be the name of a header",
                "authentication | digest | yardlight.http.voice.authentication must be none, header, basic or bearer: digest",
                "authentication | bearer | yardlight.http.voice.secret must be set, or secret-file, for authentication: bearer",
                "secret-file | no/such | yardlight.http.voice.secret-file must be a file that can be read: no/such",
                "success | 404 | yardlight.http.voice.success must be status codes from 200 to 299: 404",
                "transient | 200 | yardlight.http.voice.transient must be status codes from 400 to 499: 200",
                "taken-pointer | id | yardlight.http.voice.taken-pointer must be a JSON pointer",
                "taken-values | 1 | yardlight.http.voice.taken-values and refused-values must have a taken-pointer: [1]",
                "refused-pattern | NO | yardlight.http.voice.refused-pattern must have a taken-pattern beside it: NO",
                "taken-pattern | ( | yardlight.http.voice.taken-pattern must be a regular expression: (",
                "reference-header | a b | yardlight.http.voice.reference-header must be the name of a header",
                "address | [ | yardlight.http.voice.address must be a regular expression: [",
                "knock-url | /account | yardlight.http.voice.knock-url must be a whole https address",
                "timeout | 1h | yardlight.http.voice.timeout must be from 1 ms to 10 minutes: PT1H"
            })
    void what_cannot_be_used_is_said_with_the_property_the_rule_and_the_value(
            String property, String value, String words) {
        String secret = value.equals("digest") ? "k9-well" : "";
        Map<String, Object> properties = new HashMap<>(Map.of(
                "yardlight.http.voice.url",
                "https://voice.example/",
                "yardlight.http.voice.body",
                "{\"a\":\"{text}\"}"));
        properties.put("yardlight.http.voice." + property, value);
        if (!secret.isEmpty()) {
            properties.put("yardlight.http.voice.secret", secret);
        }

        assertThat(trouble(properties)).isInstanceOf(SettingsTrouble.class).hasMessageStartingWith(words);
    }

    @Test
    void a_name_that_no_setup_can_say() {
        assertThat(trouble(Map.of("yardlight.http.my_voice.url", "https://voice.example/")))
                .hasMessageStartingWith("yardlight.http.my_voice.name must be ");
    }

    @Test
    void a_property_that_there_is_not() {
        assertThat(trouble(Map.of(
                        "yardlight.http.voice.url", "https://voice.example/", "yardlight.http.voice.sucess", "200")))
                .hasMessageContaining("yardlight.http.voice.sucess");
    }

    @Test
    void a_secret_that_cannot_be_one_is_not_shown() {
        assertThat(trouble(Map.of(
                        "yardlight.http.voice.url",
                        "https://voice.example/",
                        "yardlight.http.voice.secret",
                        "well head")))
                .hasMessageStartingWith("yardlight.http.voice.secret must be 1 to 4096 printable ASCII characters")
                .hasMessageNotContaining("well head");
    }

    private static Throwable trouble(Map<String, Object> properties) {
        try {
            with(properties, channels -> {});
            return null;
        } catch (RuntimeException e) {
            Throwable cause = e;
            while (cause.getCause() != null && !(cause instanceof SettingsTrouble)) {
                cause = cause.getCause();
            }
            return cause;
        }
    }
}
