package yardlight.channels.smpp;

import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;

/**
 * Reads units of data off the wire (section 3.2). Bounded: a length that makes no sense, from a centre that is none, must
 * not take the gateway's memory.
 */
final class Units {

    /** message_payload alone may have 64 KiB (section 5.3.2.32). */
    static final int LONGEST = 70_000;

    static final int HEADER = 16;

    private final DataInputStream in;

    Units(DataInputStream in) {
        this.in = in;
    }

    /** The next one, whole. An {@link EOFException} at the end, an {@link IOException} for what is no unit. */
    byte[] next() throws IOException {
        int length = in.readInt();
        if (length < HEADER || length > LONGEST) {
            throw new IOException("it does not speak SMPP: a unit of " + (length & 0xFFFFFFFFL) + " octets");
        }
        byte[] unit = new byte[length];
        ByteBuffer.wrap(unit).putInt(length);
        in.readFully(unit, Integer.BYTES, length - Integer.BYTES);
        return unit;
    }

    static int command(byte[] unit) {
        return ByteBuffer.wrap(unit).getInt(4);
    }

    static int status(byte[] unit) {
        return ByteBuffer.wrap(unit).getInt(8);
    }

    static int sequence(byte[] unit) {
        return ByteBuffer.wrap(unit).getInt(12);
    }
}
