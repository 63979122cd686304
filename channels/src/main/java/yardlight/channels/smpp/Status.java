package yardlight.channels.smpp;

import static java.util.Map.entry;

import java.time.Duration;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jsmpp.SMPPConstant;
import yardlight.channels.Attempt;

/**
 * What a command_status means for a text. The numbers and their names are those of section 5.1.3, table 5-2; what to do
 * about each is our own reading of them, as the specification does not say.
 *
 * <p>What is about the destination or the text is held against the line. What is about us, our settings or the centre
 * itself is not: the text waits while the owner is told. An unknown number, as providers make up their own (0x400 to 0x4FF),
 * is taken for passing: then it is tried again, and the ladder goes on meanwhile.
 */
final class Status {

    /** Common practice, no source: SMPP has no way to say how long. */
    static final Duration THROTTLED = Duration.ofSeconds(5);
    /** Common practice, no source. */
    static final Duration QUEUE_FULL = Duration.ofSeconds(30);

    private enum Meaning {
        /** The destination, or the text for it, is not taken and never will be. */
        LINE,
        /** Later, perhaps. */
        PASSING,
        /** Between us and the centre, whatever the text. */
        OURS
    }

    private record Known(Meaning meaning, String words) {}

    private static final Map<Integer, Known> KNOWN = Map.ofEntries(
            entry(SMPPConstant.STAT_ESME_RINVMSGLEN, line("invalid message length")),
            entry(SMPPConstant.STAT_ESME_RINVCMDLEN, ours("invalid command length")),
            entry(SMPPConstant.STAT_ESME_RINVCMDID, ours("invalid command id")),
            entry(SMPPConstant.STAT_ESME_RINVBNDSTS, ours("not bound for this")),
            entry(SMPPConstant.STAT_ESME_RALYBND, ours("already bound: another session is open")),
            entry(SMPPConstant.STAT_ESME_RINVPRTFLG, ours("invalid priority flag")),
            entry(SMPPConstant.STAT_ESME_RINVREGDLVFLG, ours("invalid registered delivery flag")),
            entry(SMPPConstant.STAT_ESME_RSYSERR, ours("system error")),
            entry(SMPPConstant.STAT_ESME_RINVSRCADR, ours("invalid source address")),
            entry(SMPPConstant.STAT_ESME_RINVDSTADR, line("invalid destination address")),
            entry(SMPPConstant.STAT_ESME_RBINDFAIL, ours("bind failed")),
            entry(SMPPConstant.STAT_ESME_RINVPASWD, ours("invalid password")),
            entry(SMPPConstant.STAT_ESME_RINVSYSID, ours("invalid system id")),
            entry(SMPPConstant.STAT_ESME_RMSGQFUL, passing("message queue full")),
            entry(SMPPConstant.STAT_ESME_RINVSERTYP, ours("invalid service type")),
            entry(SMPPConstant.STAT_ESME_RINVESMCLASS, ours("invalid esm_class")),
            entry(SMPPConstant.STAT_ESME_RSUBMITFAIL, passing("submit failed")),
            entry(SMPPConstant.STAT_ESME_RINVSRCTON, ours("invalid source type of number")),
            entry(SMPPConstant.STAT_ESME_RINVSRCNPI, ours("invalid source numbering plan")),
            entry(SMPPConstant.STAT_ESME_RINVDSTTON, line("invalid destination type of number")),
            entry(SMPPConstant.STAT_ESME_RINVDSTNPI, line("invalid destination numbering plan")),
            entry(SMPPConstant.STAT_ESME_RINVSYSTYP, ours("invalid system type")),
            entry(SMPPConstant.STAT_ESME_RTHROTTLED, passing("throttled: more than the account may send")),
            entry(SMPPConstant.STAT_ESME_RX_T_APPN, passing("receiver temporary error")),
            entry(SMPPConstant.STAT_ESME_RX_P_APPN, line("receiver permanent error")),
            entry(SMPPConstant.STAT_ESME_RX_R_APPN, line("receiver rejects the message")),
            entry(SMPPConstant.STAT_ESME_RINVTLVSTREAM, ours("error in the optional parameters")),
            entry(SMPPConstant.STAT_ESME_RTLVNOTALLWD, ours("optional parameter not allowed")),
            entry(SMPPConstant.STAT_ESME_RINVTLVLEN, ours("invalid parameter length")),
            entry(SMPPConstant.STAT_ESME_RMISSINGTLV, ours("optional parameter missing")),
            entry(SMPPConstant.STAT_ESME_RINVTLVVAL, ours("invalid optional parameter")),
            entry(SMPPConstant.STAT_ESME_RDELIVERYFAILURE, passing("delivery failure")),
            entry(SMPPConstant.STAT_ESME_RUNKNOWNERR, passing("unknown error")));

    private Status() {}

    static Attempt of(Answer answer) {
        if (answer.status() == SMPPConstant.STAT_ESME_ROK) {
            return accepted(answer);
        }
        String words = answer.words().isBlank() ? words(answer.status()) : named(answer.status(), answer.words());
        return switch (meaning(answer.status())) {
            case LINE -> Attempt.refused(words);
            case PASSING ->
                pause(answer.status())
                        .map(pause -> Attempt.deferred(words, pause))
                        .orElseGet(() -> Attempt.deferred(words));
            case OURS -> Attempt.deferred(words).forEveryMessage();
        };
    }

    /** For a person: {@code 0x00000058 throttled: more than the account may send}. */
    static String words(int status) {
        return named(
                status,
                Optional.ofNullable(KNOWN.get(status)).map(Known::words).orElse("a status of the provider's own"));
    }

    private static Attempt accepted(Answer answer) {
        String words = answer.words().isBlank() ? "taken by the message centre" : answer.words();
        return answer.messageId()
                .map(id -> Attempt.accepted(words + ", as " + id, id))
                .orElseGet(() -> Attempt.accepted(words));
    }

    private static Meaning meaning(int status) {
        return Optional.ofNullable(KNOWN.get(status)).map(Known::meaning).orElse(Meaning.PASSING);
    }

    private static Optional<Duration> pause(int status) {
        return switch (status) {
            case SMPPConstant.STAT_ESME_RTHROTTLED -> Optional.of(THROTTLED);
            case SMPPConstant.STAT_ESME_RMSGQFUL -> Optional.of(QUEUE_FULL);
            default -> Optional.empty();
        };
    }

    private static String named(int status, String words) {
        return String.format(Locale.ROOT, "0x%08X %s", status, words);
    }

    private static Known line(String words) {
        return new Known(Meaning.LINE, words);
    }

    private static Known passing(String words) {
        return new Known(Meaning.PASSING, words);
    }

    private static Known ours(String words) {
        return new Known(Meaning.OURS, words);
    }
}
