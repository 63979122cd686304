package yardlight.gateway.lane;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.h2.store.fs.FilePath;
import org.h2.store.fs.FilePathWrapper;

/**
 * A disk for H2, {@code jdbc:h2:powercut:…}, that remembers of each file only what was forced out of the caches: the
 * copy beside it, with {@code .disk} at its end, is what the worst power cut would leave. Public because H2
 * makes more of it by reflection.
 */
public final class PowerCut extends FilePathWrapper {

    static final String SCHEME = "powercut";

    public PowerCut() {}

    @Override
    public String getScheme() {
        return SCHEME;
    }

    @Override
    public FileChannel open(String mode) throws IOException {
        return new Forced(getBase().open(mode), Path.of(getBase().toRealPath().toString()));
    }

    /** What the worst power cut would leave of a file. */
    static Path left(Path file) {
        return file.resolveSibling(file.getFileName() + ".disk");
    }

    static void register() {
        FilePath.register(new PowerCut());
    }

    private static final class Forced extends PassedOn {

        private final Path file;

        private Forced(FileChannel base, Path file) {
            super(base);
            this.file = file;
        }

        @Override
        public void force(boolean metaData) throws IOException {
            super.force(metaData);
            Files.copy(file, left(file), StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
