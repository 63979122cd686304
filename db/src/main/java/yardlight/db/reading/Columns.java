package yardlight.db.reading;

import java.io.ByteArrayOutputStream;
import java.util.zip.Deflater;

/**
 * Writes columns of numbers so that they compress well: times as changes of their distance, decimals as changes of a whole
 * number. What comes out of {@link ColumnsReader} is to the last bit what went in.
 */
final class Columns {

    /** More digits after the point than these no box can post. */
    static final int MOST_DECIMALS = 9;

    /** Instead of a number of decimals: each value as its 64 bits. */
    static final int BITS = 255;

    private static final double EXACT = 1L << 53;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    Columns number(long value) {
        long rest = value << 1 ^ value >> 63;
        while ((rest & ~0x7FL) != 0) {
            out.write((int) (rest & 0x7F | 0x80));
            rest >>>= 7;
        }
        out.write((int) rest);
        return this;
    }

    /** Values that mostly grow by the same. */
    Columns steady(long[] values) {
        long last = 0;
        long distance = 0;
        for (long value : values) {
            number(value - last - distance);
            distance = value - last;
            last = value;
        }
        return this;
    }

    /** Values that mostly stay near the one before. */
    Columns near(long[] values) {
        long last = 0;
        for (long value : values) {
            number(value - last);
            last = value;
        }
        return this;
    }

    Columns decimals(double[] values) {
        int decimals = decimalsOf(values);
        out.write(decimals);
        if (decimals == BITS) {
            bits(values);
            return this;
        }
        long[] whole = new long[values.length];
        for (int i = 0; i < values.length; i++) {
            whole[i] = (long) Math.rint(values[i] * Math.pow(10, decimals));
        }
        return near(whole);
    }

    /** All the first bytes, then all the second ones: those in front hardly change. */
    private void bits(double[] values) {
        for (int shift = Long.SIZE - Byte.SIZE; shift >= 0; shift -= Byte.SIZE) {
            for (double value : values) {
                out.write((int) (Double.doubleToRawLongBits(value) >>> shift));
            }
        }
    }

    /** With how many digits after the point all of them can be written; {@link #BITS} when with none that is enough. */
    static int decimalsOf(double[] values) {
        int decimals = 0;
        for (double value : values) {
            while (decimals <= MOST_DECIMALS && !isDecimal(value, Math.pow(10, decimals))) {
                decimals++;
            }
        }
        // One that came before may be too large for the digits that a later one needs.
        double scale = Math.pow(10, decimals);
        for (double value : values) {
            if (decimals > MOST_DECIMALS || !isDecimal(value, scale)) {
                return BITS;
            }
        }
        return decimals;
    }

    private static boolean isDecimal(double value, double scale) {
        double scaled = Math.rint(value * scale);
        return Math.abs(scaled) < EXACT
                && Double.doubleToRawLongBits((long) scaled / scale) == Double.doubleToRawLongBits(value);
    }

    byte[] packed() {
        var deflater = new Deflater(Deflater.BEST_COMPRESSION, true);
        try {
            deflater.setInput(out.toByteArray());
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
}
