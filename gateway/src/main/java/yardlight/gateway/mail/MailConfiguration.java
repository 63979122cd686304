package yardlight.gateway.mail;

import java.security.SecureRandom;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import yardlight.channels.Channel;
import yardlight.channels.Receiver;
import yardlight.channels.mail.MailNames;
import yardlight.channels.mail.MailSettings;
import yardlight.channels.mail.SmtpChannel;
import yardlight.channels.mailbox.Mailbox;
import yardlight.channels.mailbox.MailboxSettings;
import yardlight.channels.mailbox.Turn;
import yardlight.channels.oauth.Tokens;
import yardlight.db.secret.Secrets;
import yardlight.db.turn.Turns;
import yardlight.gateway.settings.SettingsTrouble;
import yardlight.gateway.setup.SetupInForce;

/** The two channels that go by SMTP, and the mailbox that answers to them come into. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties({ServerSettings.class, SenderSettings.class, BoxSettings.class, TokenSettings.class})
class MailConfiguration {

    private static final String MAILBOX = "the mailbox";

    private static final Logger LOG = LoggerFactory.getLogger(MailConfiguration.class);

    private final Optional<MailSettings> out;
    private final Optional<MailboxSettings> in;

    MailConfiguration(ServerSettings server, SenderSettings sender, BoxSettings box, TokenSettings token) {
        Optional<Tokens> tokens = read("yardlight.mail.oauth.", token::tokens);
        Optional<String> from = sender.from().filter(address -> !address.isBlank());
        boolean host = server.host().filter(name -> !name.isBlank()).isPresent();
        this.out = host ? from.map(address -> server.with(address, sender, tokens)) : Optional.empty();
        this.in = box.areThere()
                ? from.map(own -> read("yardlight.mailbox.", () -> box.with(own, tokens)))
                : Optional.empty();
        if (host != from.isPresent()) {
            LOG.warn("mail is not set up: it needs both spring.mail.host and yardlight.mail.from");
        }
        if (box.areThere() && from.isEmpty()) {
            LOG.warn("the mailbox is not set up: it needs both yardlight.mailbox.host and yardlight.mail.from");
        }
    }

    /** Something to read that may be wrong. */
    private interface Reading<T> {
        T read();
    }

    private static <T> T read(String prefix, Reading<T> reading) {
        try {
            return reading.read();
        } catch (IllegalArgumentException e) {
            throw new SettingsTrouble(prefix, e);
        }
    }

    /** Empty as long as nobody hears what refers to them. */
    record Names(Optional<MailNames> made) {}

    /** Shared by all gateways of one database, so that each knows what another has sent. */
    @Bean
    Names mailNames(Secrets secrets, InstantSource clock) {
        return new Names(
                in.map(heard -> new MailNames(secrets.get("mail-names", MailConfiguration::fresh, clock.instant()))));
    }

    private static byte[] fresh() {
        var secret = new byte[32];
        new SecureRandom().nextBytes(secret);
        return secret;
    }

    @Bean
    Channel mailChannel(Names mailNames) {
        return SmtpChannel.mail(out, mailNames.made());
    }

    @Bean
    Channel smsMailChannel(Names mailNames) {
        return SmtpChannel.smsMail(out, mailNames.made());
    }

    @Bean
    Receiver mailbox(Names mailNames, SetupInForce inForce, InstantSource clock, Turns turns) {
        var lines = new LinesInForce(inForce, List.of(SmtpChannel.MAIL, SmtpChannel.SMS_MAIL));
        return in.map(box -> Mailbox.of(box, mailNames.made().orElseThrow(), lines, clock, turn(turns)))
                .orElseGet(Mailbox::notSetUp);
    }

    private static Turn turn(Turns turns) {
        return new Turn() {
            @Override
            public boolean mine() {
                return turns.mine(MAILBOX);
            }

            @Override
            public void leave() {
                turns.leave(MAILBOX);
            }
        };
    }
}
