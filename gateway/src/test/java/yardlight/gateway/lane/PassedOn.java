package yardlight.gateway.lane;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import org.h2.store.fs.FileBaseDefault;

/** An open file of H2 that passes everything on to another one; what is to go wrong is changed by whoever extends it. */
class PassedOn extends FileBaseDefault {

    private final FileChannel base;

    PassedOn(FileChannel base) {
        this.base = base;
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
