package yardlight.channels.smpp;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import org.jsmpp.InvalidResponseException;
import org.jsmpp.PDUException;
import org.jsmpp.SMPPConstant;
import org.jsmpp.bean.ESMClass;
import org.jsmpp.bean.NumberingPlanIndicator;
import org.jsmpp.bean.OptionalParameter;
import org.jsmpp.bean.RawDataCoding;
import org.jsmpp.bean.RegisteredDelivery;
import org.jsmpp.bean.TypeOfNumber;
import org.jsmpp.extra.NegativeResponseException;
import org.jsmpp.extra.ResponseTimeoutException;

/** Brings texts and receipts over the session that was opened last, and returns the command_status of the answer. */
public record Bringing(StandInCentre centre) {

    public int text(String from, String text) {
        return bring(from, 0, 0, text.getBytes(StandardCharsets.US_ASCII));
    }

    /** With a header of 3GPP TS 23.040. */
    int part(String header, String text) {
        String characters = HexFormat.of().formatHex(text.getBytes(StandardCharsets.US_ASCII));
        return bring("15755550101", 0x40, 0, HexFormat.of().parseHex(header + characters));
    }

    int receipt(String text, OptionalParameter... parameters) {
        return bring("15755550101", 0x04, 0, text.getBytes(StandardCharsets.US_ASCII), parameters);
    }

    int data(int esmClass, String text) {
        var payload = new OptionalParameter.Message_payload(text.getBytes(StandardCharsets.US_ASCII));
        return status(() -> centre.session()
                .dataShortMessage(
                        "",
                        TypeOfNumber.INTERNATIONAL,
                        NumberingPlanIndicator.ISDN,
                        "15755550101",
                        TypeOfNumber.INTERNATIONAL,
                        NumberingPlanIndicator.ISDN,
                        "15755550100",
                        new ESMClass(esmClass),
                        new RegisteredDelivery(0),
                        new RawDataCoding((byte) 0),
                        payload));
    }

    int bring(String from, int esmClass, int coding, byte[] octets, OptionalParameter... parameters) {
        return status(() -> centre.session()
                .deliverShortMessage(
                        "",
                        TypeOfNumber.INTERNATIONAL,
                        NumberingPlanIndicator.ISDN,
                        from,
                        TypeOfNumber.INTERNATIONAL,
                        NumberingPlanIndicator.ISDN,
                        "15755550100",
                        new ESMClass(esmClass),
                        (byte) 0,
                        (byte) 0,
                        new RegisteredDelivery(0),
                        new RawDataCoding((byte) coding),
                        octets,
                        parameters));
    }

    private interface Asking {
        void ask()
                throws PDUException, ResponseTimeoutException, InvalidResponseException, NegativeResponseException,
                        IOException;
    }

    private static int status(Asking asking) {
        try {
            asking.ask();
            return SMPPConstant.STAT_ESME_ROK;
        } catch (NegativeResponseException e) {
            return e.getCommandStatus();
        } catch (PDUException | ResponseTimeoutException | InvalidResponseException | IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
