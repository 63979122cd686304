package yardlight.channels.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.net.URI;
import java.net.URLDecoder;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import yardlight.channels.Message;

/** Whatever a message says, what goes out is built as the template is. */
class InjectionTest {

    private static final JsonMapper JSON = JsonMapper.builder().build();

    static Stream<String> texts() {
        return Stream.of(
                "MESA 9 WATER TANK HIGH-HIGH 18.4 ft",
                "\",\"to\":\"+15755550199",
                "\\\",\\\"to\\\":\\\"+15755550199\\",
                "&to=+15755550199#x",
                "%26to%3D5755550199",
                "</text><to>+15755550199</to><text>",
                "]]><to>+15755550199</to>",
                "&lt;&amp;&#10;&quot;'\"",
                "one\r\nX-To: +15755550199\r\n\r\nbody",
                "one\ntwo\tthree",
                "{to} {secret} {id} {{text}}",
                "$1 \\1 ${jndi}",
                "se\u00f1al \u4f60\u597d \ud83d\udca7 \u202e\u0007\u0000 \ud83d \ufffe",
                "",
                " ",
                "+",
                "long ".repeat(10_000));
    }

    /** What is left of a text: it says the same, in characters that all bodies can carry. */
    private static String kept(String text) {
        return text.replace("\r\n", "\n").replaceAll("[\\p{Cc}&&[^\n\t]]", "").replaceAll("[\\p{Cs}\ufffe]", "\ufffd");
    }

    private static Message message(String text) {
        return new Message("callout-7.2", "+15755550101", text, Instant.parse("2026-11-25T09:13:00Z"));
    }

    private static String body(String contentType, String template, String text) {
        return new String(
                new Template(Settings.of(Settings.body(contentType, template))).body(message(text)),
                StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @MethodSource("texts")
    void in_JSON(String text) {
        String template =
                "{\"to\":[\"tel:{to}\"],\"n\":1.50,\"say\":{\"text\":\"> {text}\",\"id\":\"{id}\"},\"x\":null}";

        String body = body("application/json", template, text);
        JsonNode sent = JSON.readTree(body);

        assertThat(sent.at("/say/text").stringValue()).isEqualTo("> " + kept(text));
        assertThat(sent.at("/to/0").stringValue()).isEqualTo("tel:+15755550101");
        assertThat(sent.at("/say/id").stringValue()).isEqualTo("callout-7.2");
        assertThat(body).contains("\"n\":1.50,");
        assertThat(sent.propertyNames()).containsExactly("to", "n", "say", "x");
        assertThat(sent.get("say").propertyNames()).containsExactly("text", "id");
    }

    @ParameterizedTest
    @MethodSource("texts")
    void in_a_form(String text) {
        String sent = body("application/x-www-form-urlencoded", "from=yard&message={text}&to={to}", text);

        String[] fields = sent.split("&");
        assertThat(sent).matches("[!-~]*");
        assertThat(fields).hasSize(3);
        assertThat(fields[1]).startsWith("message=").doesNotContain("+");
        assertThat(decoded(fields[1].substring("message=".length()))).isEqualTo(kept(text));
        assertThat(decoded(fields[2])).isEqualTo("to=+15755550101");
    }

    @ParameterizedTest
    @MethodSource("texts")
    void in_XML(String text) throws Exception {
        String template =
                "<?xml version=\"1.0\" encoding=\"UTF-8\"?><send to=\"{to}\" as='{text}' say=\"{text}\"><!-- fine --><text>{text}</text></send>";

        Document sent = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(body("text/xml; charset=utf-8", template, text))));

        assertThat(sent.getDocumentElement().getAttributes().getLength()).isEqualTo(3);
        assertThat(sent.getDocumentElement().getAttribute("to")).isEqualTo("+15755550101");
        assertThat(sent.getDocumentElement().getAttribute("as")).isEqualTo(kept(text));
        assertThat(sent.getDocumentElement().getAttribute("say")).isEqualTo(kept(text));
        assertThat(sent.getElementsByTagName("*").getLength()).isEqualTo(2);
        assertThat(sent.getElementsByTagName("text").item(0).getTextContent()).isEqualTo(kept(text));
    }

    @ParameterizedTest
    @MethodSource("texts")
    void in_plain_text(String text) {
        assertThat(body("text/plain; charset=utf-8", "{text}", text)).isEqualTo(kept(text));
    }

    @ParameterizedTest
    @MethodSource("texts")
    void in_a_query(String text) {
        var template =
                new Template(Settings.of(Settings.get("https://sms.example/v1/{to}/send?x=1&text={text}&id={id}")));

        URI sent = template.request(message(text)).build().uri();

        assertThat(sent.getHost()).isEqualTo("sms.example");
        assertThat(sent.getRawPath()).isEqualTo("/v1/%2B15755550101/send");
        assertThat(sent.getRawFragment()).isNull();
        String[] fields = sent.getRawQuery().split("&");
        assertThat(fields).hasSize(3);
        assertThat(decoded(fields[1])).isEqualTo("text=" + kept(text));
    }

    /** An id is any printable ASCII, and an address nearly so if the pattern lets it. */
    @ParameterizedTest
    @ValueSource(strings = {"a\"b", "a:b{to}", "\\", "%0d%0a", "x=y&z", "<a>", "../../admin", "a/../b?c#d"})
    void in_a_header_and_a_path(String odd) {
        var form = new HttpSettings.Form(
                "PUT",
                "https://sms.example/v1/{to}/{id}",
                Map.of("X-Message", "id={id}; to={to}; at={at}"),
                Settings.JSON,
                "{\"id\":\"{id}\"}",
                Optional.of("Message-Key"));
        var message = new Message(odd, odd, "one", Instant.parse("2026-11-25T09:13:00Z"));

        var sent = new Template(Settings.of(form))
                .request(message)
                .PUT(BodyPublishers.noBody())
                .build();

        assertThat(sent.headers().allValues("X-Message"))
                .containsExactly("id=" + odd + "; to=" + odd + "; at=2026-11-25T09:13:00Z");
        assertThat(sent.headers().allValues("Message-Key")).containsExactly(odd);
        assertThat(sent.uri().getRawPath().split("/")).hasSize(4);
        assertThat(sent.uri().getRawQuery()).isNull();
        assertThat(sent.uri().normalize()).isEqualTo(sent.uri());
        assertThat(decoded(sent.uri().getRawPath().substring(4))).isEqualTo(odd + "/" + odd);
    }

    private static String decoded(String text) {
        return URLDecoder.decode(text, StandardCharsets.UTF_8);
    }
}
