package yardlight.db.evidence;

import java.io.IOException;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.tools.ToolProvider;

/** The verifier of docs/verify, compiled from there: the same file that people are given. */
final class Verifier {

    static final Path SOURCE = Path.of("..", "docs", "verify", "Verify.java");

    private final Path folder;
    private final Method check;

    Verifier(Path folder) throws ReflectiveOperationException, IOException {
        this.folder = folder;
        int failed =
                ToolProvider.getSystemJavaCompiler().run(null, null, null, "-d", folder.toString(), SOURCE.toString());
        if (failed != 0) {
            throw new IllegalStateException(SOURCE + " does not compile");
        }
        var loader = new URLClassLoader(new URL[] {folder.toUri().toURL()}, null);
        check = loader.loadClass("Verify").getDeclaredMethod("check", Path.class, Optional.class);
        check.setAccessible(true);
    }

    /** What it says of an export, given an earlier head. */
    @SuppressWarnings("unchecked")
    List<String> check(String export, SignedHead earlier) throws IOException, ReflectiveOperationException {
        Path file = folder.resolve("export.txt");
        Files.write(file, export.getBytes(StandardCharsets.UTF_8));
        return (List<String>) check.invoke(null, file, Optional.of(earlier.json()));
    }
}
