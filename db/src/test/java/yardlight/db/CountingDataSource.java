package yardlight.db;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.Statement;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import javax.sql.DataSource;

/** A data source that counts what is asked of its database: each execution of a statement, a batch as one. */
public final class CountingDataSource {

    private final DataSource source;
    private final AtomicLong queries = new AtomicLong();
    private final Map<Thread, AtomicLong> byThread = new ConcurrentHashMap<>();

    public CountingDataSource(DataSource source) {
        this.source = source;
    }

    public DataSource proxy() {
        return wrap(DataSource.class, source);
    }

    public long queries() {
        return queries.get();
    }

    /** What this thread asked, and no other. */
    public long mine() {
        return byThread.getOrDefault(Thread.currentThread(), new AtomicLong()).get();
    }

    private <T> T wrap(Class<T> type, Object real) {
        InvocationHandler handler = (proxy, method, arguments) -> wrapped(call(real, method, arguments));
        return type.cast(Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, handler));
    }

    private Object call(Object real, Method method, Object[] arguments) throws Throwable {
        if (method.getName().startsWith("execute")) {
            queries.incrementAndGet();
            byThread.computeIfAbsent(Thread.currentThread(), any -> new AtomicLong())
                    .incrementAndGet();
        }
        try {
            return method.invoke(real, arguments);
        } catch (InvocationTargetException e) {
            throw e.getCause();
        }
    }

    private Object wrapped(Object result) {
        if (result instanceof PreparedStatement) {
            return wrap(PreparedStatement.class, result);
        }
        if (result instanceof Statement) {
            return wrap(Statement.class, result);
        }
        return result instanceof Connection ? wrap(Connection.class, result) : result;
    }
}
