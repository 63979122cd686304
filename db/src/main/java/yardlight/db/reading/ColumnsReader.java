package yardlight.db.reading;

import java.io.ByteArrayOutputStream;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** Reads what {@link Columns} wrote. */
final class ColumnsReader {

    private final byte[] bytes;
    private int place;

    ColumnsReader(byte[] packed) {
        this.bytes = unpacked(packed);
    }

    private static byte[] unpacked(byte[] packed) {
        var inflater = new Inflater(true);
        try {
            // One byte more than there is: without a header the inflater asks for it.
            byte[] input = java.util.Arrays.copyOf(packed, packed.length + 1);
            inflater.setInput(input);
            var out = new ByteArrayOutputStream(packed.length * 4);
            byte[] part = new byte[8192];
            while (!inflater.finished()) {
                int count = inflater.inflate(part);
                if (count == 0 && !inflater.finished()) {
                    throw new IllegalStateException("a packed day ends too early");
                }
                out.write(part, 0, count);
            }
            return out.toByteArray();
        } catch (DataFormatException e) {
            throw new IllegalStateException("a packed day cannot be read", e);
        } finally {
            inflater.end();
        }
    }

    long number() {
        long rest = 0;
        for (int shift = 0; shift < Long.SIZE; shift += 7) {
            byte part = bytes[place++];
            rest |= (long) (part & 0x7F) << shift;
            if (part >= 0) {
                break;
            }
        }
        return rest >>> 1 ^ -(rest & 1);
    }

    long[] steady(int count) {
        long[] values = new long[count];
        long last = 0;
        long distance = 0;
        for (int i = 0; i < count; i++) {
            distance += number();
            last += distance;
            values[i] = last;
        }
        return values;
    }

    long[] near(int count) {
        long[] values = new long[count];
        long last = 0;
        for (int i = 0; i < count; i++) {
            last += number();
            values[i] = last;
        }
        return values;
    }

    double[] decimals(int count) {
        int decimals = bytes[place++] & 0xFF;
        if (decimals == Columns.BITS) {
            return bits(count);
        }
        double scale = Math.pow(10, decimals);
        double[] values = new double[count];
        long last = 0;
        for (int i = 0; i < count; i++) {
            last += number();
            values[i] = last / scale;
        }
        return values;
    }

    private double[] bits(int count) {
        long[] all = new long[count];
        for (int shift = Long.SIZE - Byte.SIZE; shift >= 0; shift -= Byte.SIZE) {
            for (int i = 0; i < count; i++) {
                all[i] |= (bytes[place++] & 0xFFL) << shift;
            }
        }
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = Double.longBitsToDouble(all[i]);
        }
        return values;
    }
}
