package yardlight.escalation.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import yardlight.escalation.Changes;
import yardlight.escalation.Escalator;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Stop;
import yardlight.escalation.wording.Links;

/** The ladder run on paper: who would be told what and when if this alarm came at that hour. Nothing is sent. */
public final class Rehearsal {

    /**
     * What to rehearse.
     *
     * @param priority as if the box had said so; empty for the point's own
     * @param at when the alarm occurs
     * @param answers by contact, how long after the alarm they answer; who was not told by then answers when they are
     */
    public record Question(AlarmKey key, Optional<Priority> priority, Instant at, Map<String, Duration> answers) {
        public Question {
            answers = Map.copyOf(answers);
        }
    }

    /** What would happen to one person at one time. */
    public record Line(Instant at, String what, Optional<String> contact, Optional<String> channel, String words) {}

    private static final Duration LONGEST = Duration.ofDays(14);
    private static final String BOX = "-rehearsal";
    private static final String TOLD = "told";
    private static final String HELD = "held";

    private final Setup setup;
    private final Question question;
    private final Simulation simulation;
    private final List<Line> lines = new ArrayList<>();
    private final Map<String, Boolean> answering = new HashMap<>();

    /** @throws IllegalArgumentException if the site is not in the setup */
    private Rehearsal(Setup setup, Question question) {
        if (!setup.sites().containsKey(question.key().site())) {
            throw new IllegalArgumentException(
                    "site must be set up: " + question.key().site());
        }
        this.setup = setup.withBox(BOX, question.key().site());
        this.question = question;
        var code = new AtomicInteger(10);
        simulation = new Simulation(this.setup, new Escalator(Links.NONE, code::getAndIncrement));
    }

    /**
     * Rehearses.
     *
     * @return the lines in order of time, ending with how the callout ended
     * @throws IllegalArgumentException if the site is not in the setup
     */
    public static List<Line> of(Setup setup, Question question) {
        return of(setup, question, Set.of());
    }

    /**
     * Rehearses.
     *
     * @param stops the lines by which somebody wants nothing more, as {@link Stop} has them
     * @throws IllegalArgumentException if the site is not in the setup
     */
    public static List<Line> of(Setup setup, Question question, Set<AlarmKey> stops) {
        return of(setup, question, stops, Integer.MAX_VALUE);
    }

    /**
     * Rehearses a night that may be long.
     *
     * @param most once there are so many lines it breaks off; what happens together stays together, so there may be some more
     * @throws IllegalArgumentException if the site is not in the setup
     */
    public static List<Line> of(Setup setup, Question question, Set<AlarmKey> stops, int most) {
        var rehearsal = new Rehearsal(setup, question);
        rehearsal.begin(stops);
        rehearsal.run(question.at().plus(LONGEST), most);
        return List.copyOf(rehearsal.lines);
    }

    /** Whether somebody is called in the moment in which the alarm occurs. */
    public enum Ear {
        /** Somebody is. */
        OPEN,
        /** Nobody is, but some are once they may be disturbed. */
        LATER,
        /** Nobody at all is on the ladder. */
        NONE
    }

    /**
     * Rehearses no more than the first moment.
     *
     * @throws IllegalArgumentException if the site is not in the setup
     */
    public static Ear ear(Setup setup, Question question, Set<AlarmKey> stops) {
        var rehearsal = new Rehearsal(setup, question);
        rehearsal.begin(stops);
        rehearsal.run(question.at().plus(onDelay(setup, question)), Integer.MAX_VALUE);
        if (rehearsal.said(TOLD)) {
            return Ear.OPEN;
        }
        return rehearsal.said(HELD) ? Ear.LATER : Ear.NONE;
    }

    /** How long after the report the alarm occurs. */
    static Duration onDelay(Setup setup, Question question) {
        return setup.point(question.key().site(), question.key().point())
                .timing()
                .onDelay();
    }

    private boolean said(String what) {
        return lines.stream().anyMatch(line -> line.what().equals(what));
    }

    private void run(Instant until, int most) {
        Optional<Instant> next = simulation.next();
        while (lines.size() < most && next.filter(at -> !at.isAfter(until)).isPresent()) {
            simulation.run(next.get());
            next = simulation.next();
        }
    }

    private void begin(Set<AlarmKey> stops) {
        simulation.picture().apply(stopped(stops));
        unreachable(stops)
                .forEach(contact -> lines.add(new Line(
                        question.at(),
                        "unreachable",
                        Optional.of(contact),
                        Optional.empty(),
                        "wants nothing more by any line")));
        RehearsedShutIn.turnedOn(setup, question.key().site(), question.at()).ifPresent(simulation.picture()::apply);
        simulation.watch(this::note);
        var report = new Report(
                question.key(), Optional.of(BOX), true, question.priority(), Measured.NOTHING, question.at(), true);
        simulation.at(question.at(), new Stimulus.Reported(BOX, List.of(report)));
    }

    /** That these lines are stopped, as {@link Stop} has them. */
    static Changes stopped(Set<AlarmKey> stops) {
        List<Alarm> stopped = stops.stream()
                .map(key -> Alarm.normal(key)
                        .draft()
                        .occurrence(1)
                        .state(AlarmState.ACKNOWLEDGED)
                        .active(true)
                        .done())
                .toList();
        return new Changes(stopped, List.of(), List.of(), List.of(), List.of(), Map.of());
    }

    /** Whom the site's ladder would call in vain. */
    private List<String> unreachable(Set<AlarmKey> stops) {
        Ladder ladder =
                setup.ladders().get(setup.sites().get(question.key().site()).ladder());
        List<Rung> rungs = ladder == null ? List.of() : ladder.rungs();
        return rungs.stream()
                .flatMap(rung -> rung.call().stream())
                .flatMap(call -> setup.peopleBehind(call, question.at()).stream())
                .distinct()
                .filter(contact -> Stop.everywhere(setup.contacts().get(contact), stops))
                .toList();
    }

    private void note(Happening happening) {
        new RehearsedShutIn(setup, site -> BOX).of(happening).ifPresent(asked -> {
            lines.add(asked.line());
            simulation.at(asked.line().at(), asked.answer());
        });
        happening.decision().changes().notices().stream()
                .filter(notice -> notice.purpose() == Purpose.CALL)
                .forEach(notice -> note(happening.at(), notice));
        happening.decision().changes().callouts().stream()
                .filter(callout -> !callout.live())
                .forEach(callout -> lines.add(new Line(
                        happening.at(), callout.kind().word(), answerer(callout), Optional.empty(), ending(callout))));
    }

    private void note(Instant at, Notice notice) {
        Optional<String> contact = Optional.of(notice.contact());
        if (notice.state() == NoticeState.QUEUED) {
            String channel = setup.contacts()
                    .get(notice.contact())
                    .lines()
                    .get(notice.line())
                    .channel();
            lines.add(new Line(at, TOLD, contact, Optional.of(channel), notice.text()));
            simulation.at(
                    at,
                    new Stimulus.NoticeFate(
                            notice.id(), notice.line(), Stimulus.Fate.HANDED_OVER, "rehearsed, nothing was sent"));
            answer(at, notice);
        } else if (notice.state() == NoticeState.HELD) {
            lines.add(new Line(
                    at,
                    HELD,
                    contact,
                    Optional.empty(),
                    "held until " + notice.heldUntil().orElseThrow()));
        }
    }

    private void answer(Instant at, Notice notice) {
        Duration after = question.answers().get(notice.contact());
        if (after != null && answering.put(notice.contact(), true) == null) {
            Instant when = question.at().plus(after);
            simulation.at(when.isBefore(at) ? at : when, new Stimulus.AnswerNotice(notice.id(), "rehearsal"));
        }
    }

    private static Optional<String> answerer(Callout callout) {
        return callout instanceof Callout.Answered answered ? Optional.of(answered.by()) : Optional.empty();
    }

    private static String ending(Callout callout) {
        return switch (callout.kind()) {
            case ANSWERED -> "answered by " + ((Callout.Answered) callout).by();
            case ENDED -> ((Callout.Ended) callout).reason();
            case EXHAUSTED -> "nobody answered";
            case CALLING, HELD -> throw new IllegalArgumentException("callout must be over: " + callout.kind());
        };
    }
}
