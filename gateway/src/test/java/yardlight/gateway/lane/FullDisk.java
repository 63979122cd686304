package yardlight.gateway.lane;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import org.h2.store.fs.FileBaseDefault;
import org.h2.store.fs.FilePath;
import org.h2.store.fs.FilePathWrapper;

/** A disk for H2 that can be full: then every write fails. Public because H2 makes more of it by reflection. */
public final class FullDisk extends FilePathWrapper {

    private static volatile boolean full;

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

    @Override
    public String getScheme() {
        return "full";
    }

    @Override
    public FileChannel open(String mode) throws IOException {
        return new Channel(getBase().open(mode));
    }

    private static final class Channel extends FileBaseDefault {

        private final FileChannel base;

        private Channel(FileChannel base) {
            this.base = base;
        }

        @Override
        public int write(ByteBuffer bytes, long position) throws IOException {
            if (full) {
                throw new IOException("No space left on device");
            }
            return base.write(bytes, position);
        }

        @Override
        public int read(ByteBuffer bytes, long position) throws IOException {
            return base.read(bytes, position);
        }

        @Override
        public long size() throws IOException {
            return base.size();
        }

        @Override
        protected void implTruncate(long size) throws IOException {
            base.truncate(size);
        }

        @Override
        public void force(boolean metaData) throws IOException {
            base.force(metaData);
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
