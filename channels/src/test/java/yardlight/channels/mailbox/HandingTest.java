package yardlight.channels.mailbox;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.mail.MessagingException;
import java.io.IOException;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.channels.Attempt;
import yardlight.channels.Incoming;
import yardlight.channels.Message;
import yardlight.channels.Receipt;
import yardlight.channels.mail.MailNames;
import yardlight.channels.mail.MailSettings;
import yardlight.channels.mail.MailSettings.Tls;
import yardlight.channels.mail.ScriptedServer;
import yardlight.channels.mail.SmtpChannel;
import yardlight.channels.mailbox.KnownLines.Known;

/** Who is believed, and what is brought of it. The names of our mails are those that they really went out under. */
class HandingTest {

    private static final Instant AT = Instant.parse("2026-11-25T08:21:00Z");
    private static final String ANA = "ana@example.org";
    private static final Map<String, Known> LINES = Map.of(
            ANA,
            new Known("mail", "Ana@example.org"),
            "5755550101@txt.example",
            new Known("sms-mail", "5755550101@txt.example"));

    private final MailNames names = new MailNames(new byte[] {1, 2, 3});
    private final Basket inbox = new Basket();
    private final Handing handing = new Handing(Mailboxes.at(1), names, from -> Optional.ofNullable(LINES.get(from)));

    private boolean hand(String mail) throws MessagingException, IOException {
        return handing.hand(Mails.of(mail), "uid-7-1", AT, inbox);
    }

    @Test
    void one_that_refers_to_a_mail_that_went_to_the_sender_is_proven() throws Exception {
        String sent = sent("mail", "Ana@example.org");

        assertThat(hand(Mails.from(ANA, "In-Reply-To: " + sent + "\n", "OK"))).isTrue();

        assertThat(inbox.texts)
                .containsExactly(new Incoming("mail", "<m1@mail.example>", "Ana@example.org", "OK\r\n", AT, true));
    }

    @Test
    void the_reference_may_stand_among_others_of_a_thread() throws Exception {
        String sent = sent("mail", "Ana@example.org");

        hand(Mails.from(ANA, "References: <other@mail.example>\n " + sent + "\n <third@mail.example>\n", "OK"));

        assertThat(inbox.texts).singleElement().extracting(Incoming::proven).isEqualTo(true);
    }

    @Test
    void one_that_refers_to_nothing_is_brought_unproven() throws Exception {
        hand(Mails.from(ANA, "", "OK 47"));

        assertThat(inbox.texts).singleElement().satisfies(text -> {
            assertThat(text.proven()).isFalse();
            assertThat(text.channel()).isEqualTo("mail");
        });
    }

    @Test
    void a_reference_that_was_made_up_or_that_went_to_somebody_else_proves_nothing() throws Exception {
        String other = new MailNamesOf(new byte[] {9}).sent("mail", ANA);
        hand(Mails.from(ANA, "In-Reply-To: " + other + "\n", "OK"));
        hand(Mails.from(ANA, "In-Reply-To: <callout-7%2E2.m0123456789abcdef@yardlight.example>\n", "OK"));
        hand(Mails.from(ANA, "In-Reply-To: " + sent("mail", "ben@example.org") + "\n", "OK"));

        assertThat(inbox.texts).hasSize(3).noneMatch(Incoming::proven);
    }

    @Test
    void a_text_through_a_carrier_is_answered_by_the_line_s_own_channel() throws Exception {
        hand("From: 5755550101@txt.example\nMessage-ID: <t1@txt.example>\n\nOK 47\n");

        assertThat(inbox.texts).singleElement().satisfies(text -> {
            assertThat(text.channel()).isEqualTo("sms-mail");
            assertThat(text.from()).isEqualTo("5755550101@txt.example");
        });
    }

    @Test
    void our_own_server_s_word_proves_it_and_its_no_keeps_it_out() throws Exception {
        String results = "Authentication-Results: mx.yardlight.example; dmarc=%s header.from=example.org\n";
        assertThat(hand(Mails.from(ANA, results.formatted("pass"), "OK"))).isTrue();
        assertThat(hand(Mails.from(ANA, results.formatted("fail"), "OK"))).isTrue();

        assertThat(inbox.texts).singleElement().extracting(Incoming::proven).isEqualTo(true);
    }

    @Test
    void a_stranger_and_somebody_else_s_server_with_a_known_number_are_left_out() throws Exception {
        assertThat(hand(Mails.from("clerk@feed.example", "", "OK 47"))).isTrue();
        assertThat(hand(Mails.from("5755550101@evil.example", "", "OK 47"))).isTrue();

        assertThat(inbox.offered).isEmpty();
    }

    @Test
    void a_mail_without_a_name_is_known_by_where_it_lies() throws Exception {
        hand("From: " + ANA + "\n\nOK 47\n");

        assertThat(inbox.texts).singleElement().extracting(Incoming::id).isEqualTo("uid-7-1");
    }

    @Test
    void a_report_comes_to_the_channel_that_had_sent_the_mail() throws Exception {
        for (String channel : new String[] {"mail", "sms-mail"}) {
            String sent = sent(channel, ANA);
            assertThat(hand(bounce(sent))).isTrue();

            assertThat(inbox.receipts)
                    .last()
                    .isEqualTo(new Receipt(channel, sent, Receipt.Fate.REFUSED, "failed 5.1.1", AT));
        }
    }

    @Test
    void a_report_of_what_is_none_of_ours_is_left_out() throws Exception {
        assertThat(hand(bounce("<order.47@ranch.example>"))).isTrue();
        assertThat(hand(bounce("<order.47@yardlight.example>"))).isTrue();

        assertThat(inbox.receipts).isEmpty();
    }

    @Test
    void what_the_inbox_does_not_take_stays_with_the_server() throws Exception {
        inbox.taking = text -> false;

        assertThat(hand(Mails.from(ANA, "", "OK 47"))).isFalse();
    }

    private static String bounce(String about) {
        return "From: MAILER-DAEMON@mx.example.org\nContent-Type: multipart/report; report-type=delivery-status;"
                + " boundary=b\n\n--b\n\nNo.\n--b\nContent-Type: message/delivery-status\n\nReporting-MTA: dns; mx.example.org\n\n"
                + "Final-Recipient: rfc822; ana@example.org\nAction: failed\nStatus: 5.1.1\n\n--b\n"
                + "Content-Type: text/rfc822-headers\n\nMessage-ID: " + about + "\n\n--b--\n";
    }

    private String sent(String channel, String address) throws IOException {
        return new MailNamesOf(names).sent(channel, address);
    }

    /** Sends a mail and reads its name off the wire. */
    private record MailNamesOf(MailNames names) {

        MailNamesOf(byte[] key) {
            this(new MailNames(key));
        }

        String sent(String channel, String address) throws IOException {
            try (var server = new ScriptedServer()) {
                var settings = Optional.of(MailSettings.of("localhost", server.port(), Tls.NONE, Mails.OWN));
                try (var out = channel.equals("mail")
                        ? SmtpChannel.mail(settings, Optional.of(names))
                        : SmtpChannel.smsMail(settings, Optional.of(names))) {
                    Attempt attempt = out.send(new Message("callout-7.2", address, "MESA 9", AT));
                    String name = server.mails.get(0).text().replaceAll("(?s).*Message-ID: (<\\S+>).*", "$1");
                    assertThat(attempt.reference()).contains(name);
                    return name;
                }
            }
        }
    }
}
