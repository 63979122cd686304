package yardlight.channels.smpp;

import java.util.Optional;
import org.jsmpp.PDUStringException;
import org.jsmpp.SMPPConstant;
import org.jsmpp.bean.SubmitSmResp;
import org.jsmpp.util.DefaultDecomposer;

/**
 * What the centre answers to a text: submit_sm_resp (section 4.4.2), or generic_nack (4.3.1).
 *
 * @param status command_status, section 5.1.3
 * @param messageId what it calls the text, if it took it and calls it anything
 * @param words additional_status_info_text (5.3.2.11), where a centre gives it; else empty
 */
record Answer(int status, Optional<String> messageId, String words) {

    private static final DefaultDecomposer READER = new DefaultDecomposer();

    /** Of a whole unit of data. What cannot be read of its body is taken for missing: the status alone decides. */
    static Answer in(byte[] unit) {
        int status = Units.status(unit);
        if (Units.command(unit) != SMPPConstant.CID_SUBMIT_SM_RESP) {
            return new Answer(status, Optional.empty(), "");
        }
        try {
            SubmitSmResp body = READER.submitSmResp(unit);
            Optional<String> id = Optional.ofNullable(body.getMessageId()).filter(given -> !given.isBlank());
            return new Answer(status, id, Tlv.ADDITIONAL_STATUS_INFO_TEXT.textIn(body.getOptionalParameters()));
        } catch (PDUStringException | RuntimeException e) {
            return new Answer(status, Optional.empty(), "");
        }
    }
}
