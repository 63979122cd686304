package yardlight.demo.stage;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.ZoneId;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.util.FileSystemUtils;
import yardlight.demo.gateway.FreePort;
import yardlight.demo.gateway.Launch;

/** Where and as whom the gateway of this run lives: its folder, port and secrets, all new for each run. */
final class GatewayHome {

    private static final int SECRET_BYTES = 9;

    private final StageSettings settings;
    private final ZoneId zone;
    private final int port;
    private final Path folder;
    private final String ownerPassword = secret();
    private final String repliesKey = secret();

    GatewayHome(StageSettings settings, ZoneId zone) {
        this.settings = settings;
        this.zone = zone;
        port = FreePort.orAnother(settings.gatewayPort());
        try {
            folder = Files.createTempDirectory("yardlight-demo-");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String secret() {
        byte[] bytes = new byte[SECRET_BYTES];
        new SecureRandom().nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    /** How the gateway is started here, with this carrier. */
    Launch launch(int carrierPort) {
        Path jar = Launch.jar(settings.gatewayJar());
        return new Launch(jar, folder, Launch.QUICK, port, properties(carrierPort));
    }

    private Map<String, String> properties(int carrierPort) {
        Map<String, String> properties = new LinkedHashMap<>();
        properties.put("yardlight.home", folder.toString());
        properties.put("yardlight.owner-password", ownerPassword);
        properties.put("yardlight.public-url", address().toString());
        properties.put("yardlight.replies.key", repliesKey);
        properties.put("yardlight.mail.from", "yardlight@gateway.example");
        properties.put("spring.mail.host", "127.0.0.1");
        properties.put("spring.mail.port", String.valueOf(carrierPort));
        properties.put("yardlight.clock.speed", String.valueOf(settings.speed()));
        properties.put("yardlight.clock.start", settings.clockStart(zone).toString());
        return properties;
    }

    URI address() {
        return URI.create("http://localhost:" + port);
    }

    String ownerPassword() {
        return ownerPassword;
    }

    String repliesKey() {
        return repliesKey;
    }

    void delete() {
        try {
            FileSystemUtils.deleteRecursively(folder);
        } catch (IOException e) {
            System.err.println("left behind: " + folder + " (" + e.getMessage() + ")");
        }
    }
}
