package yardlight.channels.gsm;

import java.time.Instant;
import java.util.Optional;

/**
 * SMS-STATUS-REPORT: what the service centre says of a message that it took from us (3GPP TS 23.040 clause 9.2.2.3).
 *
 * @param reference TP-Message-Reference of that message, as the modem wrote it
 * @param recipient to whom it went, as the centre writes the number
 * @param at when that became so (TP-Discharge-Time); empty where the time makes no sense
 * @param status TP-Status, clause 9.2.3.15, 0 to 255
 */
public record StatusReport(int reference, TpAddress recipient, Optional<Instant> at, int status) {

    private static final int REPORT = 0x02;

    /** Whether the octets, without the address of the service centre, are one. */
    public static boolean is(byte[] octets) {
        return octets.length > 0 && (octets[0] & Deliver.TYPE) == REPORT;
    }

    /** Of octets without the address of the service centre. An {@link IllegalArgumentException} if they cannot be read. */
    public static StatusReport of(byte[] octets) {
        var in = new Octets(octets);
        in.next();
        int reference = in.next();
        TpAddress recipient = TpAddress.read(in);
        Timestamp.read(in);
        Optional<Instant> at = Timestamp.read(in);
        return new StatusReport(reference, recipient, at, in.next());
    }
}
