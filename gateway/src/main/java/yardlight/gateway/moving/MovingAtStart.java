package yardlight.gateway.moving;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.concurrent.TimeUnit;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.flyway.autoconfigure.FlywayMigrationStrategy;
import org.springframework.stereotype.Component;
import yardlight.db.moving.Crate;
import yardlight.db.moving.MoveIn;
import yardlight.db.moving.MoveInDoubt;
import yardlight.db.moving.MoveOut;
import yardlight.db.moving.MoveRefused;

/**
 * Stands where the tables are made, before anything else reads or writes them. With {@code yardlight.move-out-to} nothing is
 * made: all that is there is written into that file, and the process ends. With {@code yardlight.move-in-from} that file is
 * put into the tables once they are made, and the start goes on.
 */
@Component
final class MovingAtStart implements FlywayMigrationStrategy {

    static final String OUT = "yardlight.move-out-to";
    static final String IN = "yardlight.move-in-from";

    private static final Logger LOG = LoggerFactory.getLogger(MovingAtStart.class);

    private final DataSource source;
    private final InstantSource clock;
    private final String out;
    private final String in;

    MovingAtStart(
            DataSource source,
            InstantSource clock,
            @Value("${" + OUT + ":}") String out,
            @Value("${" + IN + ":}") String in) {
        this.source = source;
        this.clock = clock;
        this.out = out;
        this.in = in;
    }

    @Override
    public void migrate(Flyway tables) {
        if (!out.isBlank() && !in.isBlank()) {
            throw new MoveRefused(OUT + " and " + IN + " are both set, and one gateway cannot do both");
        }
        if (!out.isBlank()) {
            named(OUT, out, () -> moveOut(Path.of(out)));
        } else if (in.isBlank()) {
            tables.migrate();
        } else {
            named(IN, in, () -> moveIn(tables, Path.of(in)));
        }
    }

    /** Whoever reads why nothing was moved has to know which file is meant, and where it was asked for. */
    private static void named(String property, String file, Runnable move) {
        try {
            move.run();
        } catch (MoveRefused e) {
            throw new MoveRefused(property + "=" + file + ": " + e.getMessage(), e);
        } catch (MoveInDoubt e) {
            throw new MoveInDoubt(property + "=" + file + ": " + e.getMessage(), e);
        }
    }

    private void moveOut(Path file) {
        LOG.info("everything that this gateway keeps is written to {}", file);
        long began = System.nanoTime();
        Crate crate = new MoveOut(source).to(file, clock.instant());
        LOG.info(
                "{} is whole after {} s: {} tables, {} rows, the log to line {} with the root {}",
                file,
                seconds(began),
                crate.parts().size(),
                crate.rows(),
                crate.head().first() + crate.head().size() - 1,
                crate.head().root());
        LOG.warn(
                "{} holds private keys, hashes of passwords, and how people are reached: keep it as one keeps a key",
                file);
        LOG.warn("do not start this gateway again once another one has moved in: both would call the same people");
        end();
    }

    private void moveIn(Flyway tables, Path file) {
        var move = new MoveIn(source, file);
        MoveIn.Finding finding = move.look();
        tables.migrate();
        switch (finding) {
            case DONE -> LOG.warn("{} was moved in at an earlier start and is not again; remove {}", file, IN);
            case GONE -> LOG.warn("{} is not there, and the database has something in it; remove {}", file, IN);
            case UNREADABLE ->
                LOG.warn(
                        "{} cannot be read as a crate of this release, and the database has something in it; remove {}",
                        file,
                        IN);
            case TO_BE_DONE -> {
                LOG.info("{} is being moved in", file);
                long began = System.nanoTime();
                LOG.warn("{}", move.in(clock.instant()).words());
                LOG.warn(
                        "moved in after {} s. The gateway that {} was made of must not be started again: both would call"
                                + " the same people",
                        seconds(began),
                        file);
            }
        }
    }

    private static String seconds(long began) {
        return String.valueOf(TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - began) / 1e3);
    }

    /** Nothing else is up yet that would have to be stopped. */
    private void end() {
        close(source);
        System.exit(0);
    }

    private static void close(DataSource source) {
        if (source instanceof AutoCloseable pool) {
            try {
                pool.close();
            } catch (Exception e) {
                LOG.warn("the database was not closed: {}", e.getMessage());
            }
        }
    }
}
