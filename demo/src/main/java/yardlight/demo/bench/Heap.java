package yardlight.demo.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Looks into the heap of another process, with the tool that comes with the JDK. */
final class Heap {

    private Heap() {}

    /** What is reachable: counted by the virtual machine itself, after the full collection that counting begins with. */
    static double liveMegabytes(long pid) throws IOException, InterruptedException {
        String jcmd = Path.of(System.getProperty("java.home"), "bin", "jcmd").toString();
        Process process = new ProcessBuilder(jcmd, String.valueOf(pid), "GC.class_histogram")
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return bytes(said) / 1_048_576.0;
    }

    /** The last line is the sum: the word Total, instances, bytes. */
    static long bytes(String histogram) {
        List<String> totals =
                histogram.lines().filter(line -> line.startsWith("Total")).toList();
        if (totals.size() != 1) {
            throw new IllegalStateException(
                    "no sum in what jcmd said: " + histogram.lines().limit(5).toList());
        }
        return Long.parseLong(totals.get(0).trim().split("\\s+")[2]);
    }
}
