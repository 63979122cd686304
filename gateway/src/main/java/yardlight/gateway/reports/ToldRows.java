package yardlight.gateway.reports;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardlight.db.alarm.RecordedAttempt;
import yardlight.db.alarm.RecordedCallout;
import yardlight.db.alarm.RecordedNotice;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Names;

/** Who was told, try by try. */
final class ToldRows {

    private static final String TAKEN = "accepted";

    private final Setup setup;
    private final Map<String, List<Long>> lines;

    /** @param lines those of the log, by the notice */
    ToldRows(Setup setup, Map<String, List<Long>> lines) {
        this.setup = setup;
        this.lines = lines;
    }

    /**
     * Each notice once, also when it is about several callouts; in the order in which they were made.
     *
     * @param alarm what they are to have told of: one that joined a callout is not in the texts that were written before it
     */
    List<ToldRow> of(List<RecordedCallout> callouts, Alarm alarm) {
        var notices = new LinkedHashMap<String, RecordedNotice>();
        callouts.stream()
                .flatMap(callout -> callout.notices().stream())
                .filter(notice -> notice.notice().knows(alarm))
                .forEach(notice -> notices.putIfAbsent(notice.notice().id(), notice));
        return notices.values().stream()
                .sorted(java.util.Comparator.comparing(
                        (RecordedNotice one) -> one.notice().queuedAt()))
                .flatMap(notice -> rows(notice).stream())
                .toList();
    }

    private List<ToldRow> rows(RecordedNotice notice) {
        if (notice.attempts().isEmpty()) {
            return List.of(row(
                    notice,
                    notice.channel(),
                    Optional.empty(),
                    Optional.empty(),
                    notice.notice().state().word(),
                    ""));
        }
        int last = lastTaken(notice.attempts());
        var rows = new ArrayList<ToldRow>();
        for (int i = 0; i < notice.attempts().size(); i++) {
            RecordedAttempt attempt = notice.attempts().get(i);
            rows.add(row(
                    notice,
                    Optional.of(attempt.channel()),
                    Optional.of(attempt.at()),
                    i == last ? notice.deliveredAt() : Optional.empty(),
                    attempt.outcome(),
                    attempt.detail()));
        }
        return rows;
    }

    /** A carrier says of the newest try that it arrived; of a receipt for an older one only the notice knows. */
    private static int lastTaken(List<RecordedAttempt> attempts) {
        int last = attempts.size() - 1;
        while (last > 0 && !attempts.get(last).outcome().equals(TAKEN)) {
            last--;
        }
        return last;
    }

    private ToldRow row(
            RecordedNotice recorded,
            Optional<String> channel,
            Optional<Instant> tried,
            Optional<Instant> delivered,
            String outcome,
            String detail) {
        var notice = recorded.notice();
        return new ToldRow(
                notice.id(),
                notice.contact(),
                new Names(setup).contact(notice.contact()),
                notice.purpose().word(),
                channel,
                notice.queuedAt(),
                tried,
                outcome.equals(TAKEN) ? tried : Optional.empty(),
                delivered,
                outcome,
                Hidden.of(detail, Optional.ofNullable(setup.contacts().get(notice.contact()))),
                lines.getOrDefault(notice.id(), List.of()));
    }
}
