package yardlight.channels.mail;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.Attempt;
import yardlight.channels.Attempt.Outcome;
import yardlight.channels.Health;
import yardlight.channels.Message;
import yardlight.channels.mail.ScriptedServer.After;

/** Against RFC 5321, towards a server on bare sockets. */
class SmtpRepliesAgainstTest {

    private ScriptedServer server;
    private SmtpChannel channel;

    @BeforeEach
    void open() throws IOException {
        server = new ScriptedServer();
        channel = SmtpChannel.smsMail(Optional.of(Settings.plain(server.port())));
    }

    @AfterEach
    void close() throws IOException {
        channel.close();
        server.close();
    }

    private Attempt send() {
        return channel.send(new Message("callout-7.2", "5755550101@txt.example", "MESA 9", Instant.EPOCH));
    }

    // RFC 5321 4.2.1 and 4.2.3, read: 4yz is transient.
    @ParameterizedTest
    @ValueSource(ints = {421, 450, 451, 452, 455, 499})
    void every_4yz_is_tried_again(int code) {
        for (String command : new String[] {"MAIL", "RCPT", "DATA", "."}) {
            server.doesOnce(command, code + " later", After.STAY);

            assertThat(send().outcome()).as(command).isEqualTo(Outcome.DEFERRED);
        }
    }

    // RFC 5321 4.2.1 and 4.2.3, read: 5yz is permanent. 552 at RCPT see below; before RCPT see further below.
    @ParameterizedTest
    @ValueSource(ints = {500, 501, 502, 503, 504, 550, 551, 552, 553, 554, 555, 599})
    void every_5yz_from_RCPT_on_is_final_for_the_line(int code) {
        for (String command : new String[] {"RCPT", "DATA", "."}) {
            server.doesOnce(command, code + " never", After.STAY);

            assertThat(send().outcome()).as(command).isEqualTo(Outcome.REFUSED);
        }
    }

    // RFC 5321 4.2.1, read: unknown codes are judged by the first digit.
    @ParameterizedTest
    @CsvSource({"RCPT, 251", "RCPT, 252", "RCPT, 299", "., 250", "., 251", "., 299"})
    void every_2yz_is_success(String command, int code) {
        server.says(command, code + " fine");

        assertThat(send().outcome()).isEqualTo(Outcome.ACCEPTED);
    }

    // RFC 5321 3.8 and 4.2.3, read: 421 may answer any command, and the server hangs up.
    @ParameterizedTest
    @ValueSource(strings = {"GREETING", "EHLO", "MAIL", "RCPT", "DATA", "."})
    void code_421_is_transient_wherever_it_comes(String command) {
        server.does(command, "421 4.3.2 closing", After.HANG_UP);

        Attempt attempt = send();

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.detail()).contains("421 4.3.2 closing");
    }

    // The same, with the connection torn down so hard that the RSET after it fails.
    @ParameterizedTest
    @CsvSource({"RCPT, 550, REFUSED", "DATA, 554, REFUSED", "., 554, REFUSED", "., 451, DEFERRED", "., 421, DEFERRED"})
    void an_answer_counts_even_if_the_server_is_gone_after_it(String command, int code, Outcome expected) {
        server.does(command, code + " and goodbye", After.RESET);

        Attempt attempt = send();

        assertThat(attempt.outcome()).isEqualTo(expected);
        assertThat(attempt.detail()).isEqualTo(code + " and goodbye");
    }

    // RFC 5321 4.5.3.1.10, read: 552 after RCPT for too many recipients is to be treated as 452.
    @ParameterizedTest
    @CsvSource({
        "RCPT, 552 Too many recipients, DEFERRED",
        "RCPT, 552 5.5.3 limit reached, DEFERRED",
        "RCPT, 552 5.2.2 mailbox full, REFUSED",
        "., 552 5.3.4 message too big, REFUSED",
        "., 552 Too many recipients, REFUSED"
    })
    void code_552_is_transient_only_for_too_many_recipients_at_RCPT(String command, String words, Outcome expected) {
        server.says(command, words);

        assertThat(send().outcome()).isEqualTo(expected);
    }

    // RFC 5321 4.2.1, read: the four lines are one reply with code 250.
    @Test
    void a_reply_of_several_lines_is_one_reply() {
        server.says(
                ".", "250-First line\r\n250-Second line\r\n250-234 Text beginning with numbers\r\n250 The last line");

        Attempt attempt = send();

        assertThat(attempt.outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(attempt.detail())
                .isEqualTo("250 First line Second line 234 Text beginning with numbers The last line");
        assertThat(send().outcome()).as("still in step").isEqualTo(Outcome.ACCEPTED);
        assertThat(server.connections).hasValue(1);
    }

    // RFC 5321 4.2.5, read: until the reply after the text has come the client must not think that it was taken.
    @Test
    void half_of_a_reply_is_no_reply() {
        server.does(".", "250-First line", After.HANG_UP);

        assertThat(send().outcome()).isEqualTo(Outcome.UNKNOWN);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ok", "25", "2x0 fine", "100 hm", "354 more", "999 what"})
    void an_answer_that_means_nothing_leaves_it_open(String nonsense) {
        server.says(".", nonsense);

        assertThat(send().outcome()).isEqualTo(Outcome.UNKNOWN);
    }

    // RFC 5321 3.1, read: 554 as a greeting means that there is no service here. That is not the line's fault.
    @ParameterizedTest
    @CsvSource({
        "GREETING, 554 no service here",
        "EHLO, 550 go away",
        "MAIL, 550 5.7.1 sender not allowed",
        "MAIL, 553 5.1.8 no such sender",
        "MAIL, 530 5.7.0 authentication required",
        "RCPT, 530 5.7.0 authentication required"
    })
    void what_is_refused_to_us_is_not_held_against_the_line(String command, String words) {
        server.says(command, words).says("HELO", words);

        Attempt attempt = send();

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.detail()).contains(words).doesNotStartWith(words);
        assertThat(channel.health().state()).isEqualTo(Health.State.TROUBLED);
    }

    @Test
    void the_owner_is_told_what_is_refused_to_us_until_it_is_over() {
        server.doesOnce("MAIL", "550 5.7.1 sender not allowed", After.STAY);
        send();

        assertThat(channel.health().state()).isEqualTo(Health.State.TROUBLED);
        assertThat(channel.health().sentence()).contains("550 5.7.1 sender not allowed");

        send();

        assertThat(channel.health().state()).isEqualTo(Health.State.READY);
    }

    @ParameterizedTest
    @ValueSource(strings = {"550 5.1.1 nobody here", "450 4.2.0 greylisted, come back"})
    void a_line_that_is_not_taken_is_no_trouble_of_the_channel(String words) {
        server.says("RCPT", words);
        send();

        assertThat(channel.health().state()).isEqualTo(Health.State.READY);
    }

    // RFC 5321 4.1.4, read: a client that has no name gives its address in brackets.
    @Test
    void says_hello_with_an_address() {
        send();

        assertThat(server.commands.get(0)).isEqualTo("EHLO [127.0.0.1]");
    }

    // RFC 5321 3.2, read: a server without extensions is greeted with HELO.
    @Test
    void speaks_to_a_server_that_knows_no_EHLO() {
        server.says("EHLO", "502 what?");

        assertThat(send().outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(server.commands).contains("HELO [127.0.0.1]");
    }
}
