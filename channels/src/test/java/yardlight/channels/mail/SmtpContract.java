package yardlight.channels.mail;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import yardlight.channels.Attempt;
import yardlight.channels.Channel;
import yardlight.channels.ChannelContract;
import yardlight.channels.mail.ScriptedServer.After;

/** The contract of all channels, kept towards a server on bare sockets. */
abstract class SmtpContract extends ChannelContract {

    private ScriptedServer server;
    private Channel channel;

    abstract SmtpChannel channel(Optional<MailSettings> settings);

    @BeforeEach
    void open() throws IOException {
        server = new ScriptedServer();
        channel = channel(Optional.of(Settings.plain(server.port())));
    }

    @AfterEach
    void close() throws IOException {
        channel.close();
        server.close();
    }

    @Override
    protected Channel channel() {
        return channel;
    }

    @Override
    protected Channel notConfigured() {
        return channel(Optional.empty());
    }

    @Override
    protected void outsideSays(Attempt.Outcome outcome, String words) {
        switch (outcome) {
            case ACCEPTED -> server.says(".", "250 " + words);
            case REFUSED -> server.says("RCPT", "550 5.1.1 " + words);
            case DEFERRED -> server.says("RCPT", "450 4.2.0 " + words);
            case UNKNOWN -> server.does(".", "", After.HANG_UP);
        }
    }

    @Override
    protected void outsideCuts() {
        server.does("RCPT", "", After.HANG_UP);
    }

    @Override
    protected void outsideIsAway() {
        server.does("GREETING", "421 4.3.2 too busy", After.HANG_UP);
    }

    @Override
    protected List<Arrival> arrivals() {
        return server.mails.stream().map(SmtpContract::arrival).toList();
    }

    @Override
    protected String address() {
        return "5755550101@txt.example";
    }

    private static Arrival arrival(ScriptedServer.Mail mail) {
        Wire wire = Wire.of(mail.text());
        return new Arrival(wire.only("Message-ID"), mail.to().replaceAll("[<>]", ""), wire.body());
    }
}
