package yardlight.db.alarm;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.columns.CalloutColumns;
import yardlight.db.columns.NoticeColumns;
import yardlight.db.columns.NoticeColumns.KeptNotice;
import yardlight.db.columns.Row;
import yardlight.db.columns.Slices;
import yardlight.db.columns.Table;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;

/** Adds to alarms what was done about them: three queries for each thousand, as {@link Slices} has it. */
final class Stories {

    private static final String CALLOUTS = CalloutColumns.TABLE.among("id");
    private static final String NOTICES = NoticeColumns.OF_CALLOUTS;
    private static final String ATTEMPTS = "select t.notice, t.attempted_at, t.channel, t.outcome, t.detail from "
            + Table.WANTED + " join attempt t on t.notice = wanted.one order by t.number";

    private static final Comparator<Notice> OLDEST_FIRST =
            Comparator.comparing(Notice::queuedAt).thenComparing(Notice::id);

    private record OfNotice(String notice, RecordedAttempt attempt) {}

    private final JdbcTemplate jdbc;

    Stories(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    List<RecordedAlarm> of(List<Alarm> alarms) {
        Map<String, RecordedCallout> byId = new HashMap<>();
        callouts(alarms.stream()
                        .flatMap(alarm -> alarm.callout().stream())
                        .distinct()
                        .toList())
                .forEach(one -> byId.put(one.callout().id(), one));
        return alarms.stream()
                .map(alarm -> new RecordedAlarm(alarm, alarm.callout().map(byId::get)))
                .toList();
    }

    List<RecordedCallout> callouts(Collection<String> ids) {
        List<Callout> callouts = Slices.query(jdbc, CALLOUTS, ids, (rows, n) -> CalloutColumns.read(new Row(rows)));
        Collection<KeptNotice> notices = notices(callouts);
        Map<String, List<OfNotice>> attempts = Slices.query(
                        jdbc,
                        ATTEMPTS,
                        notices.stream().map(one -> one.notice().id()).toList(),
                        (rows, n) -> attempt(new Row(rows)))
                .stream()
                .collect(Collectors.groupingBy(OfNotice::notice));
        Map<String, List<RecordedNotice>> told = new HashMap<>();
        for (KeptNotice one : notices) {
            RecordedNotice notice = notice(one, attempts);
            one.notice()
                    .callouts()
                    .forEach(callout -> told.computeIfAbsent(callout, any -> new ArrayList<>())
                            .add(notice));
        }
        return callouts.stream()
                .map(callout -> new RecordedCallout(callout, told.getOrDefault(callout.id(), List.of())))
                .toList();
    }

    /** Oldest first. One that tells of several callouts may come with each of them, and counts once. */
    private Collection<KeptNotice> notices(List<Callout> callouts) {
        var found = new TreeMap<Notice, KeptNotice>(OLDEST_FIRST);
        Slices.query(
                        jdbc,
                        NOTICES,
                        callouts.stream().map(Callout::id).toList(),
                        (rows, n) -> NoticeColumns.read(new Row(rows)))
                .forEach(one -> found.put(one.notice(), one));
        return found.values();
    }

    private static RecordedNotice notice(KeptNotice kept, Map<String, List<OfNotice>> attempts) {
        return new RecordedNotice(
                kept.notice(),
                kept.channel(),
                kept.handedOverAt(),
                kept.deliveredAt(),
                attempts.getOrDefault(kept.notice().id(), List.of()).stream()
                        .map(OfNotice::attempt)
                        .toList());
    }

    private static OfNotice attempt(Row row) throws SQLException {
        return new OfNotice(
                row.text("notice"),
                new RecordedAttempt(
                        row.time("attempted_at"), row.text("channel"), row.text("outcome"), row.text("detail")));
    }
}
