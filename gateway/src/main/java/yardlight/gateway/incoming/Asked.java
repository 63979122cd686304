package yardlight.gateway.incoming;

/** Understands texts of people and does what they ask for. */
public interface Asked {

    /**
     * @param from the address that the carrier vouches for
     * @param text whatever was written
     * @return one line for the sender; empty when they are not to be answered
     */
    String answer(String from, String text);
}
