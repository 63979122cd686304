package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/** Made-up sites whose boxes say every minute that they live, and go quiet when a test says so. */
final class Silent {

    private final List<Site> sites = new ArrayList<>();
    private final List<Box> boxes = new ArrayList<>();
    private final List<Point> points = new ArrayList<>();
    private final Map<String, Heartbeat> saying = new TreeMap<>();
    private final Set<String> quiet = new LinkedHashSet<>();
    private final Map<String, Instant> started = new TreeMap<>();
    private Optional<Play> play = Optional.empty();
    private Instant now = Fixtures.at("2026-11-25T01:00");

    /** A box at a site of its own, or at one that is there already, which says nothing but that it lives. */
    Silent box(String id, String site, String feed, String link, boolean battery) {
        if (sites.stream().noneMatch(one -> one.id().equals(site))) {
            sites.add(new Site(site, site.replace('-', ' '), Fixtures.CHICAGO, "night"));
        }
        boxes.add(new Box(
                id,
                site,
                Optional.of(feed).filter(name -> !name.isEmpty()),
                Optional.of(link).filter(name -> !name.isEmpty()),
                battery,
                Optional.of(Duration.ofMinutes(1)),
                Duration.ofMinutes(2)));
        saying.put(id, Heartbeat.BARE);
        started.put(id, Instant.EPOCH);
        return this;
    }

    /** From its next beat on. */
    Silent says(String id, Map<String, Boolean> feeds) {
        saying.put(id, new Heartbeat(Optional.empty(), feeds, Optional.empty(), Optional.empty(), Optional.empty()));
        return this;
    }

    Silent says(String id, double battery, double signal) {
        saying.put(
                id,
                new Heartbeat(Optional.empty(), Map.of(), Optional.of(battery), Optional.of(signal), Optional.empty()));
        return this;
    }

    Silent quiet(String... ids) {
        quiet.addAll(List.of(ids));
        return this;
    }

    /** Heard again from the next minute on, having run through. */
    Silent back(String... ids) {
        List.of(ids).forEach(quiet::remove);
        return this;
    }

    /** Heard again, having started anew just now. */
    Silent anew(String... ids) {
        List.of(ids).forEach(id -> started.put(id, now));
        return back(ids);
    }

    /** Every box beats once in each of these minutes unless it is quiet; what is due happens in between. */
    Silent minutes(int count) {
        Play game = play();
        for (int minute = 0; minute < count; minute++) {
            int second = 0;
            for (Box box : boxes) {
                Instant at = now.plusSeconds(second++ % 50);
                if (!quiet.contains(box.id())) {
                    game.at(at, new Stimulus.Beat(box.id(), beat(box.id(), at)));
                }
            }
            now = now.plusSeconds(60);
            for (Box box : boxes) {
                game.at(now, new Stimulus.BoxDue(box.id()));
            }
            for (var alarm : game.picture.alarms()) {
                due(alarm).ifPresent(at -> game.at(now, new Stimulus.AlarmDue(alarm.key())));
            }
            for (String contact : game.picture.setup().contacts().keySet()) {
                game.at(now, new Stimulus.DeskDue(contact));
            }
        }
        return this;
    }

    /** Only what has a time of its own is looked at by itself, as in the gateway. */
    private Optional<Instant> due(Alarm alarm) {
        Timing timing = play().picture
                .setup()
                .point(alarm.key().site(), alarm.key().point())
                .timing();
        return alarm.dueAt(timing).filter(at -> !at.isAfter(now));
    }

    /** Somebody works on the box of a site. */
    Silent outOfService(String site) {
        var box = new Point("box", site, "BOX", Optional.empty(), Optional.empty(), Timing.PLAIN, Set.of(), false);
        points.add(box);
        return this;
    }

    /** Somebody begins to work on a point. */
    Silent outOfService(String site, String point) {
        points.add(new Point(point, site, point, Optional.empty(), Optional.empty(), Timing.PLAIN, Set.of(), false));
        return edited();
    }

    /** A point that is suppressed by design while another alarm of its site is active. */
    Silent suppressed(String site, String point, String by) {
        points.add(new Point(
                point,
                site,
                point.toUpperCase(Locale.ROOT),
                Optional.empty(),
                Optional.empty(),
                Timing.PLAIN,
                Set.of(by),
                true));
        return this;
    }

    /** Somebody begins to work on a whole site, or has done with it. */
    Silent inService(String site, boolean serves) {
        sites.replaceAll(one -> one.id().equals(site) ? with(one, serves) : one);
        return edited();
    }

    private static Site with(Site site, boolean serves) {
        return new Site(site.id(), site.name(), site.zone(), site.ladder(), site.fills(), site.empties(), serves);
    }

    /** The site and its boxes are no longer set up. */
    Silent without(String site) {
        sites.removeIf(one -> one.id().equals(site));
        boxes.removeIf(one -> one.site().equals(site));
        return edited();
    }

    /** Not in the next setup, unless it is put there anew. */
    Silent remove(String box) {
        boxes.removeIf(one -> one.id().equals(box));
        return this;
    }

    /** The setup is what was said so far from now on. */
    Silent edited() {
        now(new Stimulus.SetupChanged(setup(), "owner"));
        return this;
    }

    /** Something else happens now. */
    void now(Stimulus stimulus) {
        play().at(now, stimulus);
    }

    private Heartbeat beat(String id, Instant at) {
        Heartbeat said = saying.get(id);
        Duration uptime = Duration.between(started.get(id), at);
        return new Heartbeat(Optional.of(uptime), said.feeds(), said.battery(), said.signal(), Optional.empty());
    }

    private Setup setup() {
        return new Setup(
                sites,
                boxes,
                points,
                List.of(Fixtures.ana(), Fixtures.ben()),
                List.of(Fixtures.crew()),
                List.of(Fixtures.night()));
    }

    Play play() {
        if (play.isEmpty()) {
            play = Optional.of(new Play(setup()));
        }
        return play.get();
    }

    /** Those that are worded: what waits has no words yet. */
    List<String> texts() {
        return play().picture.notices().stream()
                .filter(notice -> notice.state() != NoticeState.CANCELLED)
                .map(Notice::text)
                .filter(text -> !text.isEmpty())
                .toList();
    }

    Alarm alarm(String site) {
        return play().picture.alarm(BoxAlarms.silence(site));
    }

    Alarm link(String site, String link) {
        return play().picture.alarm(BoxAlarms.silence(Path.link(link, "night"), site));
    }

    Absence absence(String site) {
        return play().picture.absence(Path.site(site)).orElseThrow();
    }

    Absence onFeed(String feed) {
        return play().picture.absence(Path.feed(feed, "night")).orElseThrow();
    }

    Absence onLink(String link) {
        return play().picture.absence(Path.link(link, "night")).orElseThrow();
    }
}
