package yardlight.escalation.wording;

import java.util.Optional;

/**
 * The last words of a text: how to answer it.
 *
 * @param code what to send back, always said
 * @param link the other way, with the word before it; said when there is room
 */
record Ending(String code, String link) {

    static Ending of(Answering answering, Phrases phrases) {
        String code = answering.code().map(phrases::reply).orElseGet(phrases::replyAll);
        Optional<String> link = answering.link().filter(Ending::address);
        return new Ending(
                ". " + Transliteration.gsm(code),
                link.map(address -> " " + phrases.or() + " " + address).orElse(""));
    }

    /** An address is sent letter by letter or not at all: a changed one would lead nowhere. */
    private static boolean address(String link) {
        return !link.isEmpty()
                && link.chars().allMatch(sign -> sign > ' ' && sign < 0x7F && Gsm7.encodable(sign) && sign != '|');
    }
}
