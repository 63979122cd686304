package yardlight.escalation.setup;

import yardlight.escalation.sentence.Sentence;

/**
 * Something that is wrong in a setup document.
 *
 * @param pointer where, as a JSON pointer in the form of a URI fragment (RFC 6901 section 6), such as
 *     {@code #/ladders/0/rungs/1/call/0}
 * @param rule what must be and what is instead, such as {@code ladder must exist: nite}
 */
public record Mistake(String pointer, Sentence rule) {

    /** The rule in English. */
    public String detail() {
        return rule.english();
    }
}
