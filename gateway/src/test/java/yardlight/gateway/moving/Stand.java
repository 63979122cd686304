package yardlight.gateway.moving;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import yardlight.db.TestDatabase;
import yardlight.gateway.JarGateway;

/**
 * Where the packaged gateway runs, and with what.
 *
 * @param home of its own; on H2 the database is in it
 * @param arguments on any start of it
 */
record Stand(Path home, List<String> arguments) {

    static Stand on(TestDatabase database, Path home, String... more) {
        var arguments = new ArrayList<String>(List.of(more));
        if (database == TestDatabase.POSTGRESQL) {
            arguments.add("--spring.datasource.url=" + database.newUrl());
            arguments.add("--spring.datasource.username=" + database.user());
        }
        try {
            Files.createDirectories(home);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Stand(home, arguments);
    }

    JarGateway ready(String... more) {
        return JarGateway.ready(home, with(more));
    }

    JarGateway begin(String... more) {
        return JarGateway.begin(home, with(more));
    }

    /** A start that ends by itself; comes back with what it said. */
    String moveOut(Path file) {
        JarGateway gateway = begin("--yardlight.move-out-to=" + file);
        int code = gateway.exitCode();
        String said = gateway.said();
        if (code != 0) {
            throw new AssertionError("code " + code + ": " + said);
        }
        return said;
    }

    static String from(Path file) {
        return "--yardlight.move-in-from=" + file;
    }

    private String[] with(String... more) {
        var all = new ArrayList<>(arguments);
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }
}
