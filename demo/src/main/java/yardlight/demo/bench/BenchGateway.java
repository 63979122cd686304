package yardlight.demo.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.springframework.util.FileSystemUtils;
import yardlight.demo.carrier.Carrier;
import yardlight.demo.carrier.Letter;
import yardlight.demo.gateway.FreePort;
import yardlight.demo.gateway.GatewayProcess;
import yardlight.demo.gateway.Launch;
import yardlight.demo.gateway.OwnerDoor;

/** A gateway with an empty home, a carrier of its own and as many boxes as a measurement needs. */
final class BenchGateway implements AutoCloseable {

    static final Duration READY_WITHIN = Duration.ofSeconds(120);
    private static final String PASSWORD = "only-for-the-bench";

    private final Path home;
    private final Carrier carrier;
    private final GatewayProcess process;
    private final int port;
    private List<String> keys = List.of();

    private BenchGateway(Path jar, Consumer<Letter> letters) throws IOException {
        home = Files.createTempDirectory("yardlight-bench-");
        carrier = Carrier.open(0, address -> true, letters);
        port = FreePort.any();
        process = GatewayProcess.start(new Launch(jar, home, Launch.SMALL, port, properties(home, carrier.port())));
    }

    /**
     * Opens one with this many sites, each with a box.
     *
     * @param letters gets what the carrier takes
     */
    static BenchGateway open(Path jar, int sites, Consumer<Letter> letters) throws IOException, InterruptedException {
        BenchGateway gateway = new BenchGateway(jar, letters);
        try {
            gateway.process.awaitReady(READY_WITHIN);
            OwnerDoor owner = new OwnerDoor(gateway.process.address(), PASSWORD);
            owner.putSetup(new BenchSetup(sites).document());
            gateway.keys = IntStream.range(0, sites)
                    .mapToObj(BenchSetup::box)
                    .map(owner::newKey)
                    .toList();
            return gateway;
        } catch (IllegalStateException e) {
            gateway.close();
            throw e;
        }
    }

    /** What every gateway of the bench gets. */
    static Map<String, String> properties(Path home, int carrierPort) {
        Map<String, String> properties = new LinkedHashMap<>();
        properties.put("yardlight.home", home.toString());
        properties.put("yardlight.owner-password", PASSWORD);
        // A box that posts a thousand times a second would be told to slow down; here that is the point.
        properties.put("yardlight.allowance.burst", "1000000000");
        properties.put("yardlight.mail.from", "yardlight@gateway.example");
        properties.put("spring.mail.host", "127.0.0.1");
        properties.put("spring.mail.port", String.valueOf(carrierPort));
        return properties;
    }

    int port() {
        return port;
    }

    int carrierPort() {
        return carrier.port();
    }

    /** The key of the box of a site. */
    String key(int site) {
        return keys.get(site % keys.size());
    }

    @Override
    public void close() throws IOException {
        process.close();
        carrier.close();
        FileSystemUtils.deleteRecursively(home);
    }
}
