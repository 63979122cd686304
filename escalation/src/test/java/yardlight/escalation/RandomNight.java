package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.quiet.Restraint;
import yardlight.escalation.rehearsal.Happening;
import yardlight.escalation.rehearsal.Simulation;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.wording.Links;

/** A night drawn by lot from a seed: boxes that chatter, fall silent and come back, people who answer or do not. */
final class RandomNight {

    private static final List<String> CONDITIONS =
            List.of("high", "off", "high-high", "overflow", "rising-fast", "low", "low-low");
    /** Nights on which the clock changes in Chicago and Denver are drawn as often as others. */
    private static final List<Instant> EVENINGS = List.of(
            Instant.parse("2026-03-08T02:00:00Z"),
            Instant.parse("2026-11-01T02:00:00Z"),
            Instant.parse("2026-11-25T02:00:00Z"),
            Instant.parse("2027-01-01T02:00:00Z"));

    private final Random random;
    private final Setup setup;
    private final Simulation simulation;
    private final Instant evening;
    private final List<Happening> happenings = new ArrayList<>();
    private final Map<Happening, List<Notice>> sent = new IdentityHashMap<>();
    private final Set<String> queued = new HashSet<>();
    private final Map<Happening, Set<String>> down = new IdentityHashMap<>();
    private Set<String> downNow = Set.of();
    private boolean hadStops;

    RandomNight(long seed) {
        random = new Random(seed);
        setup = new RandomSetup(random).draw();
        evening = EVENINGS.get(random.nextInt(EVENINGS.size())).plusSeconds(random.nextInt(3600));
        var code = new AtomicInteger(10);
        simulation = new Simulation(setup, new Escalator(Links.NONE, code::getAndIncrement));
        simulation.watch(this::note);
        simulation.watch(this::carrierAndPeople);
    }

    /** Plays ten hours of trouble and then lets everything run out for as long as it takes. */
    RandomNight play() {
        boolean outages = random.nextInt(3) == 0;
        for (int i = outages ? 1 + random.nextInt(4) : 0; i > 0; i--) {
            outage(evening.plusSeconds(random.nextInt(9 * 3600)));
        }
        boolean stops = random.nextInt(4) == 0;
        for (int i = stops ? 1 + random.nextInt(6) : 0; i > 0; i--) {
            stop(evening.plusSeconds(random.nextInt(10 * 3600)));
        }
        int things = 5 + random.nextInt(60);
        for (int i = 0; i < things; i++) {
            Instant at = evening.plusSeconds(random.nextInt(10 * 3600));
            trouble(at);
        }
        simulation.run(evening.plus(Duration.ofHours(10)));
        return this;
    }

    Setup setup() {
        return setup;
    }

    Simulation simulation() {
        return simulation;
    }

    List<Happening> happenings() {
        return happenings;
    }

    /** The notices that began to be sent in this step; one that only goes on to another line is not among them. */
    List<Notice> sent(Happening step) {
        return sent.get(step);
    }

    /** Those of them that call somebody. */
    List<Notice> called(Happening step) {
        return sent(step).stream()
                .filter(notice -> notice.purpose() == Purpose.CALL)
                .toList();
    }

    /** The channels whose carrier was down in this step. */
    Set<String> down(Happening step) {
        return down.get(step);
    }

    /** Whether somebody could be reached by fewer lines than they have, at any time. */
    boolean wasHampered() {
        return hadStops || down.values().stream().anyMatch(channels -> !channels.isEmpty());
    }

    boolean hadStops() {
        return hadStops;
    }

    /** Whether somebody has had a text a moment ago: only then may something critical wait for the next one. */
    boolean busy(Instant now) {
        return sent.entrySet().stream()
                .filter(step -> !step.getValue().isEmpty())
                .map(step -> step.getKey().at())
                .anyMatch(at -> !at.isAfter(now) && at.isAfter(now.minus(Restraint.USUAL_PACE)));
    }

    /** Whether something critical has to wait for longer than that without a carrier being down. */
    boolean keptWaiting(Happening step, Notice notice) {
        return notice.state() == NoticeState.HELD
                && notice.purpose() == Purpose.CALL
                && notice.priority() == Priority.CRITICAL
                && notice.heldUntil().orElseThrow().isAfter(step.at().plus(Restraint.USUAL_PACE))
                && down(step).isEmpty();
    }

    private void note(Happening step) {
        happenings.add(step);
        if (step.stimulus() instanceof Stimulus.Carrier said) {
            downNow = new HashSet<>(downNow);
            downNow.remove(said.channel());
            downNow.addAll(said.down() ? Set.of(said.channel()) : Set.of());
        }
        down.put(step, downNow);
        List<Notice> begun = new ArrayList<>();
        for (Notice notice : step.decision().changes().notices()) {
            if (notice.state() != NoticeState.QUEUED) {
                queued.remove(notice.id());
            } else if (queued.add(notice.id())) {
                begun.add(notice);
            }
        }
        sent.put(step, begun);
    }

    private void trouble(Instant at) {
        Site site = List.copyOf(setup.sites().values())
                .get(random.nextInt(setup.sites().size()));
        String box = site.id() + "-box";
        AlarmKey key = key(site.id());
        switch (random.nextInt(10)) {
            case 0 -> simulation.at(at, new Stimulus.Beat(box, beat()));
            case 1 -> chatter(at, box, key);
            case 2 -> simulation.at(at, new Stimulus.Acknowledge(key, "owner", "page", Optional.empty()));
            case 3 ->
                simulation.at(
                        at, new Stimulus.Shelve(key, Duration.ofMinutes(1 + random.nextInt(200)), "work", "owner"));
            case 4 -> simulation.at(at, new Stimulus.Unshelve(key, "owner"));
            case 5 -> simulation.at(at, new Stimulus.Reset(key, "owner"));
            case 6 -> flood(at, site.id(), box);
            default -> simulation.at(at, new Stimulus.Reported(box, List.of(report(key, at, random.nextInt(3) > 0))));
        }
    }

    /** Carriers come back in the end, some at once and some after hours; often both are away together. */
    private void outage(Instant at) {
        int seconds = random.nextBoolean() ? random.nextInt(200) : random.nextInt(3600);
        List<String> channels = List.of("sms-mail", "mail");
        for (String channel : random.nextBoolean() ? channels : List.of(channels.get(random.nextInt(2)))) {
            Instant from = at.plusSeconds(random.nextInt(30));
            simulation.at(from, new Stimulus.Carrier(channel, true, "cannot be reached"));
            simulation.at(from.plusSeconds(seconds), new Stimulus.Carrier(channel, false, "answers"));
        }
    }

    /** Somebody writes STOP, perhaps twice, and perhaps START some time later. */
    private void stop(Instant at) {
        Contact contact = List.copyOf(setup.contacts().values())
                .get(random.nextInt(setup.contacts().size()));
        String address =
                contact.lines().get(random.nextInt(contact.lines().size())).address();
        simulation.at(at, new Stimulus.Stopped(contact.id(), address, true, "STOP"));
        if (random.nextBoolean()) {
            Instant later = at.plusSeconds(random.nextInt(2 * 3600));
            simulation.at(later, new Stimulus.Stopped(contact.id(), address, random.nextInt(4) == 0, "STOP or START"));
        }
        hadStops = true;
    }

    private void chatter(Instant at, String box, AlarmKey key) {
        for (int i = 0; i < 12; i++) {
            Instant when = at.plusSeconds(i * 7L);
            simulation.at(when, new Stimulus.Reported(box, List.of(report(key, when, i % 2 == 0))));
        }
    }

    private void flood(Instant at, String site, String box) {
        List<Report> reports = new ArrayList<>();
        for (int i = 0; i < 14; i++) {
            reports.add(report(new AlarmKey(site, "point-" + i, "high"), at, random.nextInt(5) > 0));
        }
        simulation.at(at, new Stimulus.Reported(box, reports));
    }

    private Report report(AlarmKey key, Instant received, boolean active) {
        boolean declared = random.nextInt(4) == 0;
        Instant at = declared ? received.minusSeconds(random.nextInt(1800)) : received;
        Optional<Priority> priority =
                random.nextBoolean() ? Optional.of(Priority.values()[random.nextInt(4)]) : Optional.empty();
        return new Report(key, Optional.of(key.site() + "-box"), active, priority, Measured.NOTHING, at, declared);
    }

    private AlarmKey key(String site) {
        return new AlarmKey(
                site,
                RandomSetup.POINTS.get(random.nextInt(RandomSetup.POINTS.size())),
                CONDITIONS.get(random.nextInt(CONDITIONS.size())));
    }

    private Heartbeat beat() {
        return new Heartbeat(
                Optional.empty(),
                Map.of("pump", random.nextInt(3) > 0),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** What a carrier says of a notice that it took, some of it long after it was of any use, and some of it twice. */
    private void later(Instant taken, Notice notice) {
        for (int i = random.nextInt(3); i >= 0; i--) {
            Instant at = taken.plusSeconds(random.nextInt(400));
            simulation.at(
                    at,
                    switch (random.nextInt(5)) {
                        case 0 -> new Stimulus.Overdue(notice.id(), notice.line());
                        case 1 -> new Stimulus.NoticeDue(notice.id());
                        case 2 -> receipt(notice, Stimulus.Fate.REFUSED);
                        default -> receipt(notice, Stimulus.Fate.DELIVERED);
                    });
        }
    }

    private static Stimulus receipt(Notice notice, Stimulus.Fate fate) {
        return new Stimulus.NoticeFate(notice.id(), notice.line(), fate, "the carrier's receipt");
    }

    private void carrierAndPeople(Happening happening) {
        for (Notice notice : happening.decision().changes().notices()) {
            if (notice.state() != NoticeState.QUEUED) {
                continue;
            }
            Stimulus.Fate fate = random.nextInt(10) == 0
                    ? random.nextBoolean() ? Stimulus.Fate.REFUSED : Stimulus.Fate.UNCERTAIN
                    : Stimulus.Fate.HANDED_OVER;
            if (random.nextInt(20) == 0) {
                simulation.at(happening.at().plusSeconds(30), new Stimulus.Overdue(notice.id(), notice.line()));
            }
            Instant said =
                    happening.at().plusSeconds(random.nextInt(10) == 0 ? random.nextInt(900) : random.nextInt(4));
            Optional<Duration> receipt = random.nextInt(3) == 0 ? Optional.of(Duration.ofMinutes(2)) : Optional.empty();
            simulation.at(
                    said, new Stimulus.NoticeFate(notice.id(), notice.line(), fate, "the carrier's words", receipt));
            if (fate == Stimulus.Fate.HANDED_OVER && random.nextInt(3) == 0) {
                later(said, notice);
            }
            if (random.nextInt(5) == 0) {
                Instant when = happening.at().plusSeconds(5L + random.nextInt(1200));
                simulation.at(when, new Stimulus.AnswerNotice(notice.id(), "link"));
            }
        }
    }
}
