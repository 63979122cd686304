package yardlight.gateway.answer;

import java.util.List;
import yardlight.escalation.setup.Language;

/** What whoever writes about a turn is answered, for each language in which texts are to be read. */
interface SwapSentences {

    static SwapSentences in(Language language) {
        return switch (language) {
            case EN -> new EnglishSwaps();
            case ES -> new SpanishSwaps();
        };
    }

    /** A day was not said, or none that is known. */
    String whichDay();

    /** @param until by when the others can answer */
    String asked(List<String> names, String span, String until, int code);

    String askedAlready(List<String> names, int code);

    String took(String from, String span);

    /** @param others whether others are asked still */
    String declined(String from, boolean others);

    String takenBack(String span);

    /** They said yes and no more, and there is one question that they can mean. */
    String withNumber(int code);
}
