package yardlight.escalation.notice;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.alarm.Priority;

/**
 * One message to one contact.
 *
 * @param id made of the callout and a number; also the stable part of the Message-ID
 * @param contact id of the contact
 * @param callouts what it is about: one callout, or several that were bundled
 * @param text as the person reads it, one segment; empty until it is queued
 * @param queuedAt when it was made
 * @param heldUntil until when it waits
 * @param bundledInto the notice that carried its content
 * @param line index of the contact's line that is to be tried next, or that was tried last
 * @param awaited there while its carrier is expected to say what became of it; gone with any change to it
 */
public record Notice(
        String id,
        String contact,
        List<String> callouts,
        Priority priority,
        String text,
        NoticeState state,
        Instant queuedAt,
        Optional<Instant> heldUntil,
        Optional<String> bundledInto,
        int line,
        Optional<Awaited> awaited) {

    public Notice {
        callouts = List.copyOf(callouts);
    }

    /** A notice of which nobody is expected to say anything. */
    public Notice(
            String id,
            String contact,
            List<String> callouts,
            Priority priority,
            String text,
            NoticeState state,
            Instant queuedAt,
            Optional<Instant> heldUntil,
            Optional<String> bundledInto,
            int line) {
        this(id, contact, callouts, priority, text, state, queuedAt, heldUntil, bundledInto, line, Optional.empty());
    }

    /** A notice that has only just been thought of: not worded, to be sent by the first line. */
    public static Notice made(String id, String contact, List<String> callouts, Priority priority, Instant now) {
        return new Notice(
                id, contact, callouts, priority, "", NoticeState.QUEUED, now, Optional.empty(), Optional.empty(), 0);
    }

    public Notice held(Instant until) {
        return new Notice(
                id,
                contact,
                callouts,
                priority,
                text,
                NoticeState.HELD,
                queuedAt,
                Optional.of(until),
                bundledInto,
                line);
    }

    public Notice as(NoticeState next) {
        return new Notice(id, contact, callouts, priority, text, next, queuedAt, heldUntil, bundledInto, line);
    }

    public Notice queued(String words) {
        return new Notice(
                id, contact, callouts, priority, words, NoticeState.QUEUED, queuedAt, heldUntil, bundledInto, line);
    }

    public Notice bundledInto(String other) {
        return new Notice(
                id,
                contact,
                callouts,
                priority,
                text,
                NoticeState.BUNDLED,
                queuedAt,
                heldUntil,
                Optional.of(other),
                line);
    }

    public Notice onLine(int next) {
        return new Notice(id, contact, callouts, priority, text, state, queuedAt, heldUntil, bundledInto, next);
    }

    /** The same notice, of which its carrier has to say something by then. */
    public Notice awaiting(Awaited word) {
        return new Notice(
                id,
                contact,
                callouts,
                priority,
                text,
                state,
                queuedAt,
                heldUntil,
                bundledInto,
                line,
                Optional.of(word));
    }

    /** When its carrier should have said what became of it; empty when nothing is expected. */
    public Optional<Instant> dueAt() {
        return awaited.map(Awaited::until);
    }
}
