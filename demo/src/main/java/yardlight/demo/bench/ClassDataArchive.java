package yardlight.demo.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import yardlight.demo.gateway.FreePort;
import yardlight.demo.gateway.Launch;

/**
 * The gateway taken out of its jar, with an archive of its classes from one trial start.
 *
 * @param directory where it must be started: an archive is ignored from anywhere else
 * @param jar seen from there
 */
public record ClassDataArchive(Path directory, Path jar) {

    private static final String ARCHIVE = "yardlight.jsa";
    private static final int WITHIN_SECONDS = 180;

    /** Takes the jar apart into {@code directory}, which must not be there yet. */
    public static ClassDataArchive make(Path jar, Path directory) throws IOException, InterruptedException {
        Path parent = directory.getParent();
        run(
                parent,
                List.of("-Djarmode=tools", "-jar", jar.toString(), "extract", "--destination", directory.toString()));
        ClassDataArchive archive = new ClassDataArchive(directory, jar.getFileName());
        Path home = Files.createTempDirectory(parent, "trial-");
        List<String> trial = new ArrayList<>(Launch.QUICK);
        trial.addAll(List.of("-XX:ArchiveClassesAtExit=" + ARCHIVE, "-Dspring.context.exit=onRefresh"));
        trial.addAll(List.of("-jar", archive.jar().toString(), "--server.port=" + FreePort.any()));
        BenchGateway.properties(home, 1).forEach((name, value) -> trial.add("--" + name + "=" + value));
        run(directory, trial);
        return archive;
    }

    /** The options of the virtual machine as docs/operating.md has them; it refuses to start rather than to ignore the archive. */
    public List<String> options() {
        List<String> options = new ArrayList<>(Launch.INSTALLED);
        options.addAll(List.of("-XX:SharedArchiveFile=" + ARCHIVE, "-Xshare:on"));
        return options;
    }

    private static void run(Path directory, List<String> arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(Launch.java()));
        command.addAll(arguments);
        Process process = new ProcessBuilder(command)
                .directory(directory.toFile())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (!process.waitFor(WITHIN_SECONDS, TimeUnit.SECONDS) || process.exitValue() != 0) {
            process.destroyForcibly();
            throw new IllegalStateException("this did not end well: " + String.join(" ", command));
        }
    }
}
