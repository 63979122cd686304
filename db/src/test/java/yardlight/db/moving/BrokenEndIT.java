package yardlight.db.moving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardlight.db.TestDatabase;
import yardlight.db.disk.Vendor;

/** The disk fails at the very end of a move, when what is said of it has to be true all the same. */
class BrokenEndIT {

    @TempDir
    private Path folder;

    @Test
    void a_crate_whose_name_is_not_on_disk_is_not_left_there() throws SQLException {
        Ground old = Ground.filled(TestDatabase.H2, 5);
        var out = new MoveOut(old.source(), path -> {
            if (Files.isDirectory(path)) {
                throw new IOException("the disk does not sync");
            }
        });

        assertThatThrownBy(() -> out.to(folder.resolve("crate.zip"), RandomNight.BEGAN))
                .isInstanceOf(MoveRefused.class)
                .hasMessageContaining("the disk does not sync");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void a_sync_that_fails_after_the_commit_is_no_refusal_and_the_next_start_finds_it_done() throws SQLException {
        Path file = folder.resolve("crate.zip");
        Ground.filled(TestDatabase.H2, 5).moveOut(file);
        Ground fresh = Ground.empty(TestDatabase.H2);
        var in = new MoveIn(without(Vendor.H2.syncStatement(), DataSource.class, fresh.source()), file);

        assertThatThrownBy(() -> in.in(RandomNight.BEGAN))
                .isInstanceOf(MoveInDoubt.class)
                .hasMessage("the database failed at the end: no such thing now");
        assertThat(fresh.moveIn(file).look()).isEqualTo(MoveIn.Finding.DONE);
    }

    @Test
    void a_connection_that_fails_after_all_of_it_takes_nothing_back() throws SQLException {
        Path file = folder.resolve("crate.zip");
        Ground.filled(TestDatabase.H2, 5).moveOut(file);
        Ground fresh = Ground.empty(TestDatabase.H2);
        var in = new MoveIn(
                without(Optional.of("set lazy_query_execution false"), DataSource.class, fresh.source()), file);

        assertThat(in.in(RandomNight.BEGAN).words()).startsWith("moved here by crate.zip");
        assertThat(fresh.moveIn(file).look()).isEqualTo(MoveIn.Finding.DONE);
    }

    /** The same thing, but that one statement fails. */
    private static <T> T without(Optional<String> statement, Class<T> type, Object real) {
        InvocationHandler handler = (proxy, method, arguments) -> {
            if (method.getName().equals("execute") && arguments[0].equals(statement.orElseThrow())) {
                throw new SQLException("no such thing now");
            }
            Object result = call(real, method, arguments);
            if (result instanceof Connection) {
                return without(statement, Connection.class, result);
            }
            return method.getName().equals("createStatement") ? without(statement, Statement.class, result) : result;
        };
        return type.cast(Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, handler));
    }

    private static Object call(Object real, Method method, Object... arguments) throws Throwable {
        try {
            return method.invoke(real, arguments);
        } catch (InvocationTargetException e) {
            throw e.getCause();
        }
    }
}
