package yardlight.db.outbox;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * Hands out notices to be sent, each to one claimer at a time. A claim whose claimer dies comes back after a lease, or
 * when the gateway starts again: the notice is then sent a second time, under the same id.
 */
public interface Outbox {

    /** Claims up to so many notices of this channel that may be sent at {@code now}, the longest waiting first. */
    List<Outgoing> claim(String channel, Instant now, int limit);

    /** Claims notices of any channel but these. */
    List<Outgoing> claimOthers(Collection<String> channels, Instant now, int limit);

    /** Whether the notice still is to be sent, by the same line and by us: asked right before it goes. The lease runs anew. */
    boolean wanted(Outgoing outgoing);

    /** Keeps the claims of what is in hand, however long sending takes: to be called at least each second. */
    void renew();

    /** The outcome is stored. */
    void done(Outgoing outgoing);

    /** It was not sent: it may be claimed again at once. */
    void giveBack(Outgoing outgoing);

    /**
     * Notices of any channel that got into the outbox after {@code from} and not after {@code to}, the longest waiting
     * first; claimed or not.
     */
    List<Outgoing> waiting(Instant from, Instant to, int limit);

    /** When the next rung is due of what the notice is about; empty when none is. */
    Optional<Instant> nextRung(Outgoing outgoing);

    /** Whether somebody is called anyway if this is not sent: one of its callouts has a next step. */
    boolean followed(Outgoing outgoing);

    /** The first time after {@code now} at which there is something to claim. */
    Optional<Instant> next(Instant now);
}
