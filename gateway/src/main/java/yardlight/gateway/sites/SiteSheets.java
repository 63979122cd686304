package yardlight.gateway.sites;

import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.AlarmFilter;
import yardlight.db.alarm.Alarms;
import yardlight.db.alarm.HeardBoxes;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.db.reading.Newest;
import yardlight.db.shutin.ShutIns;
import yardlight.escalation.BoxAlarms;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.measure.Archive;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.ShutInWords;
import yardlight.gateway.page.Telling;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;
import yardlight.gateway.strip.Rounded;

/** Makes the page of a site of what is known of it: a fixed number of queries, whatever it has. */
@Component
class SiteSheets {

    private static final int LATELY = 20;

    private static final Comparator<Alarm> MOST_URGENT = Comparator.comparing(
                    (Alarm alarm) -> !alarm.state().awaitsAnswer())
            .thenComparing(alarm -> !alarm.live())
            .thenComparing(Alarm::priority, Comparator.reverseOrder())
            .thenComparing(alarm -> alarm.occurredAt().orElse(Instant.MIN), Comparator.reverseOrder());

    private final Alarms alarms;
    private final HeardBoxes heard;
    private final SetupInForce inForce;
    private final Service service;
    private final ShutIns shutIns;
    private final Archive archive;
    private final InstantSource clock;

    SiteSheets(
            Alarms alarms,
            HeardBoxes heard,
            SetupInForce inForce,
            Service service,
            ShutIns shutIns,
            Archive archive,
            InstantSource clock) {
        this.archive = archive;
        this.shutIns = shutIns;
        this.alarms = alarms;
        this.heard = heard;
        this.inForce = inForce;
        this.service = service;
        this.clock = clock;
    }

    /**
     * @throws Problem 404 when there is no such site
     */
    SiteSheet of(String id, Tongue tongue) {
        Setup setup = inForce.setup();
        Site site = setup.site(id).orElseThrow(() -> Problem.notFound("there is no such site"));
        var clockface = new Clockface(site.zone(), clock.instant(), tongue.locale());
        var telling = new Telling(tongue, new Names(setup), clockface);
        List<Alarm> newest = alarms.newestAt(id);
        List<Alarm> live =
                newest.stream().filter(Alarm::live).sorted(MOST_URGENT).toList();
        return new SiteSheet(
                id,
                site.name(),
                clockface.read(clockface.now()),
                site.ladder(),
                site.inService(),
                site.inService() ? "" : service.since(id, clockface, tongue),
                setup.sites().containsKey(id),
                new ShutInWords(tongue, new Names(setup), clockface).brief(setup.site(id), shutIns.of(id)),
                boxes(setup.boxesAt(id), telling),
                points(setup, id, newest, telling),
                live.stream().map(alarm -> row(alarm, telling)).toList(),
                lately(id, live, telling));
    }

    private List<SiteSheet.Row> lately(String site, List<Alarm> live, Telling telling) {
        List<String> now = live.stream().map(Alarm::id).toList();
        var filter = new AlarmFilter(
                Optional.of(site), Optional.empty(), Optional.empty(), Optional.empty(), LATELY + now.size());
        return alarms.find(filter).stream()
                .map(RecordedAlarm::alarm)
                .filter(alarm -> !now.contains(alarm.id()))
                .limit(LATELY)
                .map(alarm -> row(alarm, telling))
                .toList();
    }

    private static SiteSheet.Row row(Alarm alarm, Telling telling) {
        String since = alarm.occurredAt()
                .map(at -> ", "
                        + telling.tongue().say("sites.since", telling.clock().read(at)))
                .orElse("");
        String by = alarm.live() || alarm.acknowledgedBy().isEmpty()
                ? ""
                : ", "
                        + telling.tongue()
                                .say(
                                        "sites.had",
                                        telling.names()
                                                .contact(alarm.acknowledgedBy().get()));
        return new SiteSheet.Row(
                alarm.id(),
                telling.subject(alarm),
                telling.standing(alarm) + ", " + telling.priority(alarm.priority()) + since + by,
                alarm.state().awaitsAnswer());
    }

    private List<SiteSheet.Box> boxes(List<Box> boxes, Telling telling) {
        Map<String, BoxWatch> watches = heard.of(boxes.stream().map(Box::id).toList());
        return boxes.stream()
                .map(box -> box(box, Optional.ofNullable(watches.get(box.id())), telling))
                .toList();
    }

    private static SiteSheet.Box box(Box box, Optional<BoxWatch> known, Telling telling) {
        Tongue tongue = telling.tongue();
        Clockface clock = telling.clock();
        var facts = new ArrayList<String>();
        known.ifPresent(watch -> {
            watch.last().battery().ifPresent(volts -> facts.add(tongue.say("sites.battery", number(volts))));
            watch.last().signal().ifPresent(dbm -> facts.add(tongue.say("sites.signal", number(dbm))));
            watch.last().feeds().forEach((feed, on) -> facts.add(tongue.say(on ? "sites.on" : "sites.off", feed)));
        });
        box.feed().ifPresent(feed -> facts.add(tongue.say("sites.feed", feed)));
        box.link().ifPresent(link -> facts.add(tongue.say("sites.link", link)));
        String words = known.map(watch -> tongue.say(
                        watch.silent() ? "sites.silent" : "sites.heard",
                        clock.ago(watch.heardAt()),
                        clock.read(watch.heardAt())))
                .orElseGet(() -> tongue.say("sites.never"));
        return new SiteSheet.Box(box.id(), known.filter(BoxWatch::silent).isPresent(), words, facts);
    }

    /** {@code 12.6}, and {@code -87} without a point. */
    static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }

    private List<SiteSheet.Point> points(Setup setup, String site, List<Alarm> newest, Telling telling) {
        Map<String, Newest> readings =
                archive.newest(site).stream().collect(Collectors.toMap(Newest::point, Function.identity()));
        var ids = new LinkedHashMap<String, Optional<Alarm>>();
        setup.points().stream()
                .filter(point -> point.site().equals(site))
                .forEach(point -> ids.put(point.id(), Optional.empty()));
        readings.keySet().stream().sorted().forEach(id -> ids.putIfAbsent(id, Optional.empty()));
        newest.stream()
                .sorted(MOST_URGENT.thenComparing(Alarm::key))
                .forEach(alarm ->
                        ids.merge(alarm.key().point(), Optional.of(alarm), (known, other) -> known.or(() -> other)));
        return Stream.concat(
                        ids.entrySet().stream().filter(one -> !own(site, one.getKey())),
                        ids.entrySet().stream().filter(one -> own(site, one.getKey())))
                .map(one -> point(
                        setup.point(site, one.getKey()),
                        setup.known(site, one.getKey()).isPresent(),
                        one.getValue(),
                        read(Optional.ofNullable(readings.get(one.getKey())), telling),
                        telling))
                .toList();
    }

    /** {@code 12.4 ft, 3 min ago}. */
    private static String read(Optional<Newest> newest, Telling telling) {
        return newest.map(one -> telling.tongue()
                        .say(
                                "sites.read",
                                Rounded.of(one.value(), one.unit().orElse("")),
                                telling.clock().ago(one.at())))
                .orElse("");
    }

    private static boolean own(String site, String point) {
        return site.equals(Site.GATEWAY) || BoxAlarms.have(point);
    }

    private static SiteSheet.Point point(
            Point point, boolean set, Optional<Alarm> alarm, String reading, Telling telling) {
        Tongue tongue = telling.tongue();
        String state = alarm.map(one -> one.live()
                        ? telling.condition(one.condition()) + ": " + telling.standing(one)
                        : tongue.say(
                                "sites.last",
                                telling.condition(one.condition()),
                                one.occurredAt().map(telling.clock()::read).orElse("")))
                .orElseGet(() -> tongue.say("sites.no-alarm"));
        return new SiteSheet.Point(
                point.id(),
                point.name(),
                set,
                own(point.site(), point.id()),
                point.inService(),
                reading,
                state,
                alarm.map(Alarm::id).orElse(""),
                alarm.filter(one -> one.state().awaitsAnswer()).isPresent());
    }
}
