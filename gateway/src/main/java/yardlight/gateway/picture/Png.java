package yardlight.gateway.picture;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/** Writes a canvas as a picture that everything can show: PNG, W3C third edition; 8 bits each of red, green and blue. */
final class Png {

    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final int BITS = 8;
    private static final int RGB = 2;
    /** Filter type 2: each line as its difference from the one above, which for ruled paper is mostly nothing. */
    private static final int UP = 2;

    private Png() {}

    static byte[] of(Canvas canvas) {
        try {
            var out = new ByteArrayOutputStream();
            out.write(SIGNATURE);
            chunk(out, "IHDR", header(canvas));
            chunk(out, "IDAT", packed(lines(canvas)));
            chunk(out, "IEND", new byte[0]);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] header(Canvas canvas) throws IOException {
        var header = new ByteArrayOutputStream();
        var data = new DataOutputStream(header);
        data.writeInt(canvas.width());
        data.writeInt(canvas.height());
        data.write(new byte[] {BITS, RGB, 0, 0, 0});
        return header.toByteArray();
    }

    private static byte[] lines(Canvas canvas) {
        byte[] lines = new byte[canvas.height() * (1 + 3 * canvas.width())];
        int place = 0;
        for (int y = 0; y < canvas.height(); y++) {
            lines[place++] = UP;
            for (int x = 0; x < canvas.width(); x++) {
                int dot = canvas.dot(x, y);
                int above = y == 0 ? 0 : canvas.dot(x, y - 1);
                for (int shift = 16; shift >= 0; shift -= 8) {
                    lines[place++] = (byte) ((dot >> shift) - (above >> shift));
                }
            }
        }
        return lines;
    }

    private static byte[] packed(byte[] lines) {
        var deflater = new Deflater(Deflater.BEST_COMPRESSION);
        try {
            deflater.setInput(lines);
            deflater.finish();
            var packed = new ByteArrayOutputStream();
            byte[] part = new byte[4096];
            while (!deflater.finished()) {
                packed.write(part, 0, deflater.deflate(part));
            }
            return packed.toByteArray();
        } finally {
            deflater.end();
        }
    }

    private static void chunk(ByteArrayOutputStream out, String type, byte[] content) throws IOException {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        var crc = new CRC32();
        crc.update(name);
        crc.update(content);
        var data = new DataOutputStream(out);
        data.writeInt(content.length);
        data.write(name);
        data.write(content);
        data.writeInt((int) crc.getValue());
    }
}
