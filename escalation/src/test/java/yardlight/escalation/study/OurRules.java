package yardlight.escalation.study;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import yardlight.escalation.Changes;
import yardlight.escalation.Escalator;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.Clue;
import yardlight.escalation.heartbeat.Verdict;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.rehearsal.Happening;
import yardlight.escalation.rehearsal.Simulation;
import yardlight.escalation.wording.Links;

/** The real rules, driven through time: the one class of the study that knows them. */
final class OurRules implements Rules {

    static final OurRules OURS = new OurRules();

    /** The first contact answers each text after this time, before the ladder calls them again. */
    private static final Duration ANSWERS_AFTER = Duration.ofMinutes(3);

    private static final String POWER = "power-";

    private OurRules() {}

    @Override
    public String words() {
        return "Yardlight";
    }

    @Override
    public Read read(World world, List<Post> posts, long until) {
        return new Hearing(world).read(posts, until);
    }

    /** Silences by alarm and by when they were found: one that comes again soon is the same alarm. */
    private record Found(String alarm, Instant at) {}

    private static final class Hearing {

        private final World world;
        private final Simulation simulation;
        private final List<Told> told = new ArrayList<>();
        private final Map<Found, Absence> absences = new LinkedHashMap<>();
        private final Map<AlarmKey, Absence> newest = new HashMap<>();
        private int texts;

        Hearing(World world) {
            this.world = world;
            var code = new AtomicInteger(10);
            simulation = new Simulation(world.setup(), new Escalator(Links.NONE, code::getAndIncrement));
            simulation.watch(this::see);
        }

        Read read(List<Post> posts, long until) {
            for (Post post : posts) {
                String box = world.boxes().get(post.box()).id();
                simulation.at(instant(post.arrived()), new Stimulus.Beat(box, post.said()));
            }
            simulation.run(instant(until));
            return new Read(told, absences.values().stream().map(this::last).toList());
        }

        private void see(Happening happening) {
            Changes changes = happening.decision().changes();
            changes.absences().forEach(absence -> {
                absences.put(new Found(absence.alarm(), absence.foundAt()), absence);
                newest.put(absence.key(), absence);
            });
            changes.notices().stream()
                    .filter(notice -> notice.state() == NoticeState.QUEUED && notice.purpose() == Purpose.CALL)
                    .forEach(notice -> deliver(happening.at(), notice));
        }

        private void deliver(Instant at, Notice notice) {
            int text = texts++;
            notice.callouts().stream()
                    .flatMap(id -> simulation.picture().callout(id).stream())
                    .flatMap(callout -> callout.facts().alarms().stream())
                    .forEach(key -> told.add(told(text, at, key)));
            simulation.at(at, new Stimulus.NoticeFate(notice.id(), notice.line(), Stimulus.Fate.HANDED_OVER, "taken"));
            simulation.at(at.plus(ANSWERS_AFTER), new Stimulus.AnswerNotice(notice.id(), "link"));
        }

        private Told told(int text, Instant at, AlarmKey key) {
            if (key.point().startsWith(POWER)) {
                int feed = world.feed(key.point().substring(POWER.length()));
                Set<Integer> boxes = world.onFeed(feed).stream()
                        .filter(box -> box.site().equals(key.site()))
                        .map(world::index)
                        .collect(Collectors.toSet());
                return new Told(text, millis(at), Verdict.POWER_OFF, boxes, feed);
            }
            Absence absence = newest.get(key);
            return new Told(text, millis(at), absence.verdict(), boxes(absence), World.NONE);
        }

        private Last last(Absence absence) {
            boolean reboot = absence.verdict() == Verdict.POWER_OFF
                    && absence.judgement().evidence().containsKey(Clue.RESTARTED);
            long to = absence.endedAt().map(Hearing::millis).orElse(Long.MAX_VALUE - 1);
            return new Last(millis(absence.foundAt()), to, boxes(absence), absence.verdict(), reboot);
        }

        private Set<Integer> boxes(Absence absence) {
            return world.everyBox()
                    .filter(box ->
                            absence.members().containsKey(world.boxes().get(box).id()))
                    .boxed()
                    .collect(Collectors.toSet());
        }

        private static long millis(Instant at) {
            return Duration.between(Posts.BEGINNING, at).toMillis();
        }

        private static Instant instant(long at) {
            return Posts.BEGINNING.plusMillis(at);
        }
    }
}
