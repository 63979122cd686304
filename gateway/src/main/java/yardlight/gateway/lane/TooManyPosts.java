package yardlight.gateway.lane;

/** A box has spent its allowance and posted nothing but repeats; nothing was stored. */
public class TooManyPosts extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public TooManyPosts(String box) {
        super("box " + box + " posts repeats faster than it may");
    }
}
