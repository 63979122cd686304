package yardlight.demo.bench;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where the figures come from: they say little without it. */
final class Machine {

    private Machine() {}

    /** One line for the head of the table. */
    static String described() throws IOException {
        FileStore disk = Files.getFileStore(Path.of(System.getProperty("java.io.tmpdir")));
        return "%d processors, %.1f GB, load %.1f at the start; %s %s (%s); %s %s %s; %s"
                .formatted(
                        Runtime.getRuntime().availableProcessors(),
                        kilobytes(Path.of("/proc/meminfo"), "MemTotal:") / 1_048_576.0,
                        java.lang.management.ManagementFactory.getOperatingSystemMXBean()
                                .getSystemLoadAverage(),
                        System.getProperty("java.vm.vendor"),
                        Runtime.version(),
                        System.getProperty("java.vm.name"),
                        System.getProperty("os.name"),
                        System.getProperty("os.version"),
                        System.getProperty("os.arch"),
                        disk.type());
    }

    /** A line of a file of the kernel that counts in kB; 0 where there is no such file. */
    static long kilobytes(Path file, String name) throws IOException {
        if (!Files.isReadable(file)) {
            return 0;
        }
        return Files.readAllLines(file).stream()
                .filter(line -> line.startsWith(name))
                .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
                .findFirst()
                .orElse(0);
    }
}
