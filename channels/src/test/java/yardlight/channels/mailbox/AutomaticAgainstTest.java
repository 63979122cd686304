package yardlight.channels.mailbox;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** RFC 3834 5, 5.2 and 2 (read): what is not a person's by its header, and what is. */
class AutomaticAgainstTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Auto-Submitted: auto-replied",
                "Auto-Submitted: auto-generated",
                "auto-submitted: Auto-Replied; x=y",
                "Auto-Submitted: (away) auto-replied (until Monday)",
                "Auto-Submitted: auto-notified; owner-email=\"ana@example.org\"",
                "Auto-Submitted: something-new",
                "Auto-Submitted: no\nAuto-Submitted: auto-replied",
                "Return-Path: <>",
                "Return-Path: < >"
            })
    void is_nobody_s_answer(String fields) throws Exception {
        Meaning meaning = Mails.read(Mails.of(Mails.from("ana@example.org", fields + "\n", "OK 47")));

        assertThat(meaning).isInstanceOf(Meaning.Automatic.class);
    }

    // Where RFC 3834's field is missing: common practice, no source.
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Precedence: bulk",
                "Precedence: Junk",
                "Precedence: auto_reply",
                "X-Autoreply: yes",
                "X-Auto-Response-Suppress: All",
                "X-Auto-Response-Suppress: DR, AutoReply",
                "List-Id: <crew.lists.example>",
                "List-Unsubscribe: <mailto:off@lists.example>"
            })
    void is_nobody_s_answer_either(String fields) throws Exception {
        Meaning meaning = Mails.read(Mails.of(Mails.from("ana@example.org", fields + "\n", "OK 47")));

        assertThat(meaning).isInstanceOf(Meaning.Automatic.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "Auto-Submitted: no",
                "Auto-Submitted: NO (by hand)",
                "Return-Path: <ana@example.org>",
                "Precedence: first-class",
                "X-Auto-Response-Suppress: None"
            })
    void may_be_an_answer(String fields) throws Exception {
        String header = fields.isEmpty() ? "" : fields + "\n";

        Meaning meaning = Mails.read(Mails.of(Mails.from("ana@example.org", header, "OK 47")));

        assertThat(meaning).isInstanceOf(Meaning.Answer.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "noreply@txt.example",
                "no-reply@txt.example",
                "do-not-reply@txt.example",
                "yardlight@yardlight.example",
                "Yardlight <YARDLIGHT@yardlight.example>",
                "ana@example.org, ben@example.org",
                "crew: ana@example.org;",
                "",
                "<>"
            })
    void is_nobody_s_answer_by_its_sender(String from) throws Exception {
        Meaning meaning = Mails.read(Mails.of(Mails.from(from, "", "OK 47")));

        assertThat(meaning).isInstanceOf(Meaning.Automatic.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ana@example.org",
                "\"ben@example.org\" <ANA@example.org>",
                "=?UTF-8?Q?ben=40example.org?= <ana@example.org>",
                "ana@example.org (ben@example.org)"
            })
    void is_that_address_s_whatever_its_name_says(String from) throws Exception {
        Meaning meaning = Mails.read(Mails.of(Mails.from(from, "Reply-To: ben@example.org\n", "OK 47")));

        assertThat(((Meaning.Answer) meaning).from()).isEqualTo("ana@example.org");
    }
}
