package yardlight.channels.gsm;

import java.io.ByteArrayOutputStream;
import java.time.Duration;
import yardlight.escalation.wording.Segments.Alphabet;

/**
 * SMS-SUBMIT: a short message on its way from us to the service centre (3GPP TS 23.040 clause 9.2.2.2).
 *
 * @param reference TP-Message-Reference, 0 to 255. Many modems write their own over it
 * @param report whether the centre is asked to say later what became of it (TP-Status-Report-Request)
 * @param validity TP-Validity-Period in its relative form, 0 to 255: see {@link #validity(Duration)}
 */
public record Submit(int reference, TpAddress to, boolean report, int validity, Segment segment) {

    private static final int SUBMIT = 0x01;
    private static final int RELATIVE_VALIDITY = 0x10;
    private static final int REPORT = 0x20;
    private static final int HEADER = 0x40;

    /** TP-Data-Coding-Scheme: 3GPP TS 23.038 clause 4, no class. */
    private static final int GSM7 = 0x00;

    private static final int UCS2 = 0x08;

    private static final long DAY = 24 * 60;
    private static final long WEEK = 7 * DAY;

    public Submit {
        if (reference < 0 || reference > 0xFF || validity < 0 || validity > 0xFF) {
            throw new IllegalArgumentException(
                    "reference and validity must be 0 to 255: " + reference + ", " + validity);
        }
    }

    /**
     * Clause 9.2.3.12.1: the shortest period that is at least as long; the longest there is, 63 weeks, for what is longer.
     *
     * @param length positive
     */
    public static int validity(Duration length) {
        long minutes = Math.max(length.plusSeconds(59).toMinutes(), 1);
        if (minutes <= DAY / 2) {
            return (int) up(minutes, 5) - 1;
        }
        if (minutes <= DAY) {
            return (int) (143 + up(minutes - DAY / 2, 30));
        }
        if (minutes <= 30 * DAY) {
            return (int) (166 + up(minutes, DAY));
        }
        return (int) Math.min(192 + up(minutes, WEEK), 0xFF);
    }

    private static long up(long amount, long step) {
        return (amount + step - 1) / step;
    }

    /** Without the address of the service centre. */
    public byte[] octets() {
        var octets = new ByteArrayOutputStream();
        boolean header = segment.concatenation().isPresent();
        octets.write(SUBMIT | RELATIVE_VALIDITY | (report ? REPORT : 0) | (header ? HEADER : 0));
        octets.write(reference);
        octets.writeBytes(to.octets());
        octets.write(0);
        octets.write(segment.alphabet() == Alphabet.GSM7 ? GSM7 : UCS2);
        octets.write(validity);
        octets.write(segment.userDataLength());
        octets.writeBytes(segment.userData());
        return octets.toByteArray();
    }
}
