package yardlight.gateway;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.PreparedStatementSetter;
import yardlight.db.columns.AlarmColumns;
import yardlight.db.columns.CalloutColumns;
import yardlight.db.columns.LogColumns;
import yardlight.db.columns.NoticeColumns;
import yardlight.db.columns.Table;
import yardlight.escalation.Escalator;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.rehearsal.Happening;
import yardlight.escalation.rehearsal.Simulation;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;

/** Some nights that a gateway never had, in its record: played by the engine, and written down as it writes them. */
public final class PastRows {

    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

    /** Below all lines that the gateway writes, so that they do not get into each other's way. */
    private static final long FIRST_LINE = -1_000_000;

    private static final String BOX = "-past";

    private final JdbcTemplate jdbc;
    private final String site;
    private final Setup setup;
    private final Simulation simulation;
    private final Map<String, Alarm> alarms = new LinkedHashMap<>();
    private final Map<String, Callout> callouts = new LinkedHashMap<>();
    private final Map<String, Instant> taken = new LinkedHashMap<>();
    private final List<LogColumns.Line> lines = new ArrayList<>();

    public PastRows(JdbcTemplate jdbc, Setup given, String site) {
        this.jdbc = jdbc;
        this.site = site;
        List<Box> boxes = given.boxes().values().stream()
                .map(box -> new Box(
                        box.id(), box.site(), box.feed(), box.link(), box.battery(), Optional.empty(), box.grace()))
                .toList();
        this.setup = new Setup(
                        List.copyOf(given.sites().values()),
                        boxes,
                        given.points(),
                        List.copyOf(given.contacts().values()),
                        List.copyOf(given.rosters().values()),
                        List.copyOf(given.ladders().values()))
                .withBox(BOX, site);
        var code = new AtomicInteger(10);
        simulation = new Simulation(setup, new Escalator(Links.NONE, code::getAndIncrement));
        simulation.watch(this::write);
    }

    /** Whatever was written by this is gone. */
    public static void forget(JdbcTemplate jdbc, String site) {
        jdbc.update("delete from log_line where line < 0");
        jdbc.update("delete from alarm where point like 'past-%'");
        jdbc.update("delete from notice_callout where callout like '" + site + ".past-%'");
        jdbc.update("delete from notice where callouts like '%" + site + ".past-%'");
        jdbc.update("delete from callout where id like '" + site + ".past-%'");
    }

    /** An alarm that lasts for an hour, so many days before; whoever answers does so so long after their first text. */
    public PastRows night(
            Instant now, int daysAgo, String time, String point, Priority priority, String by, int minutes) {
        Instant at = now.atZone(CHICAGO)
                .toLocalDate()
                .minusDays(daysAgo)
                .atTime(LocalTime.parse(time))
                .atZone(CHICAGO)
                .toInstant();
        AlarmKey key = new AlarmKey(site, "past-" + point, "high");
        simulation.at(at, reported(key, at, true, priority));
        simulation.at(at.plus(Duration.ofHours(1)), reported(key, at.plus(Duration.ofHours(1)), false, priority));
        boolean[] answered = {by.isEmpty()};
        simulation.watch(step -> step.decision().changes().notices().stream()
                .filter(notice -> !answered[0] && !step.at().isBefore(at))
                .filter(notice -> notice.state() == NoticeState.HANDED_OVER
                        && notice.contact().equals(by))
                .forEach(notice -> {
                    answered[0] = true;
                    simulation.at(
                            step.at().plus(Duration.ofMinutes(minutes)),
                            new Stimulus.AnswerNotice(notice.id(), "link"));
                }));
        return this;
    }

    private static Stimulus reported(AlarmKey key, Instant at, boolean active, Priority priority) {
        return new Stimulus.Reported(
                BOX,
                List.of(new Report(key, Optional.of(BOX), active, Optional.of(priority), Measured.NOTHING, at, false)));
    }

    private void write(Happening step) {
        step.decision()
                .entries()
                .forEach(entry ->
                        lines.add(new LogColumns.Line(FIRST_LINE + lines.size(), step.at(), entry, new byte[32])));
        step.decision().changes().alarms().forEach(alarm -> alarms.put(alarm.id(), alarm));
        step.decision().changes().callouts().forEach(callout -> callouts.put(callout.id(), callout));
        for (Notice notice : step.decision().changes().notices()) {
            if (notice.state() == NoticeState.QUEUED) {
                simulation.at(
                        step.at(),
                        new Stimulus.NoticeFate(notice.id(), notice.line(), Stimulus.Fate.HANDED_OVER, "250 taken"));
            } else if (notice.state() == NoticeState.HANDED_OVER) {
                taken.putIfAbsent(notice.id(), step.at());
            }
        }
    }

    public void keep(Instant until) {
        simulation.run(until);
        insert(LogColumns.TABLE, lines);
        insert(
                AlarmColumns.TABLE,
                alarms.values().stream()
                        .filter(alarm -> alarm.occurrence() > 0)
                        .map(alarm -> new AlarmColumns.Occurrence(alarm, false))
                        .toList());
        insert(CalloutColumns.TABLE, List.copyOf(callouts.values()));
        for (Notice notice : simulation.picture().notices()) {
            insert(
                    NoticeColumns.TABLE,
                    List.of(new NoticeColumns.KeptNotice(
                            notice,
                            setup.line(notice.contact(), notice.line()).map(line -> line.channel()),
                            Optional.ofNullable(taken.get(notice.id())),
                            Optional.empty())));
            notice.callouts()
                    .forEach(callout -> jdbc.update(
                            "insert into notice_callout (notice, callout) values (?, ?)", notice.id(), callout));
        }
    }

    private <T> void insert(Table<T> table, List<T> rows) {
        for (T row : rows) {
            PreparedStatementSetter values = statement -> table.bindInsert(statement, row);
            jdbc.update(table.insert(), values);
        }
    }
}
