package yardlight.channels.mail;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardlight.channels.Message;

class AutoSubmittedAgainstTest {

    // RFC 3834 5, 5.1 and 5.2, read: at most one field; "auto-generated" for what no person wrote and no mail caused.
    @ParameterizedTest
    @EnumSource(Form.class)
    void every_mail_says_once_that_a_machine_made_it(Form form) throws Exception {
        Message message =
                new Message("callout-7.2", "ana@example.org", "one\r\nAuto-Submitted: no\r\n\r\ntwo", Instant.EPOCH);

        String wire = Posted.by(form, message);

        assertThat(Wire.of(wire).named("Auto-Submitted")).containsExactly("auto-generated");
        assertThat(Parsed.of(wire).named("Auto-Submitted")).containsExactly("auto-generated");
    }

    // RFC 3834 5.1, read: auto-generated must not be used for an answer to a mail, so ours refer to none.
    @ParameterizedTest
    @EnumSource(Form.class)
    void no_mail_pretends_to_be_an_answer(Form form) throws Exception {
        Wire wire = Wire.of(Posted.by(form, new Message("callout-7.2", "ana@example.org", "one", Instant.EPOCH)));

        assertThat(wire.named("In-Reply-To")).isEmpty();
        assertThat(wire.named("References")).isEmpty();
    }
}
