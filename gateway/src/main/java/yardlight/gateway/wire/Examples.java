package yardlight.gateway.wire;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import yardlight.escalation.shutin.Terms;

/**
 * What a box may say, ready to paste.
 *
 * @param what {@code heartbeat}, {@code readings} or {@code requests}
 * @param shell with curl
 * @param microPython for a board that is in its network already
 * @param arduino for an ESP32, and but for requests an ESP8266
 */
public record Examples(String what, String shell, String microPython, String arduino) {

    private static final String HEARTBEAT = "heartbeat";

    /**
     * Who posts, and where to.
     *
     * @param address without a slash at its end
     * @param key or what says where there is one
     */
    public record Wired(String address, String box, String key) {}

    /** The first thing that a box says, and an event that calls nobody. */
    public static List<Examples> first(Wired wired) {
        return List.of(of(HEARTBEAT, wired, Optional.empty()));
    }

    /**
     * All that a box says and is asked.
     *
     * @param terms how its site is asked to shut in
     */
    public static List<Examples> all(Wired wired, Optional<Terms> terms) {
        return List.of(of(HEARTBEAT, wired, terms), of("readings", wired, terms), of("requests", wired, terms));
    }

    private static Examples of(String what, Wired wired, Optional<Terms> terms) {
        return new Examples(
                what,
                filled(what + ".sh", wired, terms),
                filled(what + ".py", wired, terms),
                filled(what + ".ino", wired, terms));
    }

    private static String filled(String file, Wired wired, Optional<Terms> terms) {
        boolean secure = wired.address().startsWith("https:");
        return read(file)
                .replace("@secure@\n", secure ? "#include <WiFiClientSecure.h>\n\n" : "\n")
                .replaceAll(
                        "( *)@client@",
                        secure ? "$1WiFiClientSecure client;\n$1client.setInsecure();" : "$1WiFiClient client;")
                .replace("@point@", terms.map(Terms::point).orElse(Terms.POINT))
                .replace("@done@", terms.map(Terms::done).orElse(Terms.DONE))
                .replace("@refused@", terms.map(Terms::refused).orElse(Terms.REFUSED))
                .replace("@address@", wired.address())
                .replace("@box@", wired.box())
                .replace("@key@", wired.key());
    }

    private static String read(String file) {
        try (InputStream stored = Examples.class.getResourceAsStream("/examples/" + file)) {
            return new String(Objects.requireNonNull(stored, file).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
