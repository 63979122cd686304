package yardlight.channels.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Base64;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardlight.channels.Attempt;
import yardlight.channels.Message;
import yardlight.channels.http.HttpSettings.Form;

/** A secret reaches the provider and nobody else. */
class SecretsTest {

    private static final Secret SECRET = new Secret(Settings.SECRET);
    private static final Message MESSAGE =
            new Message("callout-7.2", "+15755550101", "one {secret}", Instant.parse("2026-11-25T09:13:00Z"));

    private StandInProvider provider;

    @BeforeEach
    void open() throws IOException {
        provider = new StandInProvider();
    }

    @AfterEach
    void close() {
        provider.close();
    }

    static Stream<Authentication> ways() {
        return Stream.of(
                new Authentication.Bearer(SECRET),
                new Authentication.Basic("yard", SECRET),
                new Authentication.Header("X-Api-Key", SECRET));
    }

    private HttpSettings settings(Authentication authentication) {
        Form form = new Form(
                "POST",
                provider.url("/send?key={secret}"),
                Map.of(),
                "application/xml",
                "<send key=\"{secret}\">{text}</send>",
                Optional.empty());
        return new HttpSettings(
                form,
                Optional.of(authentication),
                Optional.of(SECRET),
                Settings.ANY,
                HttpSettings.PHONE,
                Optional.empty(),
                Settings.PATIENT);
    }

    @Test
    void it_goes_where_the_provider_wants_it_and_not_where_a_message_asks_for_it() {
        HttpChannel.of("voice", Optional.of(settings(new Authentication.Basic("yard", SECRET))))
                .send(MESSAGE);

        StandInProvider.Asked asked = provider.messages.get(0);
        String both = Base64.getEncoder().encodeToString(("yard:" + Settings.SECRET).getBytes(StandardCharsets.UTF_8));
        assertThat(asked.header("Authorization")).isEqualTo("Basic " + both);
        assertThat(asked.target()).isEqualTo("/send?key=k9-Zq.7%2Fwellhead%3D");
        assertThat(asked.body()).isEqualTo("<send key=\"k9-Zq.7/wellhead=\">one {secret}</send>");
    }

    /** RFC 7617 section 2 (memory): Aladdin and his password. */
    @Test
    void a_login_is_written_as_in_the_RFC() {
        assertThat(new Authentication.Basic("Aladdin", new Secret("opensesame")).value())
                .isEqualTo("Basic QWxhZGRpbjpvcGVuc2VzYW1l");
    }

    @ParameterizedTest
    @MethodSource("ways")
    void it_is_not_in_the_detail_although_the_provider_repeats_it(Authentication authentication) {
        String token = authentication.value();
        provider.says(
                403,
                "no " + token + " / " + Settings.SECRET + " / /send?key=k9-Zq.7%2Fwellhead%3D / "
                        + token.substring(token.indexOf(' ') + 1));
        HttpChannel channel = HttpChannel.of("voice", Optional.of(settings(authentication)));

        Attempt attempt = channel.send(MESSAGE);

        assertThat(attempt.detail()).startsWith("403 no ").contains("[secret]");
        for (String said : new String[] {
            attempt.toString(), channel.health().toString(), channel.knock().toString()
        }) {
            assertThat(said).doesNotContain("wellhead").doesNotContain(token.substring(token.indexOf(' ') + 1));
        }
    }

    @ParameterizedTest
    @MethodSource("ways")
    void it_is_not_in_the_text_form_of_anything(Authentication authentication) {
        HttpSettings settings = settings(authentication);

        assertThat(settings.toString()).contains("Secret[hidden]").doesNotContain("wellhead");
        assertThat(Values.of(MESSAGE, Settings.SECRET).toString()).doesNotContain("wellhead");
    }
}
