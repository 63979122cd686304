package yardlight.gateway.calendar;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import javax.sql.DataSource;
import org.springframework.jdbc.datasource.DelegatingDataSource;

/**
 * The same database, called by threads that nobody interrupts. Quartz interrupts its own at a stop, wherever they are; H2
 * closes its file under everybody when that hits one in the middle of a read or a write. Whoever is interrupted here waits
 * for the call to end and finds the interrupt afterwards.
 */
final class Undisturbed extends DelegatingDataSource {

    /** The most special first: a prepared statement is a statement too. */
    private static final List<Class<?>> CARRIED =
            List.of(Connection.class, PreparedStatement.class, Statement.class, ResultSet.class);

    private final ExecutorService threads = Executors.newCachedThreadPool(work -> {
        var thread = new Thread(work, "calendar-database");
        thread.setDaemon(true);
        return thread;
    });

    Undisturbed(DataSource source) {
        super(source);
    }

    @Override
    public Connection getConnection() throws SQLException {
        try {
            return (Connection) call(super::getConnection);
        } catch (SQLException | RuntimeException | Error e) {
            throw e;
        } catch (Throwable e) {
            throw new IllegalStateException(e);
        }
    }

    private Object call(Callable<?> work) throws Throwable {
        Future<?> done = threads.submit(work);
        boolean interrupted = false;
        try {
            while (true) {
                try {
                    return carried(done.get());
                } catch (InterruptedException e) {
                    interrupted = true;
                }
            }
        } catch (ExecutionException e) {
            throw e.getCause() instanceof InvocationTargetException inner ? inner.getCause() : e.getCause();
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private Object carried(Object result) {
        return CARRIED.stream()
                .filter(type -> type.isInstance(result))
                .findFirst()
                .map(type -> wrapped(type, result))
                .orElse(result);
    }

    private Object wrapped(Class<?> type, Object inner) {
        return Proxy.newProxyInstance(
                getClass().getClassLoader(),
                new Class<?>[] {type},
                (proxy, method, arguments) -> call(() -> invoke(inner, method, arguments)));
    }

    private static Object invoke(Object inner, Method method, Object[] arguments) throws ReflectiveOperationException {
        return method.invoke(inner, arguments);
    }
}
