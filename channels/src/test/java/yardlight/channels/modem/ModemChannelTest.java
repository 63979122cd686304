package yardlight.channels.modem;

import java.io.IOException;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import yardlight.channels.Attempt;
import yardlight.channels.Channel;
import yardlight.channels.ChannelContract;
import yardlight.channels.modem.Pdus.Submitted;
import yardlight.channels.modem.StandInModem.Does;

/** The contract of all channels, kept towards a modem at the other end of a pseudo-terminal, through jSerialComm. */
class ModemChannelTest extends ChannelContract {

    private StandInModem modem;
    private Channel channel;

    @BeforeEach
    void open() throws IOException {
        modem = new StandInModem();
        channel = ModemChannel.of(Optional.of(Modems.at(modem.port())), InstantSource.fixed(AT));
    }

    @AfterEach
    void close() throws IOException {
        if (modem != null) {
            channel.close();
            modem.close();
        }
    }

    @Override
    protected Channel channel() {
        return channel;
    }

    @Override
    protected Channel notConfigured() {
        return ModemChannel.of(Optional.empty(), InstantSource.fixed(AT));
    }

    /** Numbers by 3GPP TS 24.011: 1 is an unassigned number, 27 a destination out of service. */
    @Override
    protected void outsideSays(Attempt.Outcome outcome, String words) {
        modem.words = words;
        modem.text = outcome == Attempt.Outcome.UNKNOWN ? Does.VANISH : Does.ANSWER;
        modem.refusal = switch (outcome) {
            case ACCEPTED, UNKNOWN -> "";
            case REFUSED -> "+CMS ERROR: 1";
            case DEFERRED -> "+CMS ERROR: 27";
        };
    }

    @Override
    protected void outsideCuts() {
        modem.announced = Does.VANISH;
    }

    @Override
    protected void outsideIsAway() {
        modem.registration = 2;
    }

    @Override
    protected String address() {
        return "+15755550101";
    }

    /** Parts of one text are put together as a phone does it; all that tells it from others is its identity. */
    @Override
    protected List<Arrival> arrivals() {
        List<Arrival> whole = new ArrayList<>();
        StringBuilder begun = new StringBuilder();
        for (Submitted part : modem.taken) {
            begun.append(part.text());
            if (part.isLast()) {
                String identity = part.reference() + "/" + begun;
                whole.add(new Arrival(identity, part.address(), begun.toString()));
                begun.setLength(0);
            }
        }
        return whole;
    }
}
