package yardlight.gateway;

import com.icegreen.greenmail.store.FolderException;
import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.springframework.test.context.DynamicPropertyRegistry;

/** What a whole gateway needs around it: a home of its own and a mail server, which is not written here (GreenMail). */
public final class WholeGateway {

    public static final GreenMail CARRIER = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));

    static {
        CARRIER.start();
    }

    private WholeGateway() {}

    public static void settings(DynamicPropertyRegistry registry) {
        // What the gateways of other tests sent is nothing that this one's people were told.
        purge();
        Path home = home();
        registry.add("yardlight.home", home::toString);
        // The application puts its file into its home before it sees what a test registers.
        registry.add("spring.datasource.url", () -> "jdbc:h2:file:" + home + "/yardlight;WRITE_DELAY=0");
        // Quartz finds a database by the name of a scheduler, in the whole process: each of these has its own.
        registry.add(
                "spring.quartz.properties.org.quartz.scheduler.instanceName",
                () -> home.getFileName().toString());
        registry.add("yardlight.owner-password", () -> GatewayTest.PASSWORD);
        registry.add("yardlight.public-url", () -> "https://yl.example");
        registry.add("yardlight.replies.key", () -> GatewayTest.REPLIES_KEY);
        registry.add("yardlight.mail.from", () -> "yardlight@ranch.example");
        registry.add("spring.mail.host", () -> "127.0.0.1");
        registry.add("spring.mail.port", () -> CARRIER.getSmtp().getPort());
    }

    private static void purge() {
        try {
            CARRIER.purgeEmailFromAllMailboxes();
        } catch (FolderException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Path home() {
        try {
            return Files.createTempDirectory(Path.of("target"), "home").toAbsolutePath();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
