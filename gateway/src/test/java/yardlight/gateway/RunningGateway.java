package yardlight.gateway;

import java.util.ArrayList;
import java.util.List;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;

/** A whole gateway in this process, with properties of its own, on a home of its own. */
public final class RunningGateway implements AutoCloseable {

    private final ConfigurableApplicationContext context;

    private RunningGateway(ConfigurableApplicationContext context) {
        this.context = context;
    }

    /** @param more properties as {@code name=value}; without {@code server.port} it chooses one */
    public static RunningGateway with(String... more) {
        var arguments = new ArrayList<String>();
        WholeGateway.settings((name, value) -> arguments.add("--" + name + "=" + value.get()));
        arguments.add("--server.port=0");
        List.of(more).forEach(property -> arguments.add("--" + property));
        var application = new SpringApplication(YardlightApplication.class);
        application.setRegisterShutdownHook(false);
        return new RunningGateway(application.run(latest(arguments)));
    }

    /** The last word on a property counts; Spring would make a list of all. */
    private static String[] latest(List<String> arguments) {
        var last = new java.util.LinkedHashMap<String, String>();
        arguments.forEach(argument -> last.put(argument.split("=", 2)[0], argument));
        return last.values().toArray(String[]::new);
    }

    public int port() {
        return ((ServletWebServerApplicationContext) context).getWebServer().getPort();
    }

    public <T> T bean(Class<T> type) {
        return context.getBean(type);
    }

    @Override
    public void close() {
        context.close();
    }
}
