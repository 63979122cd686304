package yardlight.gateway.home;

import java.sql.SQLException;
import java.time.Duration;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;
import yardlight.db.disk.Packing;
import yardlight.db.disk.Vendor;
import yardlight.gateway.clock.Bell;
import yardlight.gateway.clock.Worker;

/** Has the H2 file packed, a little at a time. Nothing depends on it but the size of the file. */
@Component
final class Packer implements SmartLifecycle {

    private static final Logger LOG = LoggerFactory.getLogger(Packer.class);

    private static final Duration LOOK = Duration.ofSeconds(5);

    /** While there is something to pack: enough for a flood, and most of the time left for those who write. */
    private static final Duration BREATH = Duration.ofMillis(100);

    private final DataSource source;
    private final Packing packing;
    private final Bell bell = new Bell();
    private final Worker worker = new Worker("packer");
    private boolean said;

    Packer(DataSource source) {
        this.source = source;
        this.packing = new Packing(source);
    }

    @Override
    public void start() {
        if (Vendor.of(source) == Vendor.H2) {
            worker.start(this::run);
        }
    }

    @Override
    public void stop() {
        if (worker.running()) {
            worker.stop(bell::ring);
        }
    }

    @Override
    public boolean isRunning() {
        return worker.running();
    }

    private void run() {
        while (worker.running()) {
            worker.beat();
            try {
                bell.await(packed() ? BREATH : LOOK);
            } catch (InterruptedException e) {
                worker.end();
            }
        }
    }

    private boolean packed() {
        try {
            boolean packed = packing.step();
            said = false;
            return packed;
        } catch (SQLException | RuntimeException | Error e) {
            if (!said) {
                LOG.warn("the database file is not packed now, it is tried again: {}", e.toString());
            }
            said = true;
            return false;
        }
    }
}
