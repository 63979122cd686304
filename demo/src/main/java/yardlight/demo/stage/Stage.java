package yardlight.demo.stage;

import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import yardlight.demo.boxes.Heartbeats;
import yardlight.demo.boxes.Place;
import yardlight.demo.boxes.SimulatedBox;
import yardlight.demo.carrier.Carrier;
import yardlight.demo.gateway.BoxDoor;
import yardlight.demo.gateway.GatewayProcess;
import yardlight.demo.gateway.OwnerDoor;
import yardlight.demo.gateway.ReplyDoor;
import yardlight.demo.phone.Browser;

/** The carrier, the gateway and the boxes: opened in this order, closed in the other. */
public final class Stage implements AutoCloseable {

    private static final Duration READY_WITHIN = Duration.ofSeconds(120);
    private static final Duration BETWEEN_LOOKS = Duration.ofMillis(500);

    private final World world;
    private final GatewayHome home;
    private final StageSettings settings;
    private Carrier carrier;
    private Heartbeats heartbeats;
    private volatile GatewayProcess gateway;
    private volatile boolean ready;
    private volatile boolean closing;

    public Stage(StageSettings settings, World world) {
        this.settings = settings;
        this.world = world;
        home = new GatewayHome(settings, world.cast().zone());
    }

    /**
     * Sets everything up; comes back when the boxes beat.
     *
     * @throws IllegalStateException if the gateway does not do as it should; the message says what it said
     */
    public void open() throws InterruptedException {
        carrier = Carrier.open(0, world.phones()::know, world.phones()::take);
        gateway = GatewayProcess.start(home.launch(carrier.port()));
        gateway.awaitReady(READY_WITHIN);
        owner().putSetup(world.cast().document());
        world.places().all().forEach(this::connect);
        // In fast time a page that is opened for the first time costs minutes: a link that leads nowhere takes that
        // cost.
        Browser.answer(gateway.address().resolve("/a/nowhere"));
        setClock();
        heartbeats = Heartbeats.start(world.places(), world.clock());
        gateway.onEnd(this::ended);
        ready = true;
    }

    private void ended(List<String> lastLines) {
        if (!closing) {
            System.out.println("The gateway has ended. Its last lines:");
            lastLines.forEach(System.out::println);
        }
    }

    private void connect(Place place) {
        SimulatedBox box = place.box();
        box.connect(new BoxDoor(gateway.address(), owner().newKey(box.id())));
    }

    private void setClock() throws InterruptedException {
        SimulatedBox box = world.places().all().get(0).box();
        BoxDoor.Beat warm = box.heartbeat().orElseThrow();
        BoxDoor.Beat earlier = box.heartbeat().orElse(warm);
        Thread.sleep(BETWEEN_LOOKS.toMillis());
        world.clock().set(earlier, box.heartbeat().orElseThrow(), settings.speed());
    }

    /** Whether the night can begin. */
    public boolean ready() {
        return ready;
    }

    /** What the gateway said last if it has died by itself; empty while it lives. */
    public Optional<List<String>> lastWords() {
        GatewayProcess process = gateway;
        return process == null || closing || process.alive() ? Optional.empty() : Optional.of(process.lastLines());
    }

    public URI gatewayAddress() {
        return home.address();
    }

    public String ownerPassword() {
        return home.ownerPassword();
    }

    public OwnerDoor owner() {
        return new OwnerDoor(home.address(), home.ownerPassword());
    }

    public ReplyDoor replies() {
        return new ReplyDoor(home.address(), home.repliesKey());
    }

    @Override
    public void close() {
        closing = true;
        if (heartbeats != null) {
            heartbeats.close();
        }
        if (gateway != null) {
            gateway.close();
        }
        if (carrier != null) {
            carrier.close();
        }
        home.delete();
    }
}
