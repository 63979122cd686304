package yardlight.db.journal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardlight.db.columns.Column;
import yardlight.db.columns.NoticeColumns;
import yardlight.db.columns.NoticeColumns.KeptNotice;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.setup.Contact;

/**
 * Writes changed notices, and keeps the outbox in step: a notice is in it while it is queued, and starts afresh there
 * when it moves on to another line.
 */
final class NoticeStore {

    /** Stands for the channel of a notice whose contact has no such line, so that the outbox shows it. */
    private static final String NO_LINE = "none";

    private static final String LINK = "insert into notice_callout (notice, callout) values (?, ?)";
    private static final String TAKE_OUT = "delete from outbox where notice = ?";
    private static final String PUT_IN =
            "insert into outbox (notice, channel, ready_at, queued_at, deferrals, doubts) values (?, ?, ?, ?, 0, 0)";
    private static final String PUT_OFF = "update outbox set ready_at = ?, claimed_by = null, deferrals = ?, doubts = ?"
            + " where notice = ? and queued_at = ?";

    private record Link(String notice, String callout) {}

    private final Pen pen;
    private final Sheet sheet;
    private final Instant now;

    NoticeStore(Pen pen, Sheet sheet, Instant now) {
        this.pen = pen;
        this.sheet = sheet;
        this.now = now;
    }

    /**
     * @param written every notice that was written
     * @param queued how many of them are newly in the outbox
     */
    record Result(List<KeptNotice> written, int queued) {}

    Result write() {
        var inserts = new ArrayList<KeptNotice>();
        var updates = new ArrayList<KeptNotice>();
        for (Notice notice : sheet.changed().notices.values()) {
            KeptNotice before = before(notice);
            boolean isNew = before == null;
            KeptNotice from = isNew ? new KeptNotice(notice, none(), none(), none()) : before;
            boolean asTried = notice.state() != NoticeState.QUEUED
                    && notice.line() == from.notice().line();
            Optional<String> channel = asTried ? from.channel() : channel(notice);
            (isNew ? inserts : updates).add(from.next(notice, channel, now));
        }
        pen.insert(NoticeColumns.TABLE, inserts);
        pen.update(NoticeColumns.TABLE, updates);
        links(inserts);
        var all = new ArrayList<>(inserts);
        all.addAll(updates);
        return new Result(all, outbox(all));
    }

    void putOff(List<Retry> retries) {
        pen.write(PUT_OFF, retries, (statement, retry) -> {
            statement.setObject(1, Column.stored(retry.at()));
            statement.setInt(2, retry.deferrals());
            statement.setInt(3, retry.doubts());
            statement.setString(4, retry.notice());
            statement.setObject(5, Column.stored(retry.since()));
        });
    }

    private void links(List<KeptNotice> inserts) {
        List<Link> links = inserts.stream()
                .flatMap(row -> row.notice().callouts().stream()
                        .map(callout -> new Link(row.notice().id(), callout)))
                .toList();
        pen.write(LINK, links, (statement, link) -> {
            statement.setString(1, link.notice());
            statement.setString(2, link.callout());
        });
    }

    private int outbox(List<KeptNotice> rows) {
        var out = new ArrayList<String>();
        var in = new ArrayList<KeptNotice>();
        for (KeptNotice row : rows) {
            KeptNotice before = before(row.notice());
            boolean was = queued(before);
            boolean is = queued(row);
            boolean moved = was && is && before.notice().line() != row.notice().line();
            if (was && (!is || moved)) {
                out.add(row.notice().id());
            }
            if (is && (!was || moved)) {
                in.add(row);
            }
        }
        pen.write(TAKE_OUT, out, (statement, id) -> statement.setString(1, id));
        pen.write(PUT_IN, in, (statement, row) -> {
            statement.setString(1, row.notice().id());
            statement.setString(2, row.channel().orElse(NO_LINE));
            statement.setObject(3, Column.stored(now));
            statement.setObject(4, Column.stored(now));
        });
        return in.size();
    }

    private KeptNotice before(Notice notice) {
        return sheet.kept().notices.get(notice.id());
    }

    private static <T> Optional<T> none() {
        return Optional.empty();
    }

    private static boolean queued(KeptNotice row) {
        return row != null && row.notice().state() == NoticeState.QUEUED;
    }

    private Optional<String> channel(Notice notice) {
        Contact contact = sheet.setup().contacts().get(notice.contact());
        return contact == null || notice.line() >= contact.lines().size()
                ? Optional.empty()
                : Optional.of(contact.lines().get(notice.line()).channel());
    }
}
