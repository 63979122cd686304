package yardlight.db.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Waits until the disk has what was written into a file, or the names that a folder has. */
public final class Forced {

    private Forced() {}

    /** A folder is opened for reading to have its names synced; Windows has no such thing. */
    public static void sync(Path path) throws IOException {
        boolean folder = Files.isDirectory(path);
        if (folder && path.getFileSystem().getSeparator().equals("\\")) {
            return;
        }
        var how = folder ? StandardOpenOption.READ : StandardOpenOption.WRITE;
        try (FileChannel channel = FileChannel.open(path, how)) {
            channel.force(true);
        }
    }
}
