package yardlight.gateway.lane;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.h2.store.fs.FileBaseDefault;
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

    private static final class Forced extends FileBaseDefault {

        private final FileChannel base;
        private final Path file;

        private Forced(FileChannel base, Path file) {
            this.base = base;
            this.file = file;
        }

        @Override
        public void force(boolean metaData) throws IOException {
            base.force(metaData);
            Files.copy(file, left(file), StandardCopyOption.REPLACE_EXISTING);
        }

        @Override
        public long size() throws IOException {
            return base.size();
        }

        @Override
        public int read(ByteBuffer to, long position) throws IOException {
            return base.read(to, position);
        }

        @Override
        public int write(ByteBuffer from, long position) throws IOException {
            return base.write(from, position);
        }

        @Override
        protected void implTruncate(long size) throws IOException {
            base.truncate(size);
        }

        @Override
        public FileLock tryLock(long position, long size, boolean shared) throws IOException {
            return base.tryLock(position, size, shared);
        }

        @Override
        protected void implCloseChannel() throws IOException {
            base.close();
        }
    }
}
