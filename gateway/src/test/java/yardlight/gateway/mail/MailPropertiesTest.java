package yardlight.gateway.mail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.context.properties.source.MapConfigurationPropertySource;
import yardlight.channels.mail.MailSettings.Tls;
import yardlight.channels.mailbox.MailboxSettings;
import yardlight.channels.oauth.TokenEndpoint;
import yardlight.channels.oauth.TokenFile;
import yardlight.channels.oauth.Tokens;

class MailPropertiesTest {

    private static final String OWN = "yard@ranch.example";

    @TempDir
    private Path folder;

    private static <T> T bound(Class<T> type, String prefix, Map<String, String> properties) {
        return new Binder(new MapConfigurationPropertySource(properties)).bindOrCreate(prefix, type);
    }

    private static BoxSettings box(Map<String, String> properties) {
        return bound(BoxSettings.class, "yardlight.mailbox", properties);
    }

    private static TokenSettings tokens(Map<String, String> properties) {
        return bound(TokenSettings.class, "yardlight.mail.oauth", properties);
    }

    private static ServerSettings server(Map<String, String> properties) {
        return bound(ServerSettings.class, "spring.mail", properties);
    }

    @Test
    void there_is_no_mailbox_without_a_host() {
        assertThat(box(Map.of("yardlight.mailbox.password", "secret08")).areThere())
                .isFalse();
    }

    @Test
    void a_host_and_a_password_are_enough() {
        MailboxSettings settings = box(Map.of(
                        "yardlight.mailbox.host", "imap.example", "yardlight.mailbox.password", "secret08"))
                .with(OWN, Optional.empty());

        assertThat(settings.port()).isEqualTo(993);
        assertThat(settings.tls()).isEqualTo(Tls.IMPLICIT);
        assertThat(settings.login().username()).isEqualTo(OWN);
        assertThat(settings.folder()).isEqualTo("INBOX");
        assertThat(settings.poll()).hasMinutes(1);
        assertThat(settings.authority()).isEmpty();
    }

    @Test
    void all_of_it_may_be_given() throws Exception {
        Path file = Files.writeString(folder.resolve("password"), "secret08\n");
        BoxSettings box = box(Map.of(
                "yardlight.mailbox.host", "imap.example",
                "yardlight.mailbox.tls", "starttls",
                "yardlight.mailbox.username", "yard",
                "yardlight.mailbox.password-file", file.toString(),
                "yardlight.mailbox.folder", "Answers",
                "yardlight.mailbox.poll", "30s",
                "yardlight.mailbox.authserv-id", "MX.ranch.example"));

        MailboxSettings settings = box.with(OWN, Optional.empty());

        assertThat(settings.port()).isEqualTo(143);
        assertThat(settings.login().username()).isEqualTo("yard");
        assertThat(settings.login().password()).isEqualTo("secret08");
        assertThat(settings.folder()).isEqualTo("Answers");
        assertThat(settings.authority()).contains("mx.ranch.example");
        assertThat(settings.toString() + box).doesNotContain("secret08");
    }

    @ParameterizedTest
    @CsvSource({
        "tls, perhaps, 'tls must be implicit, starttls or none: perhaps'",
        "port, 0, port must be 1 to 65535: 0",
        "poll, 1h, poll must be from 100 ms to 25 minutes: PT1H",
        "password, '', 'password must be set, or password-file, or yardlight.mail.oauth for tokens, for the login of yard@ranch.example'",
        "password-file, /nowhere, password must not be set together with password-file: /nowhere"
    })
    void what_cannot_work_is_said(String property, String value, String complaint) {
        var properties = new java.util.HashMap<String, String>();
        properties.put("yardlight.mailbox.host", "imap.example");
        properties.put("yardlight.mailbox.password", "secret08");
        properties.put("yardlight.mailbox." + property, value);

        assertThatThrownBy(() -> box(properties).with(OWN, Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(complaint);
    }

    @Test
    void a_login_without_a_password_is_shown_with_a_token() {
        Tokens given = new TokenFile(folder.resolve("token"));

        assertThat(box(Map.of("yardlight.mailbox.host", "imap.example"))
                        .with(OWN, Optional.of(given))
                        .login()
                        .tokens())
                .contains(given);
        assertThat(server(Map.of("spring.mail.username", "yard")).login(Optional.of(given)))
                .hasValueSatisfying(login -> assertThat(login.tokens()).contains(given));
        assertThat(server(Map.of("spring.mail.username", "yard", "spring.mail.password", "p"))
                        .login(Optional.of(given)))
                .hasValueSatisfying(login -> assertThat(login.tokens()).isEmpty());
    }

    @Test
    void tokens_come_from_a_file_or_from_an_endpoint() {
        assertThat(tokens(Map.of()).tokens()).isEmpty();
        assertThat(tokens(Map.of("yardlight.mail.oauth.token-file", "/run/token"))
                        .tokens())
                .containsInstanceOf(TokenFile.class);
        TokenSettings endpoint = tokens(Map.of(
                "yardlight.mail.oauth.token-endpoint", "https://id.example/token",
                "yardlight.mail.oauth.client-id", "yard",
                "yardlight.mail.oauth.client-secret", "secret08"));
        assertThat(endpoint.tokens()).containsInstanceOf(TokenEndpoint.class);
        assertThat(endpoint.toString()).doesNotContain("secret08");
    }

    @ParameterizedTest
    @CsvSource({
        "token-file, /run/token, token-file must not be set together with token-endpoint: /run/token",
        "token-endpoint, http://id.example/token, 'token endpoint must be a whole https address without a login and without #, or http to this machine: http://id.example/token'",
        "client-id, '', client id must not be empty",
        "client-secret, '', a client without a refresh token must have a secret: yard"
    })
    void tokens_that_cannot_be_had_are_said(String property, String value, String complaint) {
        var properties = new java.util.HashMap<String, String>();
        properties.put("yardlight.mail.oauth.token-endpoint", "https://id.example/token");
        properties.put("yardlight.mail.oauth.client-id", "yard");
        properties.put("yardlight.mail.oauth.client-secret", "secret08");
        properties.put("yardlight.mail.oauth." + property, value);

        assertThatThrownBy(() -> tokens(properties).tokens())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(complaint);
    }
}
