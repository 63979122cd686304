package yardlight.demo.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.util.FileSystemUtils;
import yardlight.demo.gateway.FreePort;
import yardlight.demo.gateway.GatewayProcess;
import yardlight.demo.gateway.Launch;

/** From the start of the process to ready, with the jar as it is and with a class-data archive; and what stays resident. */
final class StartBench {

    private static final long IDLE_MILLIS = 5_000;
    private static final int NO_CARRIER = 1;

    private record Start(double seconds, Optional<Double> residentMegabytes) {}

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
                before));
        resident(plain)
                .ifPresent(megabytes ->
                        rows.add(Row.of("resident memory idle, MB (-Xmx128m, serial collector)", megabytes)));
        resident(archived).ifPresent(megabytes -> rows.add(Row.of("the same with the archive, MB", megabytes)));
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

    /** What the kernel says; empty where it does not say it in this way. */
    private static Optional<Double> residentMegabytes(long pid) throws IOException {
        Path status = Path.of("/proc", String.valueOf(pid), "status");
        if (!Files.isReadable(status)) {
            return Optional.empty();
        }
        return Files.readAllLines(status).stream()
                .filter(line -> line.startsWith("VmRSS:"))
                .map(line -> Double.parseDouble(line.replaceAll("\\D", "")) / 1_024)
                .findFirst();
    }

    private static double seconds(List<Start> starts) {
        return Figures.median(starts.stream().mapToDouble(Start::seconds).toArray());
    }

    private static Optional<Double> resident(List<Start> starts) {
        double[] known = starts.stream()
                .flatMap(start -> start.residentMegabytes().stream())
                .mapToDouble(Double::doubleValue)
                .toArray();
        return known.length == 0 ? Optional.empty() : Optional.of(Figures.median(known));
    }
}
