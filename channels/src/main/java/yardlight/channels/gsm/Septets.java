package yardlight.channels.gsm;

/**
 * Characters of 7 bits packed into octets, the lowest bit first (3GPP TS 23.038 clause 6.1.2.1.1), and unpacked again.
 *
 * <p>Seven spare bits at the end look like one more character, {@code @}. So whoever unpacks must know how many there are.
 */
public final class Septets {

    private static final int BITS = 7;
    private static final int MASK = 0x7F;

    private Septets() {}

    /** {@link #pack(byte[], int)} from the first bit on. */
    public static byte[] pack(byte[] septets) {
        return pack(septets, 0);
    }

    /**
     * One septet an octet in, packed octets out. An {@link IllegalArgumentException} for what is no septet.
     *
     * @param fill bits, 0 to 6, that stay zero before the first septet, so that it starts on a septet's boundary after a
     *     header (3GPP TS 23.040 clause 9.2.3.24)
     */
    public static byte[] pack(byte[] septets, int fill) {
        requireFill(fill);
        byte[] octets = new byte[octets(septets.length, fill)];
        for (int i = 0; i < septets.length; i++) {
            if (septets[i] < 0) {
                throw new IllegalArgumentException("septet must be below 128: " + (septets[i] & 0xFF));
            }
            int bit = fill + i * BITS;
            int shifted = septets[i] << bit % 8;
            octets[bit / 8] |= (byte) shifted;
            if (shifted > 0xFF) {
                octets[bit / 8 + 1] |= (byte) (shifted >> 8);
            }
        }
        return octets;
    }

    /**
     * The septets, one an octet. An {@link IllegalArgumentException} if there are not as many.
     *
     * @param count how many
     * @param fill bits, 0 to 6, to leave out at the beginning
     */
    public static byte[] unpack(byte[] octets, int count, int fill) {
        requireFill(fill);
        if (count < 0 || octets(count, fill) > octets.length) {
            throw new IllegalArgumentException(
                    "there must be " + count + " septets after " + fill + " bits in " + octets.length + " octets");
        }
        byte[] septets = new byte[count];
        for (int i = 0; i < count; i++) {
            int bit = fill + i * BITS;
            int pair = octets[bit / 8] & 0xFF;
            if (bit / 8 + 1 < octets.length) {
                pair |= (octets[bit / 8 + 1] & 0xFF) << 8;
            }
            septets[i] = (byte) (pair >> bit % 8 & MASK);
        }
        return septets;
    }

    /** How many octets so many septets take after so many bits. */
    static int octets(int septets, int fill) {
        return (fill + septets * BITS + 7) / 8;
    }

    private static void requireFill(int fill) {
        if (fill < 0 || fill >= BITS) {
            throw new IllegalArgumentException("fill bits must be 0 to 6: " + fill);
        }
    }
}
