package yardlight.gateway.transport;

import java.net.InetAddress;
import org.apache.catalina.connector.Connector;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.tomcat.CompressionConnectorCustomizer;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.Ssl;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.core.Ordered;
import org.springframework.stereotype.Component;

/**
 * Without TLS keys, passwords and links can be read on the way. So a gateway that is not told otherwise is then heard on
 * this machine only, under both of its addresses, because what calls itself {@code localhost} may try either; and it says so.
 */
@Component
final class PlainHttp implements WebServerFactoryCustomizer<TomcatServletWebServerFactory>, Ordered {

    private static final Logger LOG = LoggerFactory.getLogger(PlainHttp.class);
    private static final String ADVICE = "; docs/operating.md says how to set TLS up";

    @Override
    public void customize(TomcatServletWebServerFactory server) {
        if (Ssl.isEnabled(server.getSsl())) {
            return;
        }
        InetAddress told = server.getAddress();
        if (told == null) {
            stayHere(server);
        } else if (told.isLoopbackAddress()) {
            LOG.warn("plain HTTP, heard on this machine only, at {}{}", told.getHostAddress(), ADVICE);
        } else {
            LOG.warn(
                    "plain HTTP, heard at {}: keys, passwords and links can be read on the way{}",
                    told.isAnyLocalAddress() ? "every address of this machine" : told.getHostAddress(),
                    ADVICE);
        }
    }

    private static void stayHere(TomcatServletWebServerFactory server) {
        server.setAddress(Loopback.OLD);
        // A port that is chosen by the system is not known before the first address is bound.
        boolean both = server.getPort() > 0 && Loopback.hasNew();
        if (both) {
            server.addAdditionalConnectors(second(server));
        }
        LOG.warn(
                "plain HTTP, heard on this machine only, at {}; server.address=0.0.0.0 opens it to others,"
                        + " unencrypted{}",
                both ? "127.0.0.1 and ::1" : "127.0.0.1",
                ADVICE);
    }

    /** Like the first one in everything but its address. */
    private static Connector second(TomcatServletWebServerFactory server) {
        var second = new Connector(server.getProtocol());
        server.getConnectorCustomizers().forEach(customizer -> customizer.customize(second));
        // The first one gets this when the server is made, and this one would not.
        new CompressionConnectorCustomizer(server.getCompression()).customize(second);
        second.setPort(server.getPort());
        second.setURIEncoding(server.getUriEncoding().name());
        second.setProperty("address", Loopback.NEW);
        second.setProperty("minSpareThreads", "1");
        return second;
    }

    /** After the properties were heeded. */
    @Override
    public int getOrder() {
        return Ordered.LOWEST_PRECEDENCE;
    }
}
