package yardlight.demo.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.springframework.util.FileSystemUtils;
import yardlight.demo.gateway.FreePort;
import yardlight.demo.gateway.GatewayProcess;
import yardlight.demo.gateway.Launch;

/** From the start of the process to ready, with the jar as it is and as it is to be installed; and what stays resident. */
final class StartBench {

    private static final long IDLE_MILLIS = 5_000;
    private static final int NO_CARRIER = 1;

    private record Start(double seconds, double residentMegabytes) {}

    private final BenchSettings settings;
    private final Path folder;

    private StartBench(BenchSettings settings, Path folder) {
        this.settings = settings;
        this.folder = folder;
    }

    static List<Row> run(BenchSettings settings) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("yardlight-start-");
        try {
            return new StartBench(settings, folder).rows();
        } finally {
            FileSystemUtils.deleteRecursively(folder);
        }
    }

    private List<Row> rows() throws IOException, InterruptedException {
        ClassDataArchive archive = ClassDataArchive.make(settings.jar(), folder.resolve("archive"));
        List<Start> plain = new ArrayList<>();
        List<Start> archived = new ArrayList<>();
        for (int i = 0; i < settings.starts(); i++) {
            plain.add(start(settings.jar(), folder, Launch.SMALL, Map.of()));
            archived.add(start(archive.jar(), archive.directory(), archive.options(), Launch.INSTALLED_ENVIRONMENT));
        }
        double before = seconds(plain);
        List<Row> rows = new ArrayList<>();
        rows.add(Row.of("start to ready, s, the jar as it is", before));
        rows.add(Row.of(
                        "start to ready, s, installed as operating.md says",
                        seconds(archived),
                        "the jar as it is",
                        before)
                .aim("at most 4"));
        rows.add(Row.of("resident memory idle, MB, the jar as it is (-Xmx128m, serial collector)", resident(plain)));
        rows.add(Row.of("resident memory idle, MB, installed as operating.md says", resident(archived))
                .aim("at most 260"));
        return rows;
    }

    private Start start(Path jar, Path directory, List<String> jvm, Map<String, String> environment)
            throws IOException, InterruptedException {
        Path home = Files.createTempDirectory(folder, "home-");
        Map<String, String> properties = BenchGateway.properties(home, NO_CARRIER);
        Launch launch = new Launch(jar, directory, jvm, FreePort.any(), properties, environment);
        long begin = System.nanoTime();
        try (GatewayProcess gateway = GatewayProcess.start(launch)) {
            gateway.awaitReady(BenchGateway.READY_WITHIN);
            double seconds = (System.nanoTime() - begin) / 1e9;
            Thread.sleep(IDLE_MILLIS);
            return new Start(seconds, residentMegabytes(gateway.pid()));
        }
    }

    /** What the kernel says; 0 where it does not say it in this way. */
    static double residentMegabytes(long pid) throws IOException {
        return Machine.kilobytes(Path.of("/proc", String.valueOf(pid), "status"), "VmRSS:") / 1_024.0;
    }

    private static double seconds(List<Start> starts) {
        return Figures.median(starts.stream().mapToDouble(Start::seconds).toArray());
    }

    private static double resident(List<Start> starts) {
        return Figures.median(
                starts.stream().mapToDouble(Start::residentMegabytes).toArray());
    }
}
