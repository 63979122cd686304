package yardlight.channels.smpp;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.Optional;
import org.jsmpp.PDUStringException;
import org.jsmpp.SMPPConstant;
import org.jsmpp.bean.OptionalParameter;
import org.jsmpp.util.DefaultComposer;
import yardlight.channels.Message;
import yardlight.channels.gsm.Segment;
import yardlight.escalation.wording.Segments.Alphabet;

/**
 * One submit_sm (section 4.4.1): a text, or one part of it.
 *
 * <p>All that SMPP has to tell the same text sent again is made of the message's id: user_message_reference (5.3.2.17) has 16
 * bits, the reference of a text in several parts has 8. So the centre can tell it by sender, destination, reference and
 * text together; phones leave out a part that they have. No centre is obliged to look. replace_if_present_flag (5.2.18)
 * looks like the same thing and is not: it would replace another text to the same person.
 *
 * @param reference for user_message_reference, 0 to 65535
 * @param last whether no part comes after it
 */
record Submission(SmppAddress from, SmppAddress to, int reference, Segment segment, boolean last) {

    /** What is longer is cut: common practice, no source, is to take at most ten. */
    static final int MOST_PARTS = 10;

    private static final DefaultComposer COMPOSER = new DefaultComposer();

    /** All parts of a message in order. Its address must have been checked. */
    static List<Submission> of(Message message, Optional<String> sender) {
        SmppAddress from = sender.map(SmppAddress::from).orElseGet(SmppAddress::unknown);
        SmppAddress to = SmppAddress.to(message.address());
        byte[] digest = digest(message.id());
        int reference = (digest[0] & 0xFF) << 8 | digest[1] & 0xFF;
        List<Segment> segments = Segment.of(Segment.clean(message.text()), digest[2] & 0xFF, MOST_PARTS);
        Segment end = segments.get(segments.size() - 1);
        return segments.stream()
                .map(segment -> new Submission(from, to, reference, segment, segment == end))
                .toList();
    }

    /** The whole unit of data. An {@link IllegalStateException} if it cannot be written, which our checks rule out. */
    byte[] unit(int sequence) {
        try {
            return COMPOSER.submitSm(
                    sequence,
                    "",
                    from.ton(),
                    from.npi(),
                    from.digits(),
                    to.ton(),
                    to.npi(),
                    to.digits(),
                    esmClass(),
                    (byte) 0,
                    (byte) 0,
                    null,
                    null,
                    registeredDelivery(),
                    (byte) 0,
                    dataCoding(),
                    (byte) 0,
                    segment.octets(),
                    new OptionalParameter.User_message_reference((short) reference));
        } catch (PDUStringException e) {
            throw new IllegalStateException("a text must fit into a submit_sm", e);
        }
    }

    /** Section 5.2.12: the centre's own mode, and whether the text begins with a header. */
    private byte esmClass() {
        return segment.concatenation().isPresent() ? SMPPConstant.ESMCLS_UDHI_INDICATOR_SET : 0;
    }

    /** Section 5.2.17: the last part's receipt stands for the whole; of the others we hear only when they fail. */
    private byte registeredDelivery() {
        return last ? SMPPConstant.REGDEL_SMSC_SUCCESS_FAILURE_REQUESTED : SMPPConstant.REGDEL_SMSC_FAILURE_REQUESTED;
    }

    /** Section 5.2.19: 0 is the centre's default alphabet, which for SMS is that of 3GPP TS 23.038. */
    private byte dataCoding() {
        return segment.alphabet() == Alphabet.GSM7 ? SMPPConstant.DC_DEFAULT : SMPPConstant.DC_UCS2;
    }

    private static byte[] digest(String id) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(id.getBytes(StandardCharsets.US_ASCII));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("this Java has no SHA-256", e);
        }
    }
}
