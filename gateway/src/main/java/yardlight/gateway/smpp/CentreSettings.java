package yardlight.gateway.smpp;

import java.time.Duration;
import java.util.Optional;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import yardlight.channels.smpp.SmppSettings;
import yardlight.channels.smpp.SmppSettings.Login;
import yardlight.channels.smpp.SmppSettings.Timeouts;

/**
 * The message centre, as its provider describes the account. Its text form keeps the password back.
 *
 * @param host none, and the channel is not set up
 * @param port 2775, or 3550 with TLS, unless given
 * @param systemId the account's name; needed
 * @param from the number, short code or name that texts come from; none, and the centre puts in the account's own
 * @param tls must be switched off in so many words: the password goes over the wire first of all
 * @param window texts under way to the centre at once
 * @param responseTimeout for each answer of the centre
 * @param enquireLink after how long without a word the centre is asked whether it is there
 */
@ConfigurationProperties("yardlight.smpp")
record CentreSettings(
        Optional<String> host,
        Optional<Integer> port,
        Optional<String> systemId,
        Optional<String> password,
        @DefaultValue("") String systemType,
        Optional<String> from,
        @DefaultValue("true") boolean tls,
        @DefaultValue("10") int window,
        @DefaultValue("10s") Duration responseTimeout,
        @DefaultValue("30s") Duration enquireLink) {

    private static final int PORT = 2775;
    private static final int TLS_PORT = 3550;

    /** Empty unless both the host and the account are named. */
    Optional<SmppSettings> settings() {
        return given(host).flatMap(server -> given(systemId).map(account -> settings(server, account)));
    }

    boolean isHalf() {
        return given(host).isPresent() != given(systemId).isPresent();
    }

    private SmppSettings settings(String server, String account) {
        return new SmppSettings(
                server,
                port.orElse(tls ? TLS_PORT : PORT),
                tls,
                new Login(account, password.orElse(""), systemType),
                given(from),
                window,
                new Timeouts(Timeouts.USUAL.connect(), responseTimeout, Timeouts.USUAL.whole(), enquireLink));
    }

    private static Optional<String> given(Optional<String> text) {
        return text.filter(words -> !words.isBlank());
    }

    @Override
    public String toString() {
        return "CentreSettings[" + host.orElse("none") + "]";
    }
}
