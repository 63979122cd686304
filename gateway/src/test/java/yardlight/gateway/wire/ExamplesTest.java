package yardlight.gateway.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardlight.escalation.shutin.Terms;

/** What is offered to be pasted; that a gateway takes it is seen in {@code FirstHourIT}. */
class ExamplesTest {

    private static final List<Examples> PLAIN = all("http://192.168.1.20:8080");
    private static final List<Examples> SECURE = all("https://yard.example");

    @TempDir
    private Path folder;

    private static List<Examples> all(String address) {
        return Examples.all(new Examples.Wired(address, "mesa-9-box", "the-key"), Optional.empty());
    }

    static Stream<Examples> examples() {
        return Stream.concat(PLAIN.stream(), SECURE.stream());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void have_the_address_and_the_key_and_nothing_left_to_fill_in_but_the_network(Examples example) {
        for (String text : List.of(example.shell(), example.microPython(), example.arduino())) {
            assertThat(text).contains("/api/v1", "the-key").doesNotContainPattern("@\\w+@");
            assertThat(text).containsAnyOf("http://192.168.1.20:8080/api/v1", "https://yard.example/api/v1");
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void of_arduino_compile(Examples example) throws Exception {
        Boards.needs("g++");

        Boards.compile(folder, example.arduino());
        Boards.compile(folder, example.arduino(), "-DESP8266");
    }

    @ParameterizedTest
    @MethodSource("examples")
    void of_micropython_can_be_read(Examples example) throws Exception {
        Boards.needs("python3");

        assertThat(Boards.parsed(folder, example.microPython())).isEmpty();
    }

    @Test
    void begin_with_a_heartbeat_alone() {
        assertThat(Examples.first(new Examples.Wired("http://a", "mesa-9-box", "k")))
                .hasSize(1);
        assertThat(PLAIN).extracting(Examples::what).containsExactly("heartbeat", "readings", "requests");
        assertThat(PLAIN.get(0).shell()).contains("/heartbeats", "state=normal");
        assertThat(PLAIN.get(1).shell()).contains("/readings", "unit=ft");
    }

    @Test
    void encrypt_where_the_address_says_so() {
        assertThat(PLAIN).allMatch(one -> one.arduino().contains("WiFiClient client;"));
        assertThat(SECURE)
                .allMatch(one -> one.arduino().contains("#include <WiFiClientSecure.h>")
                        && one.arduino().contains("WiFiClientSecure client;"));
    }

    @Test
    void answer_a_request_in_the_words_of_the_site() {
        var terms = new Terms(
                Terms.Way.BOX,
                "mesa-9-box",
                "plc",
                "stopped",
                "left-running",
                Duration.ofMinutes(5),
                Duration.ofMinutes(6),
                Optional.empty());

        Examples asked = Examples.all(new Examples.Wired("http://a", "mesa-9-box", "k"), Optional.of(terms))
                .get(2);

        for (String text : List.of(asked.shell(), asked.microPython(), asked.arduino())) {
            assertThat(text).contains("plc", "stopped", "left-running").doesNotContain("refused");
        }
    }

    @Test
    void of_arduino_are_whole_and_short() {
        assertThat(PLAIN.get(0).arduino())
                .contains("void setup() {", "void loop() {", "WiFiClient client;", "#include <HTTPClient.h>")
                .hasLineCount(29);
    }
}
