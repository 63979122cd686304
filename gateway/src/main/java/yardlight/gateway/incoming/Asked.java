package yardlight.gateway.incoming;

/** Understands texts of people and does what they ask for. */
public interface Asked {

    /**
     * @param from the sender's address
     * @param text whatever was written
     * @param proven whether anything but the sender's own word vouches for it
     * @return one line for the sender; empty when they are not to be answered
     */
    String answer(String from, String text, boolean proven);

    /** Whether the answer to this text may still go to its sender, who may have stopped the line since. */
    boolean welcome(String from, String text);
}
