package yardlight.channels.smpp;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsmpp.bean.OptionalParameter;
import yardlight.channels.Receipt.Fate;

/**
 * What a receipt says: the text of appendix B, which is only an example there and is written in many ways, and the optional
 * parameters that say the same (sections 5.3.2.12 and 5.3.2.35), which go before it.
 *
 * @param id of the text that it is about, empty if it does not say
 * @param state as the centre writes it, such as {@code UNDELIV}, or the number of message_state; empty if it does not say
 * @param error in the provider's own numbers; empty if it does not say
 * @param done when, by the centre's clock; appendix B has no zone, and it need not be UTC
 */
record ReceiptText(String id, String state, String error, Optional<LocalDateTime> done) {

    private static final Pattern ID = field("id");
    private static final Pattern STATE = field("stat");
    private static final Pattern ERROR = field("err");
    private static final Pattern DONE = field("done date");

    /** {@code YYMMDDhhmm}, with seconds in some places. */
    private static final DateTimeFormatter DATE =
            new DateTimeFormatterBuilder().appendPattern("uuMMddHHmm[ss]").toFormatter(Locale.ROOT);

    static ReceiptText of(String text, OptionalParameter[] parameters) {
        String id = Tlv.RECEIPTED_MESSAGE_ID.textIn(parameters).strip();
        return new ReceiptText(
                id.isEmpty() ? in(text, ID) : id,
                Tlv.MESSAGE_STATE.numberIn(parameters).map(String::valueOf).orElseGet(() -> in(text, STATE)),
                in(text, ERROR),
                date(in(text, DONE)));
    }

    /**
     * Section 5.2.28 and appendix B. A text that the centre has accepted, or is on its way, or of which it knows nothing,
     * may get there yet: who waits for it then waits no longer than for any other.
     */
    Fate fate() {
        return switch (state.toUpperCase(Locale.ROOT)) {
            case "2", "DELIVRD", "DELIVERED" -> Fate.DELIVERED;
            case "3", "EXPIRED", "4", "DELETED", "5", "UNDELIV", "UNDELIVERABLE", "8", "REJECTD", "REJECTED" ->
                Fate.REFUSED;
            default -> Fate.DELAYED;
        };
    }

    /** For the record: {@code UNDELIV, error 075, done 2012-01-12T15:51 by the centre's clock}. */
    String words() {
        String words = state.isEmpty() ? "no state" : state;
        if (!error.isEmpty() && !error.matches("0+")) {
            words += ", error " + error;
        }
        return done.map(time -> ", done " + time + " by the centre's clock")
                .map(words::concat)
                .orElse(words);
    }

    private static Pattern field(String name) {
        return Pattern.compile("(?:^|\\s)" + name.replace(" ", "\\s") + ":\\s*(\\S+)", Pattern.CASE_INSENSITIVE);
    }

    private static String in(String text, Pattern field) {
        Matcher found = field.matcher(text);
        return found.find() ? found.group(1) : "";
    }

    private static Optional<LocalDateTime> date(String digits) {
        try {
            return Optional.of(LocalDateTime.parse(digits, DATE));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
