package yardlight.demo.gateway;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * How a gateway is started.
 *
 * @param jar what to run, seen from {@code directory}
 * @param directory the working directory; a class-data archive is only used from where it was made
 * @param jvm options of the virtual machine
 * @param port where it will answer on the loopback interface
 * @param properties Spring properties, handed over as program arguments
 * @param environment variables that it gets beside ours
 */
public record Launch(
        Path jar,
        Path directory,
        List<String> jvm,
        int port,
        Map<String, String> properties,
        Map<String, String> environment) {

    /** What README recommends for a small machine. */
    public static final List<String> SMALL = List.of("-Xmx128m", "-XX:+UseSerialGC");

    /** The same, compiled quickly and not deeply: starts sooner, carries less. */
    public static final List<String> QUICK = List.of("-Xmx128m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1");

    /** As docs/operating.md has it installed on a small computer, beside the class-data archive. */
    public static final List<String> INSTALLED = List.of(
            "-Xmx128m",
            "-Xms40m",
            "-Xmn12m",
            "-XX:-UsePerfData",
            "-XX:+UseSerialGC",
            "-XX:TieredStopAtLevel=1",
            "-XX:+ExitOnOutOfMemoryError");

    /** What docs/operating.md has it find in its environment. */
    public static final Map<String, String> INSTALLED_ENVIRONMENT = Map.of("MALLOC_ARENA_MAX", "2");

    public Launch {
        jvm = List.copyOf(jvm);
        properties = Map.copyOf(properties);
        environment = Map.copyOf(environment);
    }

    public Launch(Path jar, Path directory, List<String> jvm, int port, Map<String, String> properties) {
        this(jar, directory, jvm, port, properties, Map.of());
    }

    /**
     * Finds the gateway's jar.
     *
     * @param named its path; empty for the one that was built, seen from the root of the project or from a module
     * @throws IllegalStateException if it is not there
     */
    public static Path jar(String named) {
        Stream<String> paths = named.isEmpty()
                ? Stream.of("gateway/target/yardlight.jar", "../gateway/target/yardlight.jar")
                : Stream.of(named);
        return paths.map(Path::of)
                .map(Path::toAbsolutePath)
                .map(Path::normalize)
                .filter(Files::isRegularFile)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the gateway's jar is not there: mvn package makes "
                        + "gateway/target/yardlight.jar, --demo.gateway-jar names another"));
    }

    List<String> command() {
        List<String> command = new ArrayList<>();
        command.add(java());
        command.addAll(jvm);
        command.add("-jar");
        command.add(jar.toString());
        command.add("--server.port=" + port);
        command.add("--server.address=127.0.0.1");
        properties.forEach((name, value) -> command.add("--" + name + "=" + value));
        return command;
    }

    /** The virtual machine that the demo itself runs on. */
    public static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }
}
