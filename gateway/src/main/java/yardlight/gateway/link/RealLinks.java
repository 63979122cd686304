package yardlight.gateway.link;

import yardlight.escalation.notice.Notice;

/**
 * Puts the real link into a text that is stored with a masked one. Whoever reads the real one can answer in the name of
 * the contact: it is for that contact, and for those who may acknowledge anyway.
 */
@FunctionalInterface
public interface RealLinks {

    /** The text of the notice as it goes out, as long as the stored one. */
    String text(Notice notice);
}
