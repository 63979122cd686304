package yardlight.channels.mail;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.channels.Attempt;
import yardlight.channels.Message;
import yardlight.channels.mail.MailSettings.Login;
import yardlight.channels.mail.MailSettings.Tls;
import yardlight.channels.oauth.NoToken;
import yardlight.channels.oauth.Tokens;

/** XOAUTH2 over SMTP, as its published description has it (developers.google.com/gmail/imap/xoauth2-protocol, read (2nd)). */
class TokenLoginAgainstTest {

    private static final Message MESSAGE = new Message("callout-7.2", "ana@example.org", "MESA 9", Instant.EPOCH);

    private ScriptedServer server;

    @BeforeEach
    void open() throws IOException {
        server = new ScriptedServer();
        server.says("EHLO", "250-scripted.example\r\n250 AUTH PLAIN LOGIN XOAUTH2")
                .says("AUTH", "235 2.7.0 in");
    }

    @AfterEach
    void close() throws IOException {
        server.close();
    }

    private SmtpChannel channel(String user, Tokens tokens) {
        return SmtpChannel.mail(Optional.of(
                Settings.with(server.port(), Tls.NONE, Optional.of(Login.withTokens(user, tokens)), Optional.empty())));
    }

    @Test
    void shows_the_published_string_and_no_password() {
        try (SmtpChannel channel =
                channel("someuser@example.com", new Given("ya29.vF9dft4qmTc2Nvb3RlckBhdHRhdmlzdGEuY29tCg"))) {
            assertThat(channel.send(MESSAGE).outcome()).isEqualTo(Attempt.Outcome.ACCEPTED);
        }

        assertThat(server.commands)
                .filteredOn(line -> line.startsWith("AUTH"))
                .containsExactly(
                        "AUTH XOAUTH2 dXNlcj1zb21ldXNlckBleGFtcGxlLmNvbQFhdXRoPUJlYXJlciB5YTI5LnZGOWRmdDRxbVRjMk52YjNSbGNr"
                                + "QmhkSFJoZG1semRHRXVZMjl0Q2cBAQ==");
    }

    @Test
    void a_token_that_is_not_taken_is_followed_by_another_and_never_said() {
        server.says("AUTH", "535 5.7.8 no");
        var tokens = new Given("one", "two");
        try (SmtpChannel channel = channel("yard@yard.example", tokens)) {
            Attempt attempt = channel.send(MESSAGE);
            assertThat(attempt.outcome()).isEqualTo(Attempt.Outcome.DEFERRED);
            assertThat(attempt.general()).isTrue();
            assertThat(attempt.detail())
                    .startsWith("the login was not taken: 535")
                    .doesNotContain("one");
            server.says("AUTH", "235 2.7.0 in");

            assertThat(channel.send(MESSAGE).outcome()).isEqualTo(Attempt.Outcome.ACCEPTED);
        }
        assertThat(server.commands)
                .contains("AUTH XOAUTH2 "
                        + Base64.getEncoder()
                                .encodeToString("user=yard@yard.example\u0001auth=Bearer two\u0001\u0001"
                                        .getBytes(StandardCharsets.US_ASCII)));
    }

    @Test
    void without_a_token_messages_wait_and_nothing_is_held_against_the_line() {
        try (SmtpChannel channel = channel("yard@yard.example", new Given())) {
            Attempt attempt = channel.send(MESSAGE);

            assertThat(attempt.outcome()).isEqualTo(Attempt.Outcome.DEFERRED);
            assertThat(attempt.general()).isTrue();
            assertThat(attempt.detail()).endsWith(": no more tokens");
        }
    }

    /** One after the other, each until it is refused. */
    private static final class Given implements Tokens {

        private final List<String> left;

        Given(String... tokens) {
            left = new ArrayList<>(List.of(tokens));
        }

        @Override
        public String token() throws NoToken {
            if (left.isEmpty()) {
                throw new NoToken("no more tokens");
            }
            return left.get(0);
        }

        @Override
        public void refused(String token) {
            left.remove(token);
        }
    }
}
