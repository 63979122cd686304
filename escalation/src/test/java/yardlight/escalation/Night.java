package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.rehearsal.Happening;
import yardlight.escalation.rehearsal.Simulation;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;

/** A scripted night at the fixtures' operator: boxes that post, a carrier that takes everything, people who may answer. */
public final class Night {

    /** A text as it arrived. */
    public record Text(
            Instant at, String contact, String words, Priority priority, List<String> callouts, Purpose purpose) {

        /** Whether it only says what became of something. */
        public boolean isNews() {
            return purpose == Purpose.NEWS;
        }
    }

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("EEE HH:mm:ss", Locale.ENGLISH);

    private final ZoneId zone = Fixtures.CHICAGO;
    private final Simulation simulation;
    private final List<Text> texts = new ArrayList<>();
    private final List<String> timeline = new ArrayList<>();
    private final List<Entry> log = new ArrayList<>();
    private final Map<String, Duration> answering = new HashMap<>();

    /** A night on which nobody expects heartbeats, so that a box that has said its piece is not missed. */
    public Night(Setup setup) {
        this(setup, false);
    }

    private Night(Setup given, boolean heartbeats) {
        Setup setup = heartbeats ? given : withoutHeartbeats(given);
        var code = new AtomicInteger(47);
        simulation = new Simulation(setup, new Escalator(Links.NONE, code::getAndIncrement));
        simulation.watch(this::see);
    }

    /** A night on which silence counts. */
    public static Night withHeartbeats(Setup setup) {
        return new Night(setup, true);
    }

    private static Setup withoutHeartbeats(Setup setup) {
        List<Box> boxes = setup.boxes().values().stream()
                .map(box -> new Box(
                        box.id(), box.site(), box.feed(), box.link(), box.battery(), Optional.empty(), box.grace()))
                .toList();
        return new Setup(
                List.copyOf(setup.sites().values()),
                boxes,
                setup.points(),
                List.copyOf(setup.contacts().values()),
                List.copyOf(setup.rosters().values()),
                List.copyOf(setup.ladders().values()));
    }

    /** The contact answers every text after this time. */
    public Night answers(String contact, Duration after) {
        answering.put(contact, after);
        return this;
    }

    public Night active(String local, AlarmKey key) {
        return report(local, key, true, Optional.empty());
    }

    public Night active(String local, AlarmKey key, Priority priority) {
        return report(local, key, true, Optional.of(priority));
    }

    public Night normal(String local, AlarmKey key) {
        return report(local, key, false, Optional.empty());
    }

    public Night stimulus(String local, Stimulus stimulus) {
        simulation.at(Fixtures.at(local), stimulus);
        return this;
    }

    public Night setup(String local, Setup setup) {
        return stimulus(local, new Stimulus.SetupChanged(setup, "owner"));
    }

    public Night run(String local) {
        simulation.run(Fixtures.at(local));
        return this;
    }

    private Night report(String local, AlarmKey key, boolean active, Optional<Priority> priority) {
        Instant at = Fixtures.at(local);
        String box = key.site() + "-box";
        var report = new Report(key, Optional.of(box), active, priority, Measured.NOTHING, at, false);
        return stimulus(local, new Stimulus.Reported(box, List.of(report)));
    }

    private void see(Happening happening) {
        for (Entry entry : happening.decision().entries()) {
            log.add(entry);
            timeline.add(CLOCK.format(happening.at().atZone(zone)) + "  " + entry.words());
        }
        for (Notice notice : happening.decision().changes().notices()) {
            if (notice.state() == NoticeState.QUEUED) {
                deliver(happening.at(), notice);
            }
        }
    }

    private void deliver(Instant at, Notice notice) {
        texts.add(
                new Text(at, notice.contact(), notice.text(), notice.priority(), notice.callouts(), notice.purpose()));
        simulation.at(at, new Stimulus.NoticeFate(notice.id(), notice.line(), Stimulus.Fate.HANDED_OVER, "250 taken"));
        Duration after = answering.get(notice.contact());
        if (after != null) {
            simulation.at(at.plus(after), new Stimulus.AnswerNotice(notice.id(), "link"));
        }
    }

    /** Everything that was put down, in order. */
    public List<Entry> log() {
        return List.copyOf(log);
    }

    public List<Text> texts() {
        return List.copyOf(texts);
    }

    /** Who was called and when, as {@code 02:13:00 ana}. */
    public List<String> calls() {
        return texts.stream().filter(text -> !text.isNews()).map(this::who).toList();
    }

    /** Who was told afterwards what became of it, and when: {@code 02:42:00 ana MESA 9 PUMP OFF is back to normal 2:40 AM}. */
    public List<String> news() {
        return texts.stream()
                .filter(Text::isNews)
                .map(text -> who(text) + " " + text.words())
                .toList();
    }

    private String who(Text text) {
        return DateTimeFormatter.ofPattern("HH:mm:ss").format(text.at().atZone(zone)) + " " + text.contact();
    }

    public List<String> timeline() {
        return List.copyOf(timeline);
    }

    public Picture picture() {
        return simulation.picture();
    }
}
