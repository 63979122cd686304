package yardlight.channels.mailbox;

import java.util.List;
import java.util.Optional;
import yardlight.channels.Receipt;

/** What a mail is, before anybody asks whether to believe it. */
sealed interface Meaning {

    /**
     * A person wrote, by all that can be seen.
     *
     * @param from the one address of its From, in small letters; anybody can write one there
     * @param messageId as the mail has it, if it has one
     * @param references the Message-IDs that it refers to
     * @param text without what could not be read, and not longer than an answer can be
     */
    record Answer(String from, Optional<String> messageId, List<String> references, String text) implements Meaning {

        public Answer {
            references = List.copyOf(references);
        }
    }

    /**
     * A mail server says what became of a mail.
     *
     * @param about the Message-ID of ours that it names; empty when it names none of ours
     * @param words in the server's own words
     */
    record Report(Receipt.Fate fate, Optional<String> about, String words) implements Meaning {}

    /** A machine's, or nothing that could be answered: it changes nothing and is not answered. */
    record Automatic(String why) implements Meaning {}
}
