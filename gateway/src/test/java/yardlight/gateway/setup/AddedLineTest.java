package yardlight.gateway.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AddedLineTest {

    private static final String LINE = "{\"channel\": \"push\", \"address\": \"https://push.example/p|K|A\"}";

    private static Optional<String> added(String text) {
        return AddedLine.in(text, "ana", "push", "https://push.example/p|K|A");
    }

    @Test
    void goes_into_the_brackets_and_leaves_comments_and_everybody_else_alone() {
        assertThat(added("""
                # ours
                contacts:
                  - {id: ben, lines: [{channel: mail, address: ben@mesa.example}]}
                  - id: ana   # the owner
                    lines: [{channel: mail, address: ana@mesa.example} ] # first the mail
                    language: es
                """)).contains("""
                # ours
                contacts:
                  - {id: ben, lines: [{channel: mail, address: ben@mesa.example}]}
                  - id: ana   # the owner
                    lines: [{channel: mail, address: ana@mesa.example}, %s ] # first the mail
                    language: es
                """.formatted(LINE));
    }

    @Test
    void goes_below_the_dashes() {
        assertThat(added("""
                contacts:
                  - id: ana
                    lines:
                      - {channel: sms-mail, address: 5755550101@txt.example}
                      - channel: mail
                        address: ana@mesa.example   # at home

                    # from Mexico
                    language: es
                ladders: []
                """)).contains("""
                contacts:
                  - id: ana
                    lines:
                      - {channel: sms-mail, address: 5755550101@txt.example}
                      - channel: mail
                        address: ana@mesa.example   # at home
                      - %s

                    # from Mexico
                    language: es
                ladders: []
                """.formatted(LINE));
    }

    @Test
    void goes_below_dashes_that_are_not_indented_and_at_the_end_of_a_text_without_an_end_of_line() {
        assertThat(added("contacts:\n- id: ana\n  lines:\n  - {channel: mail, address: a@mesa.example}"))
                .contains("contacts:\n- id: ana\n  lines:\n  - {channel: mail, address: a@mesa.example}\n  - " + LINE);
    }

    @Test
    void keeps_the_ends_of_lines_as_they_are() {
        assertThat(
                        added(
                                "contacts:\r\n- id: ana\r\n  lines:\r\n  - {channel: mail, address: a@mesa.example}\r\n  language: es\r\n"))
                .contains("contacts:\r\n- id: ana\r\n  lines:\r\n  - {channel: mail, address: a@mesa.example}\r\n  - "
                        + LINE + "\r\n  language: es\r\n");
    }

    @Test
    void goes_into_json_that_stays_json() {
        assertThat(added("""
                {"contacts": [
                  {"id": "ana", "name": "Ana \\u00d1 \uD83D\uDE00", "lines": [
                    {"channel": "mail", "address": "ana@mesa.example"}
                  ]}
                ]}
                """)).contains("""
                {"contacts": [
                  {"id": "ana", "name": "Ana \\u00d1 \uD83D\uDE00", "lines": [
                    {"channel": "mail", "address": "ana@mesa.example"}, %s
                  ]}
                ]}
                """.formatted(LINE));
    }

    @Test
    void what_could_end_the_text_is_escaped() {
        String text = "contacts: [{id: ana, lines: [{channel: mail, address: a@mesa.example}]}]\n";

        assertThat(AddedLine.in(text, "ana", "push", "a\"}, {b\\\n\u00e1"))
                .hasValueSatisfying(
                        edited -> assertThat(SetupText.document(edited).root().toString())
                                .contains("address=Text[value=a\"}, {b\\\n\u00e1]"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "contacts: [{id: ben, lines: [{channel: mail, address: ben@mesa.example}]}]",
                "contacts: [{id: ana, lines: []}]",
                "contacts: [{id: ana}]",
                "contacts: &all [{id: ana, lines: &lines [{channel: mail, address: a@mesa.example}]}, {id: ana, lines: *lines}]",
                "contacts: [{id: ana, lines: [{channel: mail, address: a@mesa.example}]}, {id: ana, lines: [{channel: mail, address: b@mesa.example}]}]",
                "sites: []",
                "[]",
                "{"
            })
    void is_left_to_the_owner_where_that_is_not_sure_to_be_right(String text) {
        assertThat(added(text)).isEmpty();
    }

    @Test
    void is_left_to_the_owner_in_a_document_that_is_too_long_to_be_looked_through() {
        assertThat(added("#".repeat(200_001)
                        + "\ncontacts: [{id: ana, lines: [{channel: mail, address: a@b.example}]}]"))
                .isEmpty();
    }
}
