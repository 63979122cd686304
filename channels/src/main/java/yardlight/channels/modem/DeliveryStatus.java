package yardlight.channels.modem;

import static java.util.Map.entry;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import yardlight.channels.Receipt.Fate;

/** What TP-Status means: 3GPP TS 23.040 clause 9.2.3.15. */
final class DeliveryStatus {

    private static final int RECEIVED = 0x00;
    private static final int LAST_WITHOUT_WORD = 0x1F;
    private static final int LAST_TRYING = 0x3F;

    private static final Map<Integer, String> WORDS = Map.ofEntries(
            entry(RECEIVED, "received by the phone"),
            entry(0x01, "forwarded, and nobody can say whether it was received"),
            entry(0x02, "replaced by the service centre"),
            entry(0x20, "congestion, the service centre goes on trying"),
            entry(0x21, "the phone is busy, the service centre goes on trying"),
            entry(0x22, "no response from the phone, the service centre goes on trying"),
            entry(0x23, "service rejected, the service centre goes on trying"),
            entry(0x24, "quality of service not available, the service centre goes on trying"),
            entry(0x25, "error in the phone, the service centre goes on trying"),
            entry(0x40, "remote procedure error"),
            entry(0x41, "incompatible destination"),
            entry(0x42, "connection rejected by the phone"),
            entry(0x43, "not obtainable"),
            entry(0x44, "quality of service not available"),
            entry(0x45, "no interworking available"),
            entry(0x46, "validity period expired"),
            entry(0x47, "deleted by its sender"),
            entry(0x48, "deleted by the service centre"),
            entry(0x49, "message does not exist"),
            entry(0x60, "congestion, given up"),
            entry(0x61, "the phone is busy, given up"),
            entry(0x62, "no response from the phone, given up"),
            entry(0x63, "service rejected, given up"),
            entry(0x64, "quality of service not available, given up"),
            entry(0x65, "error in the phone, given up"));

    private DeliveryStatus() {}

    /**
     * Empty for what says neither: forwarded to where nobody can tell, replaced, or a word of the operator's own. What is
     * reserved counts as rejected, as the clause wants.
     */
    static Optional<Fate> fate(int status) {
        if (status == RECEIVED) {
            return Optional.of(Fate.DELIVERED);
        }
        if (status <= LAST_WITHOUT_WORD) {
            return Optional.empty();
        }
        return Optional.of(status <= LAST_TRYING ? Fate.DELAYED : Fate.REFUSED);
    }

    /** For a person: {@code 0x46 validity period expired}. */
    static String words(int status) {
        return String.format(Locale.ROOT, "0x%02X %s", status, WORDS.getOrDefault(status, "a status of its own"));
    }
}
