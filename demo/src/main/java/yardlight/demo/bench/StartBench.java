package yardlight.demo.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.springframework.util.FileSystemUtils;
import yardlight.demo.gateway.FreePort;
import yardlight.demo.gateway.GatewayProcess;
import yardlight.demo.gateway.Launch;

/** From the start of the process to ready, with the jar as it is and with a class-data archive; and what stays resident. */
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
            plain.add(start(settings.jar(), folder, Launch.SMALL));
            archived.add(start(archive.jar(), archive.directory(), archive.options()));
        }
        double before = seconds(plain);
        List<Row> rows = new ArrayList<>();
        rows.add(Row.of("start to ready, s, the jar as it is", before));
        rows.add(Row.of(
                        "start to ready, s, extracted with a class-data archive",
                        seconds(archived),
                        "the jar as it is",
                        before)
                .aim("at most 4"));
        rows.add(Row.of("resident memory idle, MB, the jar as it is (-Xmx128m, serial collector)", resident(plain)));
        rows.add(Row.of("resident memory idle, MB, with the archive", resident(archived))
                .aim("at most 260"));
        return rows;
    }

    private Start start(Path jar, Path directory, List<String> jvm) throws IOException, InterruptedException {
        Path home = Files.createTempDirectory(folder, "home-");
        Launch launch = new Launch(jar, directory, jvm, FreePort.any(), BenchGateway.properties(home, NO_CARRIER));
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
