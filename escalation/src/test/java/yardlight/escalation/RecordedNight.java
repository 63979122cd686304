package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.rehearsal.Happening;
import yardlight.escalation.rehearsal.Past;
import yardlight.escalation.rehearsal.PastDeed;
import yardlight.escalation.rehearsal.PastText;
import yardlight.escalation.rehearsal.Simulation;
import yardlight.escalation.roster.Relief;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.wording.Links;

/**
 * A night drawn by lot from a seed, and written down as the gateway does: the log, the texts, and how urgent each alarm was.
 * Every carrier takes every text at once, no box falls silent, and boxes leave it to the point how urgent an alarm is: what
 * else there is, a record does not hold.
 */
final class RecordedNight {

    private static final List<Instant> EVENINGS = List.of(
            Instant.parse("2026-03-08T02:00:00Z"),
            Instant.parse("2026-11-01T02:00:00Z"),
            Instant.parse("2026-11-25T02:00:00Z"));
    private static final List<String> CONDITIONS = List.of("high", "off", "high-high", "low", "low-low");
    private static final Duration LENGTH = Duration.ofHours(12);

    private final Random random;
    private final Setup setup;
    private final Simulation simulation;
    private final Instant evening;
    private final List<PastDeed> deeds = new ArrayList<>();
    private final Map<String, Priority> priorities = new HashMap<>();
    private final Map<String, Instant> sent = new HashMap<>();

    RecordedNight(long seed) {
        random = new Random(seed);
        Setup drawn = withoutHeartbeats(new RandomSetup(random).draw());
        evening = EVENINGS.get(random.nextInt(EVENINGS.size())).plusMillis(random.nextInt(3_600_000));
        setup = random.nextBoolean() ? drawn : drawn.withRelief("crew", relief(drawn));
        var code = new AtomicInteger(10);
        simulation = new Simulation(setup, new Escalator(Links.NONE, code::getAndIncrement));
        simulation.watch(this::write);
        simulation.watch(this::carrierAndPeople);
    }

    private Relief relief(Setup drawn) {
        LocalDateTime from = LocalDateTime.ofInstant(
                evening.plusSeconds(random.nextInt(4 * 3600)),
                drawn.rosters().get("crew").zone());
        return new Relief(from, from.plusSeconds(3600L + random.nextInt(5 * 3600)), person(drawn));
    }

    private String person(Setup of) {
        return List.copyOf(of.contacts().keySet())
                .get(random.nextInt(of.contacts().size()));
    }

    private static Setup withoutHeartbeats(Setup given) {
        List<Box> boxes = given.boxes().values().stream()
                .map(box -> new Box(
                        box.id(), box.site(), box.feed(), box.link(), box.battery(), Optional.empty(), box.grace()))
                .toList();
        return new Setup(
                List.copyOf(given.sites().values()),
                boxes,
                given.points(),
                List.copyOf(given.contacts().values()),
                List.copyOf(given.rosters().values()),
                List.copyOf(given.ladders().values()));
    }

    RecordedNight play() {
        int things = 3 + random.nextInt(30);
        for (int i = 0; i < things; i++) {
            trouble(evening.plusMillis(random.nextInt(10 * 3_600_000)));
        }
        simulation.run(until());
        return this;
    }

    Setup setup() {
        return setup;
    }

    Instant until() {
        return evening.plus(LENGTH).plus(Past.AFTER);
    }

    /** When texts really went to whom, by the night itself and not by the record. */
    List<String> sent() {
        Map<String, Notice> byId = new HashMap<>();
        simulation.picture().notices().forEach(notice -> byId.put(notice.id(), notice));
        return sent.entrySet().stream()
                .filter(one -> one.getValue().isBefore(evening.plus(LENGTH)))
                .map(one -> one.getValue() + " " + byId.get(one.getKey()).contact())
                .sorted()
                .toList();
    }

    Past past() {
        List<PastText> texts = simulation.picture().notices().stream()
                .filter(notice -> sent.containsKey(notice.id()))
                .map(this::text)
                .toList();
        return new Past(evening, evening.plus(LENGTH), deeds, texts, priorities);
    }

    private PastText text(Notice notice) {
        return PastText.of(
                notice.written(),
                notice.contact(),
                setup.line(notice.contact(), notice.line()).orElseThrow().channel(),
                notice.callouts().stream()
                        .map(id -> simulation.picture().callout(id).orElseThrow())
                        .map(callout -> callout.facts().site())
                        .toList());
    }

    private void write(Happening step) {
        for (Entry entry : step.decision().entries()) {
            deeds.addAll(PastDeed.read(step.at(), entry.what().word(), entry.about(), entry.words()));
        }
        step.decision().changes().alarms().forEach(alarm -> priorities.put(alarm.id(), alarm.priority()));
        boolean taken = step.stimulus() instanceof Stimulus.NoticeFate;
        step.decision().changes().notices().stream()
                .filter(notice -> taken && notice.state() == NoticeState.HANDED_OVER)
                .filter(notice -> notice.purpose() == Purpose.CALL)
                .forEach(notice -> sent.put(notice.id(), step.at()));
    }

    private void trouble(Instant at) {
        Site site = List.copyOf(setup.sites().values())
                .get(random.nextInt(setup.sites().size()));
        String box = site.id() + "-box";
        AlarmKey key = new AlarmKey(
                site.id(),
                RandomSetup.POINTS.get(random.nextInt(RandomSetup.POINTS.size())),
                CONDITIONS.get(random.nextInt(CONDITIONS.size())));
        switch (random.nextInt(12)) {
            case 0 -> chatter(at, box, key);
            case 1 -> simulation.at(at, new Stimulus.Acknowledge(key, "owner", "page", Optional.of("seen, is now ok")));
            case 2 -> simulation.at(at, new Stimulus.Acknowledge(key, person(setup), "page", Optional.empty()));
            case 3 ->
                simulation.at(
                        at,
                        new Stimulus.Shelve(key, Duration.ofMinutes(1 + random.nextInt(200)), "work, again", "owner"));
            case 4 -> simulation.at(at, new Stimulus.Unshelve(key, "owner"));
            case 5 -> simulation.at(at, new Stimulus.Reset(key, "owner"));
            case 6 -> flood(at, site.id(), box);
            default -> simulation.at(at, reported(box, key, at, random.nextInt(3) > 0));
        }
    }

    private void chatter(Instant at, String box, AlarmKey key) {
        for (int i = 0; i < 12; i++) {
            Instant when = at.plusSeconds(i * 7L);
            simulation.at(when, reported(box, key, when, i % 2 == 0));
        }
    }

    private void flood(Instant at, String site, String box) {
        List<Report> reports = new ArrayList<>();
        for (int i = 0; i < 14; i++) {
            reports.add(report(new AlarmKey(site, "point-" + i, "high"), at, random.nextInt(5) > 0));
        }
        simulation.at(at, new Stimulus.Reported(box, reports));
    }

    private static Stimulus reported(String box, AlarmKey key, Instant at, boolean active) {
        return new Stimulus.Reported(box, List.of(report(key, at, active)));
    }

    private static Report report(AlarmKey key, Instant at, boolean active) {
        return new Report(key, Optional.of(key.site() + "-box"), active, Optional.empty(), Measured.NOTHING, at, false);
    }

    private void carrierAndPeople(Happening happening) {
        for (Notice notice : happening.decision().changes().notices()) {
            if (notice.state() == NoticeState.QUEUED) {
                simulation.at(
                        happening.at(),
                        new Stimulus.NoticeFate(notice.id(), notice.line(), Stimulus.Fate.HANDED_OVER, "250 taken"));
                if (random.nextInt(4) == 0) {
                    Instant when = happening.at().plusMillis(5_000 + random.nextInt(1_200_000));
                    simulation.at(when, new Stimulus.AnswerNotice(notice.id(), "link"));
                }
            }
        }
    }
}
