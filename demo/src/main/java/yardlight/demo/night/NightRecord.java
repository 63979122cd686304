package yardlight.demo.night;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import yardlight.demo.boxes.Flutter;
import yardlight.demo.phone.Text;

/**
 * What was seen of a night.
 *
 * @param texts everything that reached anybody, oldest first
 * @param answers who pressed the button behind which text
 * @param tankAcknowledgedBy whom the gateway names for the tank's alarm
 * @param quietEnds when held texts may go out
 */
record NightRecord(List<Text> texts, List<Answer> answers, Optional<String> tankAcknowledgedBy, Instant quietEnds) {

    /** A button that was pressed and taken. */
    record Answer(Text text, Instant at) {}

    NightRecord {
        texts = List.copyOf(texts);
        answers = List.copyOf(answers);
    }

    /** The texts that call somebody for something, in whatever letter case. */
    List<Text> about(String words) {
        return texts.stream()
                .filter(text -> text.calls() && text.callsFor(words))
                .toList();
    }

    /** The texts that say in these words what became of something, alone or after what they call for. */
    List<Text> news(String of, String words) {
        return texts.stream()
                .filter(text -> text.mentions(of) && text.mentions(words) && !(text.calls() && text.callsFor(of)))
                .toList();
    }

    /** The night in one line. */
    String summary() {
        return texts.size() + " texts: " + about(NightVerdict.TANK).size() + " about the tank, acknowledged by "
                + tankAcknowledgedBy.orElse("nobody") + "; "
                + about(NightVerdict.FLOAT).size() + " for "
                + Flutter.CHANGES + " changes of the chattering switch; "
                + about(NightVerdict.SILENT).size() + " about the silent box; "
                + about(NightVerdict.BATTERY).size() + " about the low battery, held until quiet hours ended.";
    }
}
