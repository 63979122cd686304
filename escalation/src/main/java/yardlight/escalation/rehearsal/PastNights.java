package yardlight.escalation.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import yardlight.escalation.Answer;
import yardlight.escalation.Escalator;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;

/**
 * Past nights played once more with another setup: the alarms come and go as they did, and people answer as they did. Nothing
 * is sent.
 *
 * <p>Who answered an alarm does so as long after the first text about its site as they took in truth; who answered without
 * having been texted, on a page or by word of mouth, does so when they did. Nobody else answers: neither who was texted and
 * stayed silent, nor who was never texted. Every carrier takes every text at once.
 */
public final class PastNights {

    /** Some seconds of work, and as much as a small heap holds. Ours. */
    static final int MOST_STEPS = 200_000;

    /** The most texts that a replay may lead to. */
    public static final int MOST_TEXTS = 20_000;

    private final Past past;
    private final Map<String, Duration> answers;
    private final Setup setup;
    private final Simulation simulation;
    private final RehearsedShutIn shutIn;
    private final Deque<Stretch> coming;
    private final Map<AlarmKey, Called> open = new LinkedHashMap<>();
    private final List<Called> called = new ArrayList<>();
    private final List<PastText> texts = new ArrayList<>();
    private final Set<String> queued = new HashSet<>();
    private int steps;

    private PastNights(Setup given, Past past, Map<String, Duration> answers) {
        this.past = past;
        this.answers = Map.copyOf(answers);
        this.setup = PastStage.of(given, past);
        this.shutIn = new RehearsedShutIn(setup, PastStage::box);
        this.coming = new ArrayDeque<>(Stretch.of(past));
        var code = new AtomicInteger(10);
        simulation = new Simulation(setup, new Escalator(Links.NONE, code::getAndIncrement));
    }

    /**
     * Plays it.
     *
     * @param past of sites of this setup
     * @param until nothing later is played: the present, or {@link Past#AFTER} past the end
     * @param answers by contact, how long after the first text they answer whatever calls at the site, instead of as they did
     * @param stops the lines by which somebody wants nothing more, as {@link yardlight.escalation.setup.Stop} has them
     * @return empty when it leads to more than is played: {@value #MOST_TEXTS} texts, or as much work as they would be
     */
    public static Optional<Season> play(
            Setup setup, Past past, Instant until, Map<String, Duration> answers, Set<AlarmKey> stops) {
        var nights = new PastNights(setup, past, answers);
        nights.begin(stops);
        return nights.run(until) ? Optional.of(nights.season()) : Optional.empty();
    }

    private void begin(Set<AlarmKey> stops) {
        simulation.picture().apply(Rehearsal.stopped(stops));
        setup.sites()
                .keySet()
                .forEach(site ->
                        RehearsedShutIn.turnedOn(setup, site, past.from()).ifPresent(simulation.picture()::apply));
        simulation.watch(this::note);
        schedule();
    }

    private void schedule() {
        Set<PastDeed> answered = new HashSet<>();
        coming.forEach(one -> one.deed().ifPresent(answered::add));
        var reports = new PastReports(setup, past);
        for (PastDeed deed : past.played()) {
            reports.take(deed);
            if (deed.what() != PastDeed.What.ANSWERED && !answered.contains(deed)) {
                stimulus(deed).ifPresent(said -> reports.alone(deed.at(), said));
            }
        }
        reports.each(simulation::at);
    }

    /** What somebody does. What is answered along with another alarm the engine answers itself. */
    private static Optional<Stimulus> stimulus(PastDeed deed) {
        return switch (deed.what()) {
            case ANSWERED -> Optional.of(acknowledge(deed.key(), deed.by()));
            case SHELVED -> Optional.of(new Stimulus.Shelve(deed.key(), deed.length(), deed.words(), deed.by()));
            case UNSHELVED -> Optional.of(new Stimulus.Unshelve(deed.key(), deed.by()));
            case RESET -> Optional.of(new Stimulus.Reset(deed.key(), deed.by()));
            case BEGAN, ENDED, KNOWN, ANSWERED_WITH -> Optional.empty();
        };
    }

    private static Stimulus acknowledge(AlarmKey key, String by) {
        return new Stimulus.Acknowledge(key, by, "rehearsal", Optional.empty());
    }

    private boolean run(Instant until) {
        Optional<Instant> next = simulation.next();
        while (next.filter(at -> !at.isAfter(until)).isPresent()) {
            simulation.run(next.get());
            if (steps > MOST_STEPS || texts.size() > MOST_TEXTS) {
                return false;
            }
            next = simulation.next();
        }
        return true;
    }

    private Season season() {
        coming.forEach(one -> called.add(new Called(one)));
        return new Season(
                texts.stream()
                        .filter(text -> past.within(text.at()))
                        .sorted(Season.IN_ORDER)
                        .toList(),
                called.stream().map(one -> one.call).toList());
    }

    private void note(Happening happening) {
        steps++;
        while (!coming.isEmpty() && !coming.peek().since().isAfter(happening.at())) {
            begin(coming.poll());
        }
        shutIn.of(happening).ifPresent(asked -> simulation.at(asked.line().at(), asked.answer()));
        happening.decision().changes().notices().forEach(notice -> {
            if (notice.state() != NoticeState.QUEUED) {
                queued.remove(notice.id());
            } else if (queued.add(notice.id())) {
                simulation.at(
                        happening.at(),
                        new Stimulus.NoticeFate(
                                notice.id(), notice.line(), Stimulus.Fate.HANDED_OVER, "rehearsed, nothing was sent"));
            }
            boolean taken =
                    happening.stimulus() instanceof Stimulus.NoticeFate && notice.state() == NoticeState.HANDED_OVER;
            if (taken && notice.purpose() == Purpose.CALL) {
                told(happening.at(), notice);
            }
        });
        happening.decision().changes().alarms().forEach(alarm -> {
            calling(alarm);
            answered(happening.at(), alarm);
        });
        if (happening.stimulus() instanceof Stimulus.Shelve said
                && happening.decision().answer() instanceof Answer.Done) {
            Optional.ofNullable(open.get(said.key())).ifPresent(one -> one.answered(said.by(), happening.at()));
        }
    }

    /** Who answered in truth without having been texted does so again. */
    private void begin(Stretch stretch) {
        var one = new Called(stretch);
        called.add(one);
        open.put(stretch.key(), one);
        calling(simulation.picture().alarm(stretch.key()));
        stretch.deed()
                .filter(deed -> stretch.told().isEmpty() && !answers.containsKey(deed.by()))
                .flatMap(PastNights::stimulus)
                .ifPresent(said -> simulation.at(stretch.deed().orElseThrow().at(), said));
    }

    /** By now it may be out of service, or somebody may know of it already. */
    private void calling(Alarm alarm) {
        Optional.ofNullable(open.get(alarm.key()))
                .filter(any -> alarm.state().calls())
                .ifPresent(one -> one.call = one.call.calling());
    }

    private void answered(Instant now, Alarm alarm) {
        alarm.acknowledgedBy()
                .filter(by -> alarm.acknowledgedAt().equals(Optional.of(now)) && !by.equals(RehearsedShutIn.NOBODY))
                .ifPresent(by -> Optional.ofNullable(open.get(alarm.key())).ifPresent(one -> one.answered(by, now)));
    }

    private void told(Instant now, Notice notice) {
        Set<String> sites = new HashSet<>();
        notice.callouts()
                .forEach(id -> simulation
                        .picture()
                        .callout(id)
                        .ifPresent(callout -> sites.add(callout.facts().site())));
        String contact = notice.contact();
        String channel =
                setup.contacts().get(contact).lines().get(notice.line()).channel();
        texts.add(PastText.of(now, contact, channel, sites));
        open.values().stream()
                .filter(one -> sites.contains(one.stretch.key().site()))
                .forEach(one -> {
                    one.call = one.call.told(now);
                    answers(one, contact, now);
                });
    }

    private void answers(Called one, String contact, Instant now) {
        Optional<Duration> instead = Optional.ofNullable(answers.get(contact));
        Optional<Stimulus> said = instead.map(any -> acknowledge(one.stretch.key(), contact))
                .or(() -> one.stretch
                        .deed()
                        .filter(deed -> deed.by().equals(contact))
                        .flatMap(PastNights::stimulus));
        Optional<Duration> after = instead.or(one.stretch::after);
        if (said.isPresent() && after.isPresent() && waits(one) && one.asked.add(contact)) {
            simulation.at(now.plus(after.get()), said.get());
        }
    }

    /** What was answered in the replay waits for an answer again only when it calls anew. */
    private boolean waits(Called one) {
        return one.call.answeredAt().isEmpty()
                || simulation.picture().alarm(one.stretch.key()).state().awaitsAnswer();
    }

    /** An alarm that calls in the replay. */
    private static final class Called {

        private final Stretch stretch;
        private final Set<String> asked = new HashSet<>();
        private PastCall call;

        Called(Stretch stretch) {
            this.stretch = stretch;
            this.call = PastCall.begun(stretch, false);
        }

        /** An answer that comes before the alarm is back can be needed once more; a shelf keeps it away. */
        void answered(String by, Instant at) {
            call = call.answered(by, at);
            if (stretch.deed()
                    .filter(deed -> deed.what() == PastDeed.What.SHELVED)
                    .isEmpty()) {
                asked.clear();
            }
        }
    }
}
