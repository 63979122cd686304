package yardlight.escalation.notice;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.Priority;

/**
 * One message to one contact.
 *
 * @param id made of the callout and a number; also the stable part of the Message-ID
 * @param contact id of the contact
 * @param callouts what it is about: one callout, or several that were bundled; none unless it is a call or news
 * @param text as the person reads it, one segment; empty until it is queued
 * @param queuedAt when it was made; of an all's-well the time that it was due
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
        Optional<Awaited> awaited,
        Purpose purpose) {

    public Notice {
        callouts = List.copyOf(callouts);
        boolean about = purpose == Purpose.CALL || purpose == Purpose.NEWS;
        if (about == callouts.isEmpty()) {
            throw new IllegalArgumentException("callouts must be there for calls and news and for nothing else: " + id);
        }
    }

    /** A call. */
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
        this(
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
                Optional.empty(),
                Purpose.CALL);
    }

    /** A notice that has only just been thought of: not worded, to be sent by the first line. */
    public static Notice made(String id, String contact, List<String> callouts, Priority priority, Instant now) {
        return new Notice(
                id, contact, callouts, priority, "", NoticeState.QUEUED, now, Optional.empty(), Optional.empty(), 0);
    }

    /** News about these callouts, not worded. */
    public static Notice news(String id, String contact, List<String> callouts, Priority priority, Instant now) {
        return new Notice(
                id,
                contact,
                callouts,
                priority,
                "",
                NoticeState.QUEUED,
                now,
                Optional.empty(),
                Optional.empty(),
                0,
                Optional.empty(),
                Purpose.NEWS);
    }

    /** One about no callout, to be sent by this line first. */
    public static Notice other(Purpose purpose, String id, String contact, Instant at, int line) {
        return new Notice(
                id,
                contact,
                List.of(),
                Priority.LOW,
                "",
                NoticeState.QUEUED,
                at,
                Optional.empty(),
                Optional.empty(),
                line,
                Optional.empty(),
                purpose);
    }

    /** One that says how a request to shut in stands. */
    public static Notice shutIn(String id, String contact, Instant at) {
        return new Notice(
                id,
                contact,
                List.of(),
                Priority.CRITICAL,
                "",
                NoticeState.QUEUED,
                at,
                Optional.empty(),
                Optional.empty(),
                0,
                Optional.empty(),
                Purpose.SHUT_IN);
    }

    /** What a line of the log about it names: itself, the contact, and the first callout if there is any. */
    public Map<String, String> about() {
        var about = new TreeMap<>(Map.of("notice", id, "contact", contact));
        callouts.stream().findFirst().ifPresent(first -> about.put("callout", first));
        return about;
    }

    public Notice held(Instant until) {
        return next(text, NoticeState.HELD, Optional.of(until), bundledInto, line);
    }

    public Notice as(NoticeState next) {
        return next(text, next, heldUntil, bundledInto, line);
    }

    public Notice queued(String words) {
        return next(words, NoticeState.QUEUED, heldUntil, bundledInto, line);
    }

    public Notice bundledInto(String other) {
        return next(text, NoticeState.BUNDLED, heldUntil, Optional.of(other), line);
    }

    public Notice onLine(int next) {
        return next(text, state, heldUntil, bundledInto, next);
    }

    private Notice next(
            String words, NoticeState where, Optional<Instant> until, Optional<String> bundle, int nextLine) {
        return new Notice(
                id,
                contact,
                callouts,
                priority,
                words,
                where,
                queuedAt,
                until,
                bundle,
                nextLine,
                Optional.empty(),
                purpose);
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
                Optional.of(word),
                purpose);
    }

    /** Whether it was written when this was known: nobody answers what came after the text that they read. */
    public boolean knows(Alarm alarm) {
        return alarm.receivedAt().filter(written()::isBefore).isEmpty();
    }

    /** When it was worded: what is held is written when it goes. */
    public Instant written() {
        return written(queuedAt, heldUntil);
    }

    /** The same of one of which no more than this is known. */
    public static Instant written(Instant queuedAt, Optional<Instant> heldUntil) {
        return heldUntil.filter(queuedAt::isBefore).orElse(queuedAt);
    }

    /** When its carrier should have said what became of it; empty when nothing is expected. */
    public Optional<Instant> dueAt() {
        return awaited.map(Awaited::until);
    }
}
