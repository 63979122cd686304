package yardlight.demo.bench;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.boot.context.properties.source.ConfigurationPropertySources;
import org.springframework.core.env.MutablePropertySources;
import org.springframework.core.env.SimpleCommandLinePropertySource;
import yardlight.demo.gateway.Launch;

/**
 * How long and how hard is measured; each can be set with {@code --demo.measure.…}.
 *
 * @param gatewayJar path of the gateway to measure; empty for the one that was built beside the demo
 * @param parts what is measured, in this order
 * @param warmUp load before the first round: the compiler needs a minute or more on two processors
 * @param round length of one round against one target
 * @param rounds rounds of which the median is taken
 * @param connections how many connections ask at the same time, one series for each
 * @param sites how many sites the events are about; more give more alarms that are new
 * @param alarms alarms for the way from the answer to the mail server
 * @param starts starts of which the median is taken
 */
record BenchSettings(
        @DefaultValue("") String gatewayJar,
        @DefaultValue({"start", "delivery", "events"}) List<String> parts,
        @DefaultValue("PT75S") Duration warmUp,
        @DefaultValue("PT6S") Duration round,
        @DefaultValue("3") int rounds,
        @DefaultValue({"32", "128"}) List<Integer> connections,
        @DefaultValue("1000") int sites,
        @DefaultValue("100") int alarms,
        @DefaultValue("3") int starts) {

    static BenchSettings from(String... args) {
        MutablePropertySources sources = new MutablePropertySources();
        sources.addFirst(new SimpleCommandLinePropertySource(args));
        return new Binder(ConfigurationPropertySources.from(sources)).bindOrCreate("demo.measure", BenchSettings.class);
    }

    int mostConnections() {
        return connections.stream().mapToInt(Integer::intValue).max().orElseThrow();
    }

    Path jar() {
        return Launch.jar(gatewayJar);
    }
}
