package yardlight.channels.mail;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MailAddressTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ana@example.org",
                "5755550101@txt.example",
                "a.b+c_d@sub.domain.example",
                "o'neil@example.org",
                "ana@mailhub",
                "a@1.example"
            })
    void passes_when_it_is_one_plain_address(String address) {
        assertThat(MailAddress.complaintAbout(address)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ana",
                "@example.org",
                "ana@",
                "ana@@example.org",
                "ana@ben@example.org",
                ".ana@example.org",
                "ana.@example.org",
                "a..b@example.org",
                "ana@-example.org",
                "ana@example-.org",
                "ana@example..org",
                "ana@example.org.",
                "ana@[127.0.0.1]",
                "\"ana\"@example.org",
                "Ana <ana@example.org>",
                "<ana@example.org>",
                "ana(comment)@example.org",
                "@relay.example:ana@example.org",
                "everyone:ana@example.org;",
                "ana@example.org\n",
                "ana@exa_mple.org"
            })
    void does_not_pass_when_it_could_be_anything_else(String address) {
        assertThat(MailAddress.complaintAbout(address)).isPresent();
    }

    // RFC 5321 4.5.3.1, read: local part 64, path 256 with its angle brackets.
    @Test
    void passes_up_to_the_limits_of_RFC_5321() {
        String domain = "d".repeat(63) + "." + "d".repeat(63) + "." + "d".repeat(60);

        assertThat(MailAddress.complaintAbout("l".repeat(64) + "@" + domain)).isEmpty();
        assertThat(MailAddress.complaintAbout("l".repeat(65) + "@example.org")).isPresent();
        assertThat(MailAddress.complaintAbout("l".repeat(64) + "@" + domain + "d"))
                .isEmpty();
        assertThat(MailAddress.complaintAbout("l".repeat(64) + "@" + domain + "dd"))
                .isPresent();
        assertThat(MailAddress.complaintAbout("l@" + "d".repeat(64) + ".example"))
                .isPresent();
    }
}
