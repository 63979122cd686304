package yardlight.channels.modem;

import static java.util.Map.entry;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardlight.channels.Attempt;

/**
 * What an error means for a text. The numbers and their names are those of TS 27.005 clause 3.2.5, which takes 0 to 127 from
 * 3GPP TS 24.011 annex E-2 and 128 to 255 from TS 23.040 clause 9.2.3.22, and of TS 27.007 clause 9.2; what to do about each
 * is our own reading of them.
 *
 * <p>What is about the destination or the text is held against the line. What is about the modem, its card, our contract or
 * the network is not: the text waits while the owner is told. An unknown number, as makers have their own from 512 on, is
 * taken for passing: then it is tried again, and the ladder goes on meanwhile.
 */
final class Trouble {

    static final String OF_TEXTS = "+CMS ERROR:";
    static final String OF_THE_MODEM = "+CME ERROR:";

    private static final Pattern NUMBER = Pattern.compile("\\+CM[SE] ERROR: *([0-9]{1,5})\\b.*", Pattern.DOTALL);

    private static final int SIM_BUSY = 14;
    private static final int SIM_BUSY_FOR_TEXTS = 314;

    private enum Meaning {
        /** The destination, or the text for it, is not taken and never will be. */
        LINE,
        /** Later, perhaps. */
        PASSING,
        /** Between us and the network, whatever the text. */
        OURS,
        /** Nobody knows whether the network has it. */
        DOUBTFUL,
        /** The network has it already. */
        THERE
    }

    private record Known(Meaning meaning, String words) {}

    private static final Map<Integer, Known> NETWORK = Map.ofEntries(
            entry(1, line("unassigned number")),
            entry(8, ours("operator determined barring")),
            entry(10, line("call barred")),
            entry(17, ours("network failure")),
            entry(21, passing("short message transfer rejected")),
            entry(22, ours("congestion")),
            entry(27, passing("destination out of service")),
            entry(28, ours("unidentified subscriber")),
            entry(29, ours("facility rejected")),
            entry(30, line("unknown subscriber")),
            entry(38, ours("network out of order")),
            entry(41, ours("temporary failure")),
            entry(42, ours("congestion")),
            entry(47, ours("resources unavailable")),
            entry(50, ours("requested facility not subscribed")),
            entry(69, ours("requested facility not implemented")),
            entry(81, passing("invalid short message transfer reference value")),
            entry(95, passing("invalid message")),
            entry(96, passing("invalid mandatory information")),
            entry(97, passing("message type non-existent or not implemented")),
            entry(98, passing("message not compatible with short message protocol state")),
            entry(99, passing("information element non-existent or not implemented")),
            entry(111, passing("protocol error")),
            entry(127, passing("interworking")));

    private static final Map<Integer, Known> CENTRE = Map.ofEntries(
            entry(128, ours("telematic interworking not supported")),
            entry(129, ours("short message type 0 not supported")),
            entry(130, ours("cannot replace short message")),
            entry(143, ours("unspecified TP-PID error")),
            entry(144, line("data coding scheme not supported")),
            entry(145, line("message class not supported")),
            entry(159, line("unspecified TP-DCS error")),
            entry(160, ours("command cannot be actioned")),
            entry(161, ours("command unsupported")),
            entry(175, ours("unspecified TP-Command error")),
            entry(176, ours("TPDU not supported")),
            entry(192, ours("service centre busy")),
            entry(193, ours("no service centre subscription")),
            entry(194, ours("service centre system failure")),
            entry(195, line("invalid address")),
            entry(196, line("destination barred")),
            entry(197, new Known(Meaning.THERE, "rejected as a duplicate, so it is there")),
            entry(198, ours("TP-VPF not supported")),
            entry(199, ours("TP-VP not supported")),
            entry(208, passing("SIM storage full")),
            entry(209, passing("no storage capability in SIM")),
            entry(210, passing("error in the phone")),
            entry(211, passing("memory capacity exceeded")),
            entry(212, passing("SIM application toolkit busy")),
            entry(213, passing("SIM data download error")),
            entry(255, passing("unspecified error cause")));

    private static final Map<Integer, Known> EQUIPMENT = Map.ofEntries(
            entry(300, ours("failure of the modem")),
            entry(301, ours("the modem's text service is reserved")),
            entry(302, ours("operation not allowed")),
            entry(303, ours("operation not supported")),
            entry(304, passing("invalid PDU mode parameter")),
            entry(305, ours("invalid text mode parameter")),
            entry(310, ours("SIM card not inserted")),
            entry(311, ours("SIM PIN required")),
            entry(312, ours("phone-to-SIM PIN required")),
            entry(313, ours("SIM failure")),
            entry(314, ours("SIM busy")),
            entry(315, ours("SIM wrong")),
            entry(316, ours("SIM PUK required")),
            entry(317, ours("SIM PIN2 required")),
            entry(318, ours("SIM PUK2 required")),
            entry(320, ours("memory failure")),
            entry(321, ours("invalid memory index")),
            entry(322, ours("memory full")),
            entry(330, ours("service centre address unknown")),
            entry(331, ours("no network service")),
            entry(332, new Known(Meaning.DOUBTFUL, "network timeout")),
            entry(340, ours("no acknowledgement expected")),
            entry(500, passing("unknown error")));

    private static final Map<Integer, String> MODEM = Map.ofEntries(
            entry(3, "operation not allowed"),
            entry(4, "operation not supported"),
            entry(10, "SIM card not inserted"),
            entry(11, "SIM PIN required"),
            entry(12, "SIM PUK required"),
            entry(13, "SIM failure"),
            entry(SIM_BUSY, "SIM busy"),
            entry(15, "SIM wrong"),
            entry(16, "incorrect password"),
            entry(17, "SIM PIN2 required"),
            entry(18, "SIM PUK2 required"),
            entry(30, "no network service"),
            entry(31, "network timeout"),
            entry(32, "network not allowed: emergency calls only"),
            entry(100, "unknown error"));

    private Trouble() {}

    /** Of an answer to a text that is not OK. */
    static Attempt of(Answer answer) {
        String words = words(answer);
        return switch (known(answer).meaning()) {
            case LINE -> Attempt.refused(words);
            case PASSING -> Attempt.deferred(words);
            case OURS -> Attempt.deferred(words).forEveryMessage();
            case DOUBTFUL -> Attempt.unknown(words).forEveryMessage();
            case THERE -> Attempt.accepted(words);
        };
    }

    /** For a person: {@code network out of order (+CMS ERROR: 38)}. */
    static String words(Answer answer) {
        return known(answer).words() + " (" + answer.result() + ")";
    }

    /** Whether it only means that the card has not been read yet. */
    static boolean isBusy(Answer answer) {
        int number = number(answer).orElse(-1);
        return answer.result().startsWith(OF_THE_MODEM) ? number == SIM_BUSY : number == SIM_BUSY_FOR_TEXTS;
    }

    private static Known known(Answer answer) {
        Optional<Integer> number = number(answer);
        if (answer.result().startsWith(OF_THE_MODEM)) {
            return ours(number.map(MODEM::get).orElse("an error of the modem's own"));
        }
        return number.map(Trouble::ofTexts).orElseGet(() -> passing("the modem does not say why"));
    }

    private static Known ofTexts(int number) {
        Known own = passing("an error of the maker's own");
        return NETWORK.getOrDefault(number, CENTRE.getOrDefault(number, EQUIPMENT.getOrDefault(number, own)));
    }

    private static Optional<Integer> number(Answer answer) {
        Matcher number = NUMBER.matcher(answer.result());
        return number.matches() ? Optional.of(Integer.valueOf(number.group(1))) : Optional.empty();
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
