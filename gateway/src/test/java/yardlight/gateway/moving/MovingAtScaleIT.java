package yardlight.gateway.moving;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardlight.db.TestDatabase;
import yardlight.db.moving.LongLog;
import yardlight.gateway.JarGateway;

/**
 * A long log moves through the packaged gateway with the heap of a small computer, 128 MB.
 * {@code -Dyardlight.moving.lines=1000000} makes it as long as a million lines.
 */
class MovingAtScaleIT {

    private static final int LINES = Integer.getInteger("yardlight.moving.lines", 60_000);
    private static final Pattern TOOK = Pattern.compile("(?:is whole|moved in) after ([0-9.]+) s");

    @TempDir
    private Path folder;

    @Test
    void moves_with_little_memory() throws Exception {
        Path home = Files.createDirectory(folder.resolve("old"));
        try (var source = TestDatabase.H2.migrated(
                "jdbc:h2:file:" + home.resolve("yardlight") + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE")) {
            LongLog.write(source, LINES);
        }
        Stand h2 = Stand.on(TestDatabase.H2, home);
        Stand postgres = Stand.on(TestDatabase.POSTGRESQL, folder.resolve("middle"));
        Stand fresh = Stand.on(TestDatabase.H2, folder.resolve("fresh"));

        Path first = folder.resolve("first.zip");
        say("out of H2", h2.moveOut(first), first);
        moveIn("into PostgreSQL", postgres, first);
        Path second = folder.resolve("second.zip");
        say("out of PostgreSQL", postgres.moveOut(second), second);
        moveIn("into H2", fresh, second);
        System.out.printf(
                "H2 file before %,d KB, after %,d KB%n",
                Files.size(home.resolve("yardlight.mv.db")) / 1024,
                Files.size(folder.resolve("fresh").resolve("yardlight.mv.db")) / 1024);
    }

    private static void moveIn(String way, Stand stand, Path file) throws Exception {
        try (JarGateway gateway = stand.ready(Stand.from(file))) {
            say(way, gateway.said(), file);
        }
    }

    private static void say(String way, String said, Path file) throws Exception {
        Matcher took = TOOK.matcher(said);
        assertThat(took.find()).as(said).isTrue();
        double seconds = Double.parseDouble(took.group(1));
        System.out.printf(
                "%,d lines %s: %.1f s, %,.0f lines a second, %,d KB%n",
                LINES, way, seconds, LINES / seconds, Files.size(file) / 1024);
    }
}
