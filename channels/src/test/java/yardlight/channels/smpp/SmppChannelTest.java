package yardlight.channels.smpp;

import com.cloudhopper.commons.charset.CharsetUtil;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jsmpp.SMPPConstant;
import org.jsmpp.bean.OptionalParameter.User_message_reference;
import org.jsmpp.bean.SubmitSm;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import yardlight.channels.Attempt;
import yardlight.channels.Channel;
import yardlight.channels.ChannelContract;
import yardlight.channels.smpp.StandInCentre.Does;

/** The contract of all channels, kept towards the server side of jSMPP. */
class SmppChannelTest extends ChannelContract {

    private static final int HEADER = 6;

    private StandInCentre centre;
    private Channel channel;

    @BeforeEach
    void open() throws IOException {
        centre = new StandInCentre();
        channel = SmppChannel.of(Optional.of(Centres.at(centre.port())), InstantSource.fixed(AT));
    }

    @AfterEach
    void close() throws IOException {
        channel.close();
        centre.close();
    }

    @Override
    protected Channel channel() {
        return channel;
    }

    @Override
    protected Channel notConfigured() {
        return SmppChannel.of(Optional.empty(), InstantSource.fixed(AT));
    }

    @Override
    protected void outsideSays(Attempt.Outcome outcome, String words) {
        centre.words = words;
        centre.text = outcome == Attempt.Outcome.UNKNOWN ? Does.HANG_UP : Does.ANSWER;
        centre.status = switch (outcome) {
            case ACCEPTED, UNKNOWN -> SMPPConstant.STAT_ESME_ROK;
            case REFUSED -> SMPPConstant.STAT_ESME_RINVDSTADR;
            case DEFERRED -> SMPPConstant.STAT_ESME_RX_T_APPN;
        };
    }

    @Override
    protected void outsideCuts() {
        centre.bind = Does.HANG_UP;
        centre.leave();
    }

    @Override
    protected void outsideIsAway() {
        centre.bindStatus = SMPPConstant.STAT_ESME_RSYSERR;
        centre.leave();
    }

    @Override
    protected String address() {
        return "+15755550101";
    }

    /** Parts of one text are put together as a phone does it; all that tells it from others is its identity. */
    @Override
    protected List<Arrival> arrivals() {
        var whole = new ArrayList<Arrival>();
        var begun = new HashMap<String, String>();
        for (SubmitSm unit : centre.taken) {
            String key = unit.getOptionalParameter(User_message_reference.class).getValue() + "/" + reference(unit);
            String text = begun.merge(key, text(unit), String::concat);
            if (isLast(unit)) {
                begun.remove(key);
                whole.add(new Arrival(key + "/" + text, "+" + unit.getDestAddress(), text));
            }
        }
        return Map.copyOf(begun).isEmpty() ? whole : List.of();
    }

    private static boolean isLast(SubmitSm unit) {
        byte[] octets = unit.getShortMessage();
        return !unit.isUdhi() || octets[4] == octets[5];
    }

    private static String reference(SubmitSm unit) {
        return unit.isUdhi() ? String.valueOf(unit.getShortMessage()[3]) : "alone";
    }

    private static String text(SubmitSm unit) {
        byte[] octets = unit.getShortMessage();
        byte[] characters = unit.isUdhi() ? Arrays.copyOfRange(octets, HEADER, octets.length) : octets;
        return unit.getDataCoding() == SMPPConstant.DC_UCS2
                ? new String(characters, StandardCharsets.UTF_16BE)
                : CharsetUtil.decode(characters, CharsetUtil.CHARSET_GSM);
    }
}
