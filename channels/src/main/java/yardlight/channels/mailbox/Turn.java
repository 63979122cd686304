package yardlight.channels.mailbox;

/** Whose turn it is to read, of several gateways: it is one's at a time. */
public interface Turn {

    /** Whether it is ours; taken, if nobody has it. Asked before each look. */
    boolean mine();

    /** We cannot read now: whoever can may. */
    void leave();
}
