package yardlight.db.journal;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import yardlight.db.columns.AlarmColumns;
import yardlight.db.columns.GaugeColumns;
import yardlight.db.due.DueKey;
import yardlight.escalation.Decision;
import yardlight.escalation.Escalator;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Picture;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;

/** The same random night twice: decided from the journal, and from a picture in memory. */
final class TwinNight {

    /** What a batch led to on either side. */
    record Step(List<Stimulus> stimuli, List<Decision> stored, List<Decision> remembered) {}

    private final Setup setup = Fixtures.measuring();
    private final Picture picture = new Picture(setup);
    private final Deque<Integer> codes = new ArrayDeque<>();
    private final Escalator remembering = new Escalator(Links.NONE, codes::remove);
    private final List<Journal> journals;
    private final Random random;
    private Instant now = Fixtures.at("2026-11-25T01:00");

    /**
     * @param journals the writers, of whom one at random has the next turn
     */
    TwinNight(List<Journal> journals, long seed) {
        this.journals = journals;
        this.random = new Random(seed);
    }

    Picture picture() {
        return picture;
    }

    Setup setup() {
        return setup;
    }

    Step step() {
        now = now.plusSeconds(random.nextInt(240));
        var stimuli = new ArrayList<Stimulus>();
        for (int i = random.nextInt(4); i >= 0; i--) {
            stimuli.add(stimulus());
        }
        List<Decision> stored = store(stimuli);
        var remembered = new ArrayList<Decision>();
        for (Stimulus stimulus : stimuli) {
            Decision decision = remembering.decide(picture, stimulus, now);
            picture.apply(decision.changes());
            remembered.add(decision);
        }
        return new Step(stimuli, stored, remembered);
    }

    private List<Decision> store(List<Stimulus> stimuli) {
        var decisions = new ArrayList<Decision>();
        try (Writing writing = journals.get(random.nextInt(journals.size())).begin()) {
            Sheet sheet = writing.sheet(setup);
            var wants = new Wants(setup, now);
            stimuli.forEach(wants::add);
            sheet.prepare(wants);
            var storing = new Escalator(Links.NONE, () -> {
                codes.add(sheet.nextCode());
                return codes.getLast();
            });
            for (Stimulus stimulus : stimuli) {
                Decision decision = storing.decide(sheet, stimulus, now);
                sheet.apply(decision.changes());
                writing.log(now, decision.entries());
                fired(stimulus).ifPresent(writing::fired);
                decisions.add(decision);
            }
            writing.commit(sheet, now);
        }
        return decisions;
    }

    static Optional<DueKey> fired(Stimulus stimulus) {
        return switch (stimulus.kind()) {
            case ALARM_DUE ->
                Optional.of(new DueKey(DueKey.Kind.ALARM, AlarmColumns.key(((Stimulus.AlarmDue) stimulus).key())));
            case CALLOUT_DUE ->
                Optional.of(new DueKey(DueKey.Kind.CALLOUT, ((Stimulus.CalloutDue) stimulus).callout()));
            case NOTICE_DUE -> Optional.of(new DueKey(DueKey.Kind.NOTICE, ((Stimulus.NoticeDue) stimulus).notice()));
            case DESK_DUE -> Optional.of(new DueKey(DueKey.Kind.DESK, ((Stimulus.DeskDue) stimulus).contact()));
            case BOX_DUE -> Optional.of(new DueKey(DueKey.Kind.BOX, ((Stimulus.BoxDue) stimulus).box()));
            case GAUGE_DUE ->
                Optional.of(new DueKey(DueKey.Kind.GAUGE, GaugeColumns.id(((Stimulus.GaugeDue) stimulus).key())));
            case ALLS_WELL_DUE ->
                Optional.of(new DueKey(DueKey.Kind.WELL, ((Stimulus.AllsWellDue) stimulus).contact()));
            default -> Optional.empty();
        };
    }

    private Stimulus stimulus() {
        return switch (random.nextInt(24)) {
            case 0, 1, 2 -> reported();
            case 3 -> new Stimulus.Beat("mesa-9-box", Heartbeat.BARE);
            case 4 -> new Stimulus.AlarmDue(key());
            case 5 -> callout().<Stimulus>map(Stimulus.CalloutDue::new).orElseGet(this::reported);
            case 6 -> new Stimulus.DeskDue(random.nextBoolean() ? "ana" : "ben");
            case 7 -> new Stimulus.BoxDue("mesa-9-box");
            case 8 ->
                notice().<Stimulus>map(id -> new Stimulus.AnswerNotice(id, "link"))
                        .orElseGet(this::reported);
            case 9 ->
                notice().<Stimulus>map(id -> new Stimulus.NoticeFate(
                                id,
                                random.nextInt(2),
                                random.nextBoolean() ? Stimulus.Fate.HANDED_OVER : Stimulus.Fate.REFUSED,
                                "250 taken",
                                random.nextBoolean() ? Optional.empty() : Optional.of(Duration.ofMinutes(2))))
                        .orElseGet(this::reported);
            case 17 -> stopped();
            case 20, 21, 22 -> measured();
            case 23 -> new Stimulus.GaugeDue(new Gauge.Key("mesa-9", "water-tank"));
            case 18 -> notice().<Stimulus>map(Stimulus.NoticeDue::new).orElseGet(this::reported);
            case 11 ->
                new Stimulus.Carrier(random.nextInt(3) > 0 ? "sms-mail" : "mail", random.nextBoolean(), "421 busy");
            case 12 ->
                notice().<Stimulus>map(id -> new Stimulus.Overdue(id, random.nextInt(2)))
                        .orElseGet(this::reported);
            case 13 -> new Stimulus.TestLine("ana", random.nextInt(2), "owner");
            case 14 -> new Stimulus.Replied("ana", List.of(0, 1), List.of(random.nextInt(3)));
            case 15 -> new Stimulus.LinkUsed("ana", random.nextInt(2));
            case 16 ->
                notice().<Stimulus>map(id -> new Stimulus.PutOff(id, random.nextInt(2), "451 later"))
                        .orElseGet(this::reported);
            case 10 -> new Stimulus.Acknowledge(key(), "ana", "page", Optional.empty());
            default -> new Stimulus.Shelve(key(), Duration.ofMinutes(20), "work on the tank", "ben");
        };
    }

    private Stimulus measured() {
        var readings = new ArrayList<Reading>();
        for (int i = random.nextInt(5); i >= 0; i--) {
            Instant at = now.minusSeconds(random.nextInt(600));
            readings.add(new Reading("mesa-9", "water-tank", 15 + random.nextInt(50) / 10.0, at));
        }
        return new Stimulus.Measured("mesa-9-box", readings);
    }

    private Stimulus stopped() {
        Contact contact = random.nextBoolean() ? Fixtures.ana() : Fixtures.ben();
        String address =
                contact.lines().get(random.nextInt(contact.lines().size())).address();
        return new Stimulus.Stopped(contact.id(), address, random.nextBoolean(), "STOP or START");
    }

    private Stimulus reported() {
        var reports = new ArrayList<Report>();
        for (int i = random.nextInt(3); i >= 0; i--) {
            reports.add(new Report(
                    key(),
                    Optional.of("mesa-9-box"),
                    random.nextInt(3) > 0,
                    random.nextBoolean() ? Optional.empty() : Optional.of(Priority.values()[random.nextInt(4)]),
                    random.nextBoolean() ? Measured.NOTHING : Fixtures.measured("18.40", "18.0", "ft"),
                    now.minusSeconds(random.nextInt(100)),
                    random.nextBoolean()));
        }
        return new Stimulus.Reported("mesa-9-box", reports);
    }

    private AlarmKey key() {
        return switch (random.nextInt(4)) {
            case 0 -> Fixtures.TANK;
            case 1 -> Fixtures.PUMP;
            case 2 -> new AlarmKey("mesa-9", "power-pump", "power-off");
            default -> new AlarmKey("mesa-9", "separator", "low");
        };
    }

    private Optional<String> callout() {
        return any(picture.callouts().stream().map(one -> one.id()).toList());
    }

    private Optional<String> notice() {
        return any(picture.notices().stream().map(Notice::id).toList());
    }

    private Optional<String> any(List<String> ids) {
        return ids.isEmpty() ? Optional.empty() : Optional.of(ids.get(random.nextInt(ids.size())));
    }
}
