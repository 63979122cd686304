package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;
import yardlight.escalation.notice.Awaited;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;

/** What carriers say of notices: taken, delivered, refused, or nothing at all. */
final class Fates {

    /** Receipts take seconds: however near the next rung is, they get this long. */
    private static final Duration LEAST_FOR_A_RECEIPT = Duration.ofSeconds(10);

    private final Draft draft;
    private final Climbs climbs;
    private final Notices notices;
    private final Carriers carriers;

    Fates(Draft draft, Climbs climbs, Notices notices) {
        this.draft = draft;
        this.climbs = climbs;
        this.notices = notices;
        this.carriers = new Carriers(draft);
    }

    /** Takes a carrier's word. When the last line of everybody on a rung refuses, the callout moves on at once. */
    Answer take(Stimulus.NoticeFate fate) {
        draft.notice(fate.notice()).ifPresent(notice -> take(notice, fate));
        return new Answer.Done();
    }

    private void take(Notice notice, Stimulus.NoticeFate fate) {
        new Proofs(draft).heard(notice, fate);
        // What was taken is taken, by whichever line; the rest is no news once another line is tried.
        boolean current = notice.state() == NoticeState.QUEUED && notice.line() == fate.line();
        switch (fate.fate()) {
            case HANDED_OVER -> handedOver(notice, fate);
            case DELIVERED -> settled(notice.onLine(fate.line()), NoticeState.DELIVERED, fate.detail());
            case REFUSED -> {
                boolean takenBack = notice.state() == NoticeState.HANDED_OVER && notice.line() == fate.line();
                if (current) {
                    refused(notice, "refused: " + fate.detail());
                } else if (takenBack && draft.wanted(notice)) {
                    takenBack(notice, "refused: " + fate.detail());
                } else if (takenBack) {
                    settled(notice, NoticeState.REFUSED, fate.detail());
                }
            }
            case UNCERTAIN -> {
                if (current) {
                    uncertain(notice, fate.detail());
                }
            }
        }
    }

    /**
     * Nobody took it in time. The next line is tried without waiting for the rung, and after the last one the best that is not
     * down: it may work by now.
     */
    Answer overdue(Stimulus.Overdue said) {
        draft.notice(said.notice())
                .filter(notice -> notice.state() == NoticeState.QUEUED && notice.line() == said.line())
                .ifPresent(this::overdue);
        return new Answer.Done();
    }

    private void overdue(Notice notice) {
        OptionalInt next = next(notice);
        if (next.isPresent()) {
            onto(next.getAsInt(), notice, "not handed over in time");
        } else if (notice.purpose() != Purpose.TEST) {
            OptionalInt best = carriers.line(notice.onLine(0));
            if (best.isPresent() && best.getAsInt() != notice.line()) {
                draft.put(notice.onLine(best.getAsInt()));
                draft.log(
                        notice,
                        "not handed over in time by the last line; tried again from line " + (best.getAsInt() + 1));
            }
        }
    }

    /** It was taken and no receipt came in time. The same, as long as somebody has to hear of it. */
    Answer due(Stimulus.NoticeDue said) {
        draft.notice(said.notice())
                .filter(notice ->
                        notice.dueAt().filter(at -> !at.isAfter(draft.now())).isPresent())
                .ifPresent(notice -> noReceipt(notice, notice.awaited().orElseThrow()));
        return new Answer.Done();
    }

    private void noReceipt(Notice notice, Awaited word) {
        draft.put(notice.as(NoticeState.HANDED_OVER));
        if (draft.wanted(notice)) {
            String words = ReceiptWords.missing(draft.setup(), notice, word, draft.now());
            OptionalInt next = next(notice);
            Optional<Instant> quiet = quiet(notice);
            if (next.isEmpty()) {
                draft.log(notice, words + "; no other line works");
            } else if (quiet.isPresent() && notice.purpose() != Purpose.CALL) {
                draft.log(notice, words + "; quiet hours");
            } else if (quiet.isPresent()) {
                draft.log(notice, words);
                notices.keep(notice.onLine(0), quiet.get(), "quiet hours");
            } else {
                onto(next.getAsInt(), notice, words);
            }
        }
    }

    /** Whoever has gone to sleep meanwhile counts as if they had been asleep when they were called. */
    private void takenBack(Notice notice, String words) {
        OptionalInt next = next(notice);
        Optional<Instant> quiet = quiet(notice);
        if (quiet.isPresent() && notice.purpose() != Purpose.CALL) {
            draft.put(notice.as(NoticeState.REFUSED));
            draft.log(notice, words + "; quiet hours");
        } else if (next.isPresent() && quiet.isPresent()) {
            draft.log(notice, words);
            notices.keep(notice.onLine(next.getAsInt()), quiet.get(), "quiet hours");
            notice.callouts()
                    .forEach(id -> draft.callout(id)
                            .ifPresent(callout -> climbs.notNow(callout, notice.contact(), quiet.get())));
        } else {
            refused(notice, words);
        }
    }

    /** Until when what was taken does not go out once more, because their quiet hours have begun since. */
    private Optional<Instant> quiet(Notice notice) {
        return Optional.ofNullable(draft.setup().contacts().get(notice.contact()))
                .filter(contact -> notice.purpose() != Purpose.ALLS_WELL && notice.purpose() != Purpose.TEST)
                .flatMap(contact -> PeopleNow.heldUntil(contact, notice.priority(), draft.now()));
    }

    /** What has arrived has arrived; of two lines that took it, what the first of them says counts. */
    private void handedOver(Notice notice, Stimulus.NoticeFate fate) {
        if (notice.state() == NoticeState.HANDED_OVER || notice.state() == NoticeState.DELIVERED) {
            draft.log(notice, "handed over once more: " + fate.detail());
            return;
        }
        Notice taken = notice.onLine(fate.line());
        settled(taken, NoticeState.HANDED_OVER, fate.detail());
        fate.receiptWithin()
                .filter(within -> hasMore(taken) && draft.wanted(taken))
                .ifPresent(within -> draft.put(taken.as(NoticeState.HANDED_OVER).awaiting(awaited(taken, within))));
    }

    /** A receipt is waited for during half of the time to the next rung at most: another line needs the other half. */
    private Awaited awaited(Notice taken, Duration within) {
        Instant now = draft.now();
        Duration wait = taken.callouts().stream()
                .flatMap(id -> draft.callout(id).stream())
                .flatMap(callout -> callout.dueAt().stream())
                .min(Instant::compareTo)
                .map(rung -> Duration.between(now, rung).dividedBy(2))
                .map(half -> half.compareTo(LEAST_FOR_A_RECEIPT) < 0 ? LEAST_FOR_A_RECEIPT : half)
                .filter(half -> half.compareTo(within) < 0)
                .orElse(within);
        return new Awaited(now, now.plus(wait));
    }

    private void settled(Notice notice, NoticeState state, String detail) {
        draft.put(notice.as(state));
        draft.log(notice, state.word().replace('-', ' ') + ": " + detail);
    }

    private void refused(Notice notice, String words) {
        OptionalInt next = next(notice);
        if (next.isPresent()) {
            onto(next.getAsInt(), notice, words);
        } else {
            draft.put(notice.as(NoticeState.REFUSED));
            draft.log(notice, words + (hasMore(notice) ? "; no other carrier to them works" : "; no line is left"));
            if (notice.purpose() == Purpose.CALL) {
                notice.callouts()
                        .forEach(id ->
                                draft.callout(id).ifPresent(callout -> climbs.notReached(callout, notice.contact())));
            }
        }
    }

    private void uncertain(Notice notice, String words) {
        OptionalInt next = next(notice);
        if (next.isPresent()) {
            onto(next.getAsInt(), notice, words);
        } else {
            settled(notice, NoticeState.HANDED_OVER, words);
        }
    }

    private void onto(int line, Notice notice, String why) {
        draft.put(notice.onLine(line).as(NoticeState.QUEUED));
        draft.log(notice, why + "; the next line is tried");
    }

    private OptionalInt next(Notice notice) {
        return hasMore(notice) ? carriers.line(notice.onLine(notice.line() + 1)) : OptionalInt.empty();
    }

    /** Whether there is a line after this one that may be used, whether or not its carrier works. */
    private boolean hasMore(Notice notice) {
        return notice.purpose() != Purpose.TEST && carriers.has(notice.contact(), notice.line() + 1);
    }
}
