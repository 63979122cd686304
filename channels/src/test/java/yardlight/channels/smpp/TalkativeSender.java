package yardlight.channels.smpp;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.util.function.Supplier;
import org.jsmpp.DefaultPDUSender;
import org.jsmpp.PDUStringException;
import org.jsmpp.SMPPConstant;
import org.jsmpp.bean.OptionalParameter;
import org.jsmpp.util.DefaultComposer;

/** Also says in words why a text was not taken, which jSMPP leaves out and many centres do not. */
final class TalkativeSender extends DefaultPDUSender {

    private final Supplier<String> words;

    TalkativeSender(Supplier<String> words) {
        this.words = words;
    }

    @Override
    public byte[] sendHeader(OutputStream out, int command, int status, int sequence) throws IOException {
        if (command != SMPPConstant.CID_SUBMIT_SM_RESP || words.get().isEmpty()) {
            return super.sendHeader(out, command, status, sequence);
        }
        try {
            byte[] unit = new DefaultComposer()
                    .submitSmResp(
                            sequence, "", new OptionalParameter.Additional_status_info_text(fitting(words.get())));
            ByteBuffer.wrap(unit).putInt(8, status);
            out.write(unit);
            out.flush();
            return unit;
        } catch (PDUStringException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Section 5.3.2.11 has room for 255 and a NUL. */
    static String fitting(String words) {
        return words.substring(0, Math.min(words.length(), 255));
    }
}
