package yardlight.channels.mailbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.Health;
import yardlight.channels.mail.MailNames;
import yardlight.channels.mail.MailSettings.Login;
import yardlight.channels.mailbox.ScriptedMailbox.After;
import yardlight.channels.oauth.Tokens;

/** A mailbox on a server of bare sockets that misbehaves, or that wants a token. */
class MailboxTroubleIT {

    private static final Duration LONG = Duration.ofSeconds(30);
    private static final Duration POLL = Duration.ofMillis(200);
    private static final Instant NOW = Instant.parse("2026-11-25T09:00:00Z");

    private final Basket inbox = new Basket();
    private ScriptedMailbox server;
    private Mailbox mailbox;
    private final OneTurn turn = new OneTurn();

    @BeforeEach
    void open() throws IOException {
        server = new ScriptedMailbox();
    }

    @AfterEach
    void close() throws IOException {
        if (mailbox != null) {
            mailbox.close();
        }
        server.close();
    }

    @Test
    void looks_again_and_again_where_the_server_does_not_say_that_something_has_come() {
        listen(Mailboxes.LOGIN);
        await().atMost(LONG).until(() -> count("SEARCH") >= 2);

        server.mails.add(Mails.from("ana@example.org", "", "OK 47"));

        await().atMost(LONG).until(() -> inbox.texts.size() == 1 && server.seen.contains(1));
        assertThat(server.commands).noneMatch(line -> line.contains("IDLE"));
        assertThat(server.connections).hasValue(1);
    }

    @Test
    void reads_only_while_it_is_its_turn() {
        turn.ours = false;
        server.mails.add(Mails.from("ana@example.org", "", "OK 47"));
        listen(Mailboxes.LOGIN);
        await().pollDelay(Duration.ofMillis(500)).atMost(LONG).until(() -> server.connections.get() == 0);

        turn.ours = true;

        await().atMost(LONG).until(() -> inbox.texts.size() == 1);
        turn.ours = false;
        await().atMost(LONG).until(() -> server.guests() == 0);
    }

    @Test
    void leaves_its_turn_to_another_gateway_while_it_cannot_read() {
        server.does("SELECT", "", After.HANG_UP);
        listen(Mailboxes.LOGIN);
        await().atMost(LONG).until(() -> turn.left.get() >= 2);
        assertThat(mailbox.health().state()).isEqualTo(Health.State.TROUBLED);
        turn.ours = false;
        await().atMost(LONG).until(() -> mailbox.health().state() == Health.State.READY);
        turn.ours = true;
        server.behaves("SELECT");
        await().atMost(LONG).until(() -> count("SEARCH") >= 2);
        int left = turn.left.get();
        await().atMost(LONG).until(() -> count("SEARCH") >= 6);

        assertThat(turn.left).hasValue(left);
    }

    @Test
    void reads_no_more_of_a_mail_than_its_beginning() {
        server.mails.add(Mails.from(
                "ana@example.org", "", "OK 47\n" + "x".repeat(78).concat("\n").repeat(60_000)));

        listen(Mailboxes.with(server.port(), Mailboxes.LOGIN, Mailboxes.PATIENT, POLL));

        await().atMost(LONG).until(() -> inbox.texts.size() == 1);
        assertThat(inbox.texts.get(0).text()).startsWith("OK 47").hasSizeLessThan(20_000);
        // Not how often it was asked for: on a slow machine it is asked for anew.
        assertThat(server.commands.stream()
                        .filter(line -> line.contains("BODY"))
                        .map(line -> Integer.valueOf(line.replaceAll(".*<(\\d+)\\..*", "$1"))))
                .contains(0, 65_536)
                .allSatisfy(start -> assertThat(start).isLessThanOrEqualTo(2 * 1024 * 1024));
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void hears_what_comes_between_its_last_look_and_its_wait_for_the_servers_word(boolean tells) {
        server.capabilities = "IMAP4rev1 AUTH=PLAIN IDLE";
        server.tellsBeforeIdle = tells;
        server.comingBeforeIdle.add(Mails.from("ana@example.org", "", "OK 47"));

        listen(Mailboxes.at(server.port()));

        await().atMost(LONG).until(() -> inbox.texts.size() == 1 && server.seen.contains(1));
        assertThat(server.connections).hasValue(1);
    }

    @Test
    @Timeout(value = 30, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void does_not_wait_once_the_server_has_told_before_it_lets_it_wait() throws Exception {
        server.capabilities = "IMAP4rev1 AUTH=PLAIN IDLE";
        server.tellsBeforeIdle = true;
        server.comingBeforeIdle.add(Mails.from("ana@example.org", "", "OK 47"));
        var timer = new ScheduledThreadPoolExecutor(2);
        var visit = new Visit(Mailboxes.at(server.port()), timer);
        try {
            visit.open();

            visit.await(Duration.ofMinutes(20));

            assertThat(visit.count()).isEqualTo(1);
        } finally {
            visit.leave();
            timer.shutdownNow();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "GREETING,SILENCE",
        "GREETING,DRIP",
        "SELECT,SILENCE",
        "SEARCH,SILENCE",
        "SEARCH,DRIP",
        "FETCH,DRIP",
        "FETCH,HANG_UP"
    })
    void comes_back_to_a_server_that_hangs_drips_or_hangs_up(String verb, After after) {
        server.does(verb, "", after);
        server.mails.add(Mails.from("ana@example.org", "", "OK 47"));
        listen(Mailboxes.LOGIN);
        await().atMost(LONG).until(() -> server.connections.get() >= 2);

        server.behaves(verb);

        await().atMost(LONG).until(() -> inbox.texts.size() == 1 && server.seen.contains(1));
    }

    @Test
    void one_mail_that_the_server_does_not_give_keeps_nobody_behind_it() {
        server.mails.add(Mails.from("ana@example.org", "", "OK 47"));
        server.mails.add(Mails.from("ana@example.org", "", "OK 48"));
        server.missing = 1;

        listen(Mailboxes.LOGIN);

        await().atMost(LONG).until(() -> inbox.texts.size() == 1 && server.seen.contains(2));
        assertThat(server.seen).doesNotContain(1);
    }

    @Test
    void does_not_try_a_wrong_password_again_soon() {
        server.does("AUTHENTICATE", "TAG NO wrong", After.STAY);
        server.does("LOGIN", "TAG NO wrong", After.STAY);

        listen(Mailboxes.LOGIN);

        await().atMost(LONG).until(() -> mailbox.health().state() == Health.State.TROUBLED);
        await().pollDelay(Duration.ofSeconds(3)).atMost(LONG).until(() -> true);
        assertThat(server.connections).hasValue(1);
    }

    // The string of the protocol's published example (developers.google.com/gmail/imap/xoauth2-protocol, read (2nd)).
    @ParameterizedTest
    @ValueSource(strings = {"IMAP4rev1 AUTH=XOAUTH2 SASL-IR", "IMAP4rev1 AUTH=XOAUTH2"})
    void shows_its_token_as_XOAUTH2_has_it(String capabilities) {
        server.capabilities = capabilities;
        var tokens = new GivenTokens("ya29.vF9dft4qmTc2Nvb3RlckBhdHRhdmlzdGEuY29tCg");

        listen(Login.withTokens("someuser@example.com", tokens));

        await().atMost(LONG).until(() -> count("SEARCH") >= 1);
        assertThat(String.join(" ", server.commands))
                .contains("AUTHENTICATE XOAUTH2")
                .contains(
                        "dXNlcj1zb21ldXNlckBleGFtcGxlLmNvbQFhdXRoPUJlYXJlciB5YTI5LnZGOWRmdDRxbVRjMk52YjNSbGNrQmhkSFJoZG1semRHRXVZMjl0Q2cBAQ==");
        assertThat(tokens.refused).isEmpty();
    }

    @Test
    void says_which_token_was_not_taken_and_comes_back_with_another() {
        server.capabilities = "IMAP4rev1 AUTH=XOAUTH2 SASL-IR";
        server.does("AUTHENTICATE", "TAG NO it is over", After.STAY);
        var tokens = new GivenTokens("token-1");

        listen(Login.withTokens("yard@yard.example", tokens));
        await().atMost(LONG).until(() -> tokens.refused.contains("token-1"));
        assertThat(mailbox.health().sentence()).doesNotContain("token-1");
        server.behaves("AUTHENTICATE");

        await().atMost(LONG).until(() -> count("SEARCH") >= 1);
        assertThat(server.commands)
                .anyMatch(line -> line.contains(base64("user=yard@yard.example\u0001auth=Bearer token-2\u0001\u0001")));
    }

    private static String base64(String text) {
        return Base64.getEncoder().encodeToString(text.getBytes(StandardCharsets.UTF_8));
    }

    private long count(String verb) {
        return server.commands.stream()
                .filter(line -> line.contains(" " + verb))
                .count();
    }

    private void listen(Login login) {
        listen(Mailboxes.with(server.port(), login, Mailboxes.SHORT, POLL));
    }

    private void listen(MailboxSettings settings) {
        mailbox = Mailbox.of(
                settings,
                new MailNames(new byte[] {1}),
                from -> Optional.of(new KnownLines.Known("mail", from)),
                InstantSource.fixed(NOW),
                turn);
        mailbox.listen(inbox);
    }

    /** Whose it is, and how often we left it. */
    private static final class OneTurn implements Turn {

        private final AtomicInteger left = new AtomicInteger();
        private volatile boolean ours = true;

        @Override
        public boolean mine() {
            return ours;
        }

        @Override
        public void leave() {
            left.incrementAndGet();
        }
    }

    /** A new one after each that was refused. */
    private static final class GivenTokens implements Tokens {

        private final String first;
        final List<String> refused = new CopyOnWriteArrayList<>();

        GivenTokens(String first) {
            this.first = first;
        }

        @Override
        public String token() {
            return refused.isEmpty() ? first : "token-" + (refused.size() + 1);
        }

        @Override
        public void refused(String token) {
            refused.add(token);
        }
    }
}
