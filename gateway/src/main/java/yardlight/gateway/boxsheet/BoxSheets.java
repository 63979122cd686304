package yardlight.gateway.boxsheet;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.wire.Keys;
import yardlight.gateway.wire.Spans;

/** Puts boxes into words. */
final class BoxSheets {

    private static final int ALARMS = 5;
    private static final int OVER = 5;

    private final Setup setup;
    private final Names names;
    private final Instant now;
    private final Tongue tongue;

    BoxSheets(Setup setup, Instant now, Tongue tongue) {
        this.setup = setup;
        this.names = new Names(setup);
        this.now = now;
        this.tongue = tongue;
    }

    /** A row of the list. */
    record Row(String id, String heard, boolean silent, String beat, String facts) {}

    /** A site and its boxes. */
    record Place(String name, List<Row> rows) {}

    /** The sites that have boxes, in their order. */
    List<Place> places(Map<String, BoxWatch> watches) {
        return setup.sites().values().stream()
                .map(site -> new Place(
                        site.name(),
                        setup.boxesAt(site.id()).stream()
                                .map(box -> row(box, Optional.ofNullable(watches.get(box.id()))))
                                .toList()))
                .filter(place -> !place.rows().isEmpty())
                .toList();
    }

    private Row row(Box box, Optional<BoxWatch> watch) {
        return new Row(
                box.id(),
                heard(box, watch),
                watch.filter(BoxWatch::silent).isPresent(),
                beat(box),
                watch.map(BoxWatch::last).map(this::facts).orElse(List.of()).stream()
                        .map(fact -> fact.name() + " " + fact.value())
                        .collect(Collectors.joining(", ")));
    }

    private String beat(Box box) {
        if (box.every().isEmpty()) {
            return tongue.say("boxsheet.beat.none");
        }
        String every = Spans.words(box.every().get(), tongue);
        return box.learned()
                ? tongue.say("boxsheet.beat.learned", every)
                : tongue.say("boxsheet.beat", every, Spans.words(box.grace(), tongue));
    }

    private String heard(Box box, Optional<BoxWatch> watch) {
        if (watch.isEmpty()) {
            return tongue.say("boxsheet.never");
        }
        String at = clock(box).read(watch.get().heardAt());
        return watch.get().silent() ? tongue.say("boxsheet.silent", at) : tongue.say("boxsheet.heard", at);
    }

    private Clockface clock(Box box) {
        return new Clockface(names.zone(box.site()), now, tongue.locale());
    }

    private List<BoxSheet.Fact> facts(Heartbeat said) {
        var facts = new ArrayList<BoxSheet.Fact>();
        said.battery().ifPresent(volts -> fact(facts, "battery", volts + " V"));
        said.signal().ifPresent(dbm -> fact(facts, "signal", dbm + " dBm"));
        said.uptime().ifPresent(uptime -> fact(facts, "uptime", Spans.words(rounded(uptime), tongue)));
        said.feeds()
                .forEach((feed, on) ->
                        facts.add(new BoxSheet.Fact(feed, tongue.say(on ? "boxsheet.feed.on" : "boxsheet.feed.off"))));
        return facts;
    }

    private void fact(List<BoxSheet.Fact> facts, String word, String value) {
        facts.add(new BoxSheet.Fact(tongue.say("boxsheet." + word), value));
    }

    /** To what somebody reads at a glance. */
    private static Duration rounded(Duration uptime) {
        if (uptime.compareTo(Duration.ofDays(2)) >= 0) {
            return Duration.ofDays(uptime.toDays());
        }
        return uptime.compareTo(Duration.ofHours(2)) >= 0
                ? Duration.ofHours(uptime.toHours())
                : uptime.compareTo(Duration.ofMinutes(2)) >= 0 ? Duration.ofMinutes(uptime.toMinutes()) : uptime;
    }

    /** @param alarms the newest of its site, whoever reported them */
    BoxSheet sheet(Box box, Optional<BoxWatch> watch, List<RecordedAlarm> alarms, List<Keys.Known> keys) {
        return new BoxSheet(
                box.id(),
                box.site(),
                names.site(box.site()),
                heard(box, watch),
                watch.filter(BoxWatch::silent).isPresent(),
                watch.map(BoxWatch::last).map(this::facts).orElse(List.of()),
                alarms.stream()
                        .map(RecordedAlarm::alarm)
                        .filter(alarm -> alarm.box().filter(box.id()::equals).isPresent())
                        .limit(ALARMS)
                        .map(alarm -> alarm(box, alarm))
                        .toList(),
                !setup.point(box.site(), "box").inService(),
                box.signed(),
                shown(keys).map(key -> key(box, key)).toList(),
                keys.isEmpty() ? "" : keys.get(keys.size() - 1).id());
    }

    /** Those that open the door, then the newest of those that are over; the newest first. */
    private static Stream<Keys.Known> shown(List<Keys.Known> keys) {
        List<Keys.Known> newest = new ArrayList<>(keys);
        Collections.reverse(newest);
        return Stream.concat(
                newest.stream().filter(Keys.Known::good),
                newest.stream().filter(key -> !key.good()).limit(OVER));
    }

    private String alarm(Box box, Alarm alarm) {
        String since = alarm.receivedAt().map(clock(box)::read).orElse("");
        String words = tongue.say("boxsheet.alarm", names.alarm(alarm), since);
        return alarm.returnedAt()
                .map(at -> words + ", "
                        + tongue.say("boxsheet.alarm.over", clock(box).read(at)))
                .orElse(words);
    }

    private BoxSheet.KeyRow key(Box box, Keys.Known key) {
        Clockface clock = clock(box);
        var words = new ArrayList<String>();
        words.add(tongue.say("boxsheet.key.made", clock.read(key.createdAt())));
        words.add(key.usedAt()
                .map(at -> tongue.say("boxsheet.key.used", clock.read(at)))
                .orElse(tongue.say("boxsheet.key.unused")));
        if (key.revokedAt().isPresent()) {
            words.add(tongue.say(
                    "boxsheet.key.revoked", clock.read(key.revokedAt().get())));
        } else if (key.endsAt().isPresent()) {
            String end = clock.read(key.endsAt().get());
            words.add(tongue.say(key.good() ? "boxsheet.key.ends" : "boxsheet.key.ended", end));
        }
        return new BoxSheet.KeyRow(key.id(), words, key.good());
    }
}
