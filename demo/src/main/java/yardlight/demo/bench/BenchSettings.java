package yardlight.demo.bench;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.boot.context.properties.source.ConfigurationPropertySources;
import org.springframework.core.env.MutablePropertySources;
import org.springframework.core.env.SimpleCommandLinePropertySource;
import yardlight.demo.gateway.Launch;

/**
 * How long and how hard is measured; each can be set with {@code --demo.bench.…}.
 *
 * @param gatewayJar path of the gateway to measure; empty for the one that was built beside the demo
 * @param only what is measured, in this order
 * @param warmUp load on each path before the first round: the compiler needs a minute or more on two processors
 * @param round length of one round against one target
 * @param rounds rounds of which the median is taken
 * @param connections how many connections ask at the same time, one series for each
 * @param sites how many sites the events are about; more give more alarms that are new
 * @param alarms alarms for the way from the answer to the mail server
 * @param starts starts of which the median is taken
 * @param armed callouts that wait while others fall due
 * @param boxes that send a heartbeat each minute
 * @param beating how long they do so before it is measured: past the first deadline of the first of them, and until the compiler has
 *     little left to do
 * @param measuring how long points are read while that is measured
 * @param flood how long the gateway is flooded; that part is left out when it is zero
 * @param look how often the heap is looked at in the meantime
 * @param scale how many boxes the costs are measured with, two alarms each
 * @param heap of the gateway and of the limits while the throughput is measured: alarms that are all new take many sites
 * @param bigHeap heap of a gateway with very many boxes
 */
record BenchSettings(
        @DefaultValue("") String gatewayJar,

        @DefaultValue({"start", "throughput", "delivery", "lateness", "heartbeats", "readings", "scale", "flood"})
        List<String> only,

        @DefaultValue("PT60S") Duration warmUp,
        @DefaultValue("PT4S") Duration round,
        @DefaultValue("3") int rounds,
        @DefaultValue({"32", "128"}) List<Integer> connections,
        @DefaultValue("16000") int sites,
        @DefaultValue("2000") int alarms,
        @DefaultValue("3") int starts,
        @DefaultValue("100000") int armed,
        @DefaultValue("100000") int boxes,
        @DefaultValue("PT200S") Duration beating,
        @DefaultValue("PT5M") Duration measuring,
        @DefaultValue("PT0S") Duration flood,
        @DefaultValue("PT5M") Duration look,
        @DefaultValue({"1000", "4000", "16000"}) List<Integer> scale,
        @DefaultValue("512m") String heap,
        @DefaultValue("1g") String bigHeap) {

    static final String MARK = "--demo.bench";

    static BenchSettings from(String... args) {
        String[] settings = Stream.of(args).filter(arg -> !arg.equals(MARK)).toArray(String[]::new);
        MutablePropertySources sources = new MutablePropertySources();
        sources.addFirst(new SimpleCommandLinePropertySource(settings));
        return new Binder(ConfigurationPropertySources.from(sources)).bindOrCreate("demo.bench", BenchSettings.class);
    }

    int mostConnections() {
        return connections.stream().mapToInt(Integer::intValue).max().orElseThrow();
    }

    Path jar() {
        return Launch.jar(gatewayJar);
    }

    BenchGateway.Kind small() {
        return new BenchGateway.Kind(jar(), Launch.SMALL, true);
    }

    /** As the manual has it for thousands of boxes: a collector that does not stop everything for half a second. */
    BenchGateway.Kind big() {
        return with(bigHeap, "-XX:+UseG1GC", "-XX:MaxGCPauseMillis=50");
    }

    /** The one whose throughput is measured. */
    BenchGateway.Kind loaded() {
        return with(heap, "-XX:+UseSerialGC");
    }

    /** Compiled quickly and not deeply: what it costs then depends on the size, and not on how warm it has become. */
    BenchGateway.Kind quick() {
        return with(heap, "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1");
    }

    private BenchGateway.Kind with(String most, String... options) {
        var jvm = new ArrayList<>(List.of("-Xmx" + most));
        jvm.addAll(List.of(options));
        return new BenchGateway.Kind(jar(), jvm, true);
    }

    /** One that tells boxes to slow down. */
    BenchGateway.Kind strict() {
        return new BenchGateway.Kind(jar(), Launch.SMALL, false);
    }
}
