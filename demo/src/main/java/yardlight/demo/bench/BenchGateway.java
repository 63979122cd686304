package yardlight.demo.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import yardlight.demo.carrier.Carrier;
import yardlight.demo.carrier.Letter;
import yardlight.demo.gateway.FreePort;
import yardlight.demo.gateway.GatewayProcess;
import yardlight.demo.gateway.Launch;
import yardlight.demo.gateway.OwnerDoor;

/** A gateway with a home and a carrier of its own, and with keys for all boxes of its setup. It can be stopped and go on. */
final class BenchGateway implements AutoCloseable {

    static final Duration READY_WITHIN = Duration.ofMinutes(5);
    private static final String PASSWORD = "only-for-the-bench";

    /** A box that posts a thousand times a second would be told to slow down; in most measurements that is the point. */
    private static final String ALLOWANCE = "yardlight.allowance.burst";

    private final BenchHome home = BenchHome.make();
    private final Kind kind;
    private final Carrier carrier;
    private final int port = FreePort.any();
    private GatewayProcess process;

    private BenchGateway(Kind kind, Consumer<Letter> letters) throws IOException {
        this.kind = kind;
        carrier = Carrier.open(0, address -> true, letters);
    }

    /**
     * How it is run.
     *
     * @param jvm options of the virtual machine
     * @param lifted whether boxes may post as much as they like
     */
    record Kind(Path jar, List<String> jvm, boolean lifted) {}

    static BenchGateway open(Kind kind, BenchSetup setup, Consumer<Letter> letters)
            throws IOException, InterruptedException, SQLException {
        BenchGateway gateway = prepare(kind, setup, letters);
        try {
            gateway.start();
            return gateway;
        } catch (IllegalStateException e) {
            gateway.close();
            throw e;
        }
    }

    /**
     * Makes one that is ready to be started: it ran on an empty home, was given the setup, stopped and given keys.
     *
     * @param letters gets what the carrier takes
     */
    static BenchGateway prepare(Kind kind, BenchSetup setup, Consumer<Letter> letters)
            throws IOException, InterruptedException, SQLException {
        BenchGateway gateway = new BenchGateway(kind, letters);
        try {
            gateway.start();
            gateway.owner().putSetupAsJson(setup.document());
            gateway.stop();
            gateway.home.addKeys(setup.boxes());
            return gateway;
        } catch (IllegalStateException | SQLException e) {
            gateway.close();
            throw e;
        }
    }

    /** Comes back when it is ready, with the seconds that took. */
    double start() throws InterruptedException {
        Map<String, String> properties = properties(home.folder(), carrier.port());
        if (kind.lifted()) {
            properties.put(ALLOWANCE, "1000000000");
        }
        long begin = System.nanoTime();
        process = GatewayProcess.start(new Launch(kind.jar(), home.folder(), kind.jvm(), port, properties));
        process.awaitReady(READY_WITHIN);
        return (System.nanoTime() - begin) / 1e9;
    }

    void stop() {
        process.close();
    }

    /** What every gateway of the bench gets. */
    static Map<String, String> properties(Path home, int carrierPort) {
        Map<String, String> properties = new LinkedHashMap<>();
        properties.put("yardlight.home", home.toString());
        properties.put("yardlight.owner-password", PASSWORD);
        properties.put("yardlight.mail.from", "yardlight@gateway.example");
        properties.put("spring.mail.host", "127.0.0.1");
        properties.put("spring.mail.port", String.valueOf(carrierPort));
        return properties;
    }

    private OwnerDoor owner() {
        return new OwnerDoor(process.address(), PASSWORD);
    }

    /** What the owner shows at the door. */
    static String login() {
        byte[] pair = (OwnerDoor.LOGIN + ":" + PASSWORD).getBytes(StandardCharsets.UTF_8);
        return "Basic " + Base64.getEncoder().encodeToString(pair);
    }

    BenchHome home() {
        return home;
    }

    int port() {
        return port;
    }

    long pid() {
        return process.pid();
    }

    int carrierPort() {
        return carrier.port();
    }

    @Override
    public void close() throws IOException {
        process.close();
        carrier.close();
        home.delete();
    }
}
