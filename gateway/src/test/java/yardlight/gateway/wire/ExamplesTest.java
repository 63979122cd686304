package yardlight.gateway.wire;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What is offered to be pasted; that it works is seen in {@code FirstHourIT}. */
class ExamplesTest {

    private static final Examples PLAIN = Examples.of("http://192.168.1.20:8080", "the-key");
    private static final Examples SECURE = Examples.of("https://yard.example", "the-key");

    @Test
    void have_the_address_and_the_key_and_nothing_left_to_fill_in_but_the_network() {
        for (String example : new String[] {PLAIN.curl(), PLAIN.microPython(), PLAIN.arduino()}) {
            assertThat(example)
                    .contains("http://192.168.1.20:8080/api/v1/heartbeats", "the-key")
                    .doesNotContain("ADDRESS", "\"KEY\"", "Bearer KEY", "SECURE", "CLIENT");
        }
    }

    @Test
    void of_arduino_are_whole_and_short() {
        assertThat(PLAIN.arduino())
                .contains("void setup() {", "void loop() {", "WiFiClient client;", "#include <HTTPClient.h>")
                .hasLineCount(29);
        assertThat(PLAIN.arduino().chars().filter(c -> c == '{').count())
                .isEqualTo(PLAIN.arduino().chars().filter(c -> c == '}').count());
        assertThat(SECURE.arduino()).contains("#include <WiFiClientSecure.h>", "WiFiClientSecure client;");
    }
}
