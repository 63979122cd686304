package yardlight.gateway.lane;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.util.concurrent.atomic.AtomicInteger;
import org.h2.store.fs.FilePath;
import org.h2.store.fs.FilePathWrapper;

/** A disk for H2 that can be full: then every write fails; or deaf: then every sync does. Public because H2 makes more of it by reflection. */
public final class FullDisk extends FilePathWrapper {

    private static final AtomicInteger OPENED = new AtomicInteger();
    private static volatile boolean full;
    private static volatile boolean deaf;

    static {
        FilePath.register(new FullDisk());
    }

    public FullDisk() {}

    /** The address of the same database on this disk. */
    static String holding(String url) {
        return url.replace("jdbc:h2:file:", "jdbc:h2:full:");
    }

    static void fill(boolean isFull) {
        full = isFull;
    }

    static void deafen(boolean isDeaf) {
        deaf = isDeaf;
    }

    /** How often a file on it was opened. */
    static int opened() {
        return OPENED.get();
    }

    @Override
    public String getScheme() {
        return "full";
    }

    @Override
    public FileChannel open(String mode) throws IOException {
        OPENED.incrementAndGet();
        return new Channel(getBase().open(mode));
    }

    private static final class Channel extends PassedOn {

        private Channel(FileChannel base) {
            super(base);
        }

        @Override
        public int write(ByteBuffer bytes, long position) throws IOException {
            if (full) {
                throw new IOException("No space left on device");
            }
            return super.write(bytes, position);
        }

        @Override
        public void force(boolean metaData) throws IOException {
            if (deaf) {
                throw new IOException("Input/output error");
            }
            super.force(metaData);
        }
    }
}
