package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Place;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.quiet.QuietHours;
import yardlight.escalation.rehearsal.Happening;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.wording.Gsm7;

/** On every night. 10,000 by default; {@code -Dyardlight.nights=100000} for more, {@code -Dyardlight.seed=N} to play one again. */
class NoAlarmIsForgottenTest {

    private static final int NIGHTS = Integer.getInteger("yardlight.nights", 10_000);
    private static final Optional<Long> SEED = Optional.ofNullable(Long.getLong("yardlight.seed"));

    @Test
    void on_ten_thousand_random_nights() {
        List<String> broken = LongStream.range(0, NIGHTS)
                .filter(seed -> SEED.isEmpty() || SEED.get() == seed)
                .parallel()
                .mapToObj(NoAlarmIsForgottenTest::broken)
                .flatMap(Optional::stream)
                .toList();

        assertThat(broken).as("seeds of nights on which a promise was broken").isEmpty();
    }

    /** A promise that is never tried is not kept: the nights must bring about everything that can go wrong. */
    @Test
    void and_the_nights_are_worth_the_name() {
        List<Decision> decisions = LongStream.range(0, 500)
                .mapToObj(seed -> new RandomNight(seed).play())
                .flatMap(night -> night.happenings().stream())
                .map(Happening::decision)
                .toList();

        assertThat(decisions.stream()
                        .flatMap(decision -> decision.changes().callouts().stream())
                        .map(Callout::kind))
                .contains(Callout.Kind.values());
        assertThat(decisions.stream()
                        .flatMap(decision -> decision.changes().notices().stream())
                        .map(Notice::state)
                        .distinct())
                .containsExactlyInAnyOrder(
                        NoticeState.QUEUED,
                        NoticeState.HELD,
                        NoticeState.BUNDLED,
                        NoticeState.HANDED_OVER,
                        NoticeState.DELIVERED,
                        NoticeState.REFUSED,
                        NoticeState.CANCELLED);
        assertThat(decisions.stream()
                        .flatMap(decision -> decision.changes().alarms().stream())
                        .map(Alarm::state))
                .contains(AlarmState.values());
    }

    private static Optional<String> broken(long seed) {
        try {
            new Check(new RandomNight(seed).play()).all();
            return Optional.empty();
        } catch (AssertionError | RuntimeException trouble) {
            return Optional.of("seed " + seed + ": " + trouble);
        }
    }

    /** One night held against the promises. */
    private record Check(RandomNight night, Set<String> begun) {

        Check(RandomNight night) {
            this(night, new HashSet<>());
        }

        void all() {
            night.happenings().forEach(this::everyStep);
            everyAlarmHasItsCallout();
            everyCalloutGoesOnOrIsOver();
            nothingIsHeldPastItsTime();
            everyRoundIsCalledAndWaitedFor();
            limitsAreKept();
            AnswerPromises.hold(night);
            ReceiptPromises.hold(night);
            StopPromises.hold(night);
            NewsPromises.hold(night);
            CausePromises.hold(night);
        }

        private void everyStep(Happening step) {
            Setup setup = night.setup();
            for (Notice notice : night.sent(step)) {
                Contact contact = setup.contacts().get(notice.contact());
                boolean asleep = notice.priority() != Priority.CRITICAL
                        && contact.quiet().stream()
                                .anyMatch(hours ->
                                        !notice.priority().atLeast(hours.lets()) && onTheWall(hours, step.at()));
                holds(!asleep, "quiet hours hold", notice);
                holds(Gsm7.septets(notice.text()) <= 160, "one segment", notice.text());
            }
            for (Notice notice : step.decision().changes().notices()) {
                boolean away = night.down(step).stream().anyMatch(channel -> Carriers.queued(setup, notice, channel));
                holds(!away, "nothing goes by a carrier that is down", notice);
                holds(!night.keptWaiting(step, notice), "critical waits for a moment at most", notice);
            }
            if (step.stimulus() instanceof Stimulus.Reported reported) {
                long events = step.decision().entries().stream()
                        .filter(entry -> entry.what() == Entry.What.EVENT)
                        .count();
                holds(events >= reported.reports().size(), "every event is in the log", step);
            }
            for (Callout callout : step.decision().changes().callouts()) {
                boolean starts = begun.add(callout.id());
                boolean critical = callout.facts().priority() == Priority.CRITICAL;
                boolean texted = step.decision().changes().notices().stream()
                        .anyMatch(notice ->
                                notice.callouts().contains(callout.id()) && notice.state() == NoticeState.QUEUED);
                boolean reached = texted
                        || night.hadStops()
                        || night.busy(step.at())
                        || !night.down(step).isEmpty();
                holds(!starts || !critical || reached || !callout.live(), "critical is texted at once", callout);
            }
        }

        /** Reads the clock on the wall, in another way than the rules do; not on the days on which it is changed. */
        private static boolean onTheWall(QuietHours hours, Instant at) {
            var local = at.atZone(hours.zone());
            if (!local.toLocalDate()
                    .atStartOfDay(hours.zone())
                    .plusHours(24)
                    .toLocalTime()
                    .equals(LocalTime.MIDNIGHT)) {
                return false;
            }
            boolean tonight = hours.startingOn().contains(local.getDayOfWeek());
            boolean lastNight = hours.startingOn().contains(local.getDayOfWeek().minus(1));
            LocalTime clock = local.toLocalTime();
            boolean begun = !clock.isBefore(hours.from());
            boolean over = !clock.isBefore(hours.to());
            return hours.from().isBefore(hours.to())
                    ? tonight && begun && !over
                    : tonight && begun || lastNight && !over;
        }

        private void everyAlarmHasItsCallout() {
            for (Alarm alarm : night.simulation().picture().alarms()) {
                boolean unanswered = alarm.state() == AlarmState.UNACKNOWLEDGED
                        || alarm.state() == AlarmState.LATCHED_UNACKNOWLEDGED
                                && alarm.callout().isPresent();
                boolean called = alarm.callout()
                        .flatMap(night.simulation().picture()::callout)
                        .filter(callout -> callout.live() || callout.kind() == Callout.Kind.EXHAUSTED)
                        .filter(callout -> callout.facts().alarms().contains(alarm.key()))
                        .isPresent();
                holds(!unanswered || called, "an unanswered alarm has its callout", alarm);
            }
        }

        private void everyCalloutGoesOnOrIsOver() {
            Instant now = night.simulation().now();
            for (Callout callout : night.simulation().picture().callouts()) {
                holds(callout.dueAt().filter(at -> !at.isAfter(now)).isEmpty(), "a callout is due in time", callout);
                boolean exhausted = callout.kind() == Callout.Kind.EXHAUSTED;
                holds(!exhausted || callout.facts().held().isEmpty(), "nobody is left out at the top", callout);
                boolean own = night.hadStops() || callout.facts().site().equals(Site.GATEWAY);
                holds(!exhausted || own || everybodyOn(callout), "the whole ladder is climbed", callout);
                boolean heard =
                        callout.facts().announced() >= callout.facts().alarms().size()
                                || callout.facts().announced() == 0 && !holds(callout);
                holds(!exhausted || own || heard, "every alarm is announced before the end", callout);
                boolean nobody = callout.facts().told().isEmpty()
                        && callout.facts().held().isEmpty();
                boolean refused = callout.facts().notices() > 0;
                holds(
                        !nobody || own || refused || callout.kind() == Callout.Kind.ENDED,
                        "a callout tells somebody",
                        callout);
            }
        }

        /** Whether something of it is there, so that it does not do that people read that it is over. */
        private boolean holds(Callout callout) {
            return callout.facts().alarms().stream()
                    .map(night.simulation().picture()::alarm)
                    .filter(alarm -> alarm.callout().equals(Optional.of(callout.id())))
                    .anyMatch(alarm -> alarm.active() && alarm.state().calls());
        }

        private void everyRoundIsCalledAndWaitedFor() {
            Map<String, Set<Place>> called = new HashMap<>();
            for (Happening step : night.happenings()) {
                for (Callout callout : step.decision().changes().callouts()) {
                    Ladder ladder = ladder(callout);
                    Set<Place> places = called.computeIfAbsent(callout.id(), any -> new HashSet<>());
                    if (callout instanceof Callout.Calling calling && places.add(calling.place())) {
                        Duration wait =
                                ladder.rungs().get(calling.place().rung()).delay();
                        holds(step.at().plus(wait).equals(calling.nextAt()), "the rung's wait is kept", callout);
                    }
                    if (callout.kind() == Callout.Kind.EXHAUSTED && nobodyWasPassed(callout)) {
                        int rounds =
                                ladder.rungs().stream().mapToInt(Rung::rounds).sum();
                        holds(places.size() == rounds * (1 + ladder.again()), "every round is called", callout);
                    }
                }
            }
        }

        /** Whether the callout had no reason to pass a rung: nobody has quiet hours, and every carrier took its notices. */
        private boolean nobodyWasPassed(Callout callout) {
            return !night.wasHampered()
                    && night.setup().contacts().values().stream()
                            .allMatch(contact -> contact.quiet().isEmpty())
                    && night.happenings().stream()
                            .flatMap(step -> step.decision().changes().notices().stream())
                            .filter(notice -> notice.callouts().contains(callout.id()))
                            .noneMatch(notice -> notice.state() == NoticeState.REFUSED);
        }

        private Ladder ladder(Callout callout) {
            return night.setup()
                    .ladders()
                    .get(night.setup()
                            .site(callout.facts().site())
                            .orElseThrow()
                            .ladder());
        }

        /** Whom the ladder names by name has a notice of it, sent or bundled. */
        private boolean everybodyOn(Callout callout) {
            return ladder(callout).rungs().stream()
                    .flatMap(rung -> rung.call().stream())
                    .filter(night.setup().contacts()::containsKey)
                    .allMatch(contact -> night.simulation().picture().notices().stream()
                            .filter(notice -> notice.contact().equals(contact))
                            .anyMatch(notice -> notice.callouts().contains(callout.id())));
        }

        private void nothingIsHeldPastItsTime() {
            Instant now = night.simulation().now();
            for (Notice notice : night.simulation().picture().notices()) {
                boolean late = notice.state() == NoticeState.HELD
                        && !notice.heldUntil().orElseThrow().isAfter(now);
                holds(!late, "what is held is sent when its time comes", notice);
            }
        }

        /** What a carrier took and gave back later goes out again by another line: it is the same text, and the first they get. */
        private void limitsAreKept() {
            Map<String, List<Instant>> sent = new HashMap<>();
            Set<String> before = new HashSet<>();
            for (Happening step : night.happenings()) {
                for (Notice notice : night.called(step)) {
                    if (!before.add(notice.id())) {
                        continue;
                    }
                    List<Instant> times = sent.computeIfAbsent(notice.contact(), any -> new ArrayList<>());
                    Instant hourAgo = step.at().minus(Duration.ofHours(1));
                    long lastHour =
                            times.stream().filter(at -> at.isAfter(hourAgo)).count();
                    int limit = night.setup().contacts().get(notice.contact()).textsPerHour();
                    holds(notice.priority() == Priority.CRITICAL || lastHour < limit, "the limit is kept", notice);
                    times.add(step.at());
                }
            }
        }

        private static void holds(boolean promise, String name, Object what) {
            if (!promise) {
                throw new AssertionError(name + ": " + what);
            }
        }
    }
}
