package yardlight.gateway;

/** Real trouble with memory, as the virtual machine makes it. */
public final class OutOfMemory {

    private static volatile long[] taken;

    private OutOfMemory() {}

    /**
     * Asks for more than any heap has, in the thread that calls.
     *
     * @throws OutOfMemoryError always
     */
    public static <T> T now() {
        taken = new long[Integer.MAX_VALUE];
        throw new AssertionError("there is memory for " + taken.length + " numbers");
    }

    /** The error of {@link #now}, for who throws it in a moment. */
    public static OutOfMemoryError caught() {
        try {
            return now();
        } catch (OutOfMemoryError real) {
            return real;
        }
    }
}
