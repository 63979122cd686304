package yardlight.channels.mailbox;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.mail.MessagingException;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Authentication-Results: RFC 8601 2.2 and the examples of its appendix B (read (2nd)), and what must not be believed. */
class ResultsAgainstTest {

    private static Results of(String... values) throws MessagingException {
        var fields = new Fields(name -> name.equals("Authentication-Results") ? values : null);
        return Results.of(fields, Optional.of("mx.ranch.example"), "ana@mail.example.org");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "mx.ranch.example; dmarc=pass header.from=mail.example.org",
                "mx.ranch.example 1; dkim=pass (good signature) header.d=example.org header.s=one",
                "MX.Ranch.Example; spf=pass smtp.mailfrom=ana@mail.example.org",
                "mx.ranch.example; spf=fail smtp.mailfrom=list.example;\r\n dkim=pass reason=\"a; b\" header.d=mail.example.org",
                "mx.ranch.example; dmarc / 1 = pass header.from = mail.example.org"
            })
    void makes_a_sender_genuine(String value) throws MessagingException {
        assertThat(of(value)).isEqualTo(Results.GENUINE);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "mx.ranch.example; none",
                // Appendix B.3: another domain than that of the sender.
                "mx.ranch.example; spf=pass smtp.mailfrom=example.net",
                // Appendix B.4: who logged in at some server.
                "mx.ranch.example; auth=pass (cram-md5) smtp.auth=sender@example.net; spf=pass smtp.mailfrom=example.net",
                "mx.ranch.example; dkim=pass header.d=notexample.org",
                "mx.ranch.example; dkim=pass header.d=org.example",
                "mx.ranch.example; dkim=neutral header.d=example.org",
                "mx.other.example; dmarc=pass header.from=mail.example.org",
                "mx.other.example mx.ranch.example; dmarc=pass header.from=mail.example.org",
                "mx.other.example (mx.ranch.example); dmarc=pass header.from=mail.example.org",
                "mx.ranch.example; spf=none smtp.mailfrom=\"a;dmarc=pass header.from=mail.example.org\"@evil.example",
                "mx.ranch.example; spf=none (of a; dmarc=pass header.from=mail.example.org)",
                "mx.ranch.example; spf=none (of a); dmarc=pass header.from=mail.example.org (@evil.example",
                "mx.ranch.example; spf=none smtp.mailfrom=\"a; dmarc=pass header.from=mail.example.org",
                "mx.ranch.example; spf=pass smtp.mailfrom=example.org.evil.example",
                "mx.ranch.example; x-spf=pass smtp.mailfrom=mail.example.org",
                ""
            })
    void decides_nothing(String value) throws MessagingException {
        assertThat(of(value)).isEqualTo(Results.UNKNOWN);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "mx.ranch.example; dmarc=fail header.from=mail.example.org",
                "mx.ranch.example; spf=pass smtp.mailfrom=mail.example.org; dmarc=fail (p=none) header.from=mail.example.org"
            })
    void makes_a_sender_forged(String value) throws MessagingException {
        assertThat(of(value)).isEqualTo(Results.FORGED);
        assertThat(of("mx.ranch.example; dkim=pass header.d=example.org", value))
                .isEqualTo(Results.FORGED);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "mx.ranch.example; dmarc=pass header.from=mail.example.org",
                "; dmarc=pass header.from=mail.example.org"
            })
    void says_nothing_where_no_server_is_believed(String value) throws MessagingException {
        var fields = new Fields(name -> new String[] {value});

        assertThat(Results.of(fields, Optional.empty(), "ana@mail.example.org")).isEqualTo(Results.UNKNOWN);
    }
}
