package yardlight.gateway.board;

import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import yardlight.channels.Channel;
import yardlight.db.alarm.Alarms;
import yardlight.db.alarm.HeardBoxes;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.setup.SetupInForce;

/** Makes the first page of what is known now. */
@Component
class Sheets {

    /** Of the people and points that want seeing to so many are named; the others are on pages of their own. */
    private static final int NAMED = 10;

    private final Alarms alarms;
    private final HeardBoxes boxes;
    private final Reached reached;
    private final Unset unset;
    private final Uncovered uncovered;
    private final SetupInForce inForce;
    private final List<Channel> channels;
    private final InstantSource clock;

    Sheets(
            Alarms alarms,
            HeardBoxes boxes,
            Reached reached,
            Unset unset,
            Uncovered uncovered,
            SetupInForce inForce,
            List<Channel> channels,
            InstantSource clock) {
        this.alarms = alarms;
        this.boxes = boxes;
        this.reached = reached;
        this.unset = unset;
        this.uncovered = uncovered;
        this.inForce = inForce;
        this.channels = channels;
        this.clock = clock;
    }

    Sheet now(Tongue tongue) {
        Instant now = clock.instant();
        Setup setup = inForce.setup();
        List<RecordedAlarm> current = alarms.current();
        List<RecordedAlarm> shown =
                current.stream().filter(one -> !one.alarm().state().withheld()).toList();
        var places = new Places(setup, boxes.all(), tongue, now);
        return new Sheet(
                new Clockface(zone(setup), now, tongue.locale()).read(now),
                (int) current.stream()
                        .filter(one -> one.alarm().state().awaitsAnswer())
                        .count(),
                places.of(shown),
                places.rows(current.stream()
                        .filter(one -> one.alarm().state().withheld())
                        .toList()),
                places.quiet(shown.stream().map(one -> one.alarm().key().site()).collect(Collectors.toSet())),
                wants(setup, current, tongue, now),
                setup.sites().isEmpty());
    }

    private Sheet.Wants wants(Setup setup, List<RecordedAlarm> current, Tongue tongue, Instant now) {
        List<Sheet.Person> people = reached.of(setup, tongue, now);
        List<Unset.Point> points = unset.of(setup);
        List<Sheet.Gap> gaps = uncovered.of(setup, tongue, now);
        return new Sheet.Wants(
                gaps.stream().limit(NAMED).toList(),
                people.stream().limit(NAMED).toList(),
                points.stream().limit(NAMED).toList(),
                Stream.of(
                                cannotSend(channels, setup),
                                Unreachable.of(setup, current, tongue),
                                uncovered.unknown(tongue))
                        .flatMap(List::stream)
                        .toList(),
                beyond(gaps) + beyond(people) + beyond(points));
    }

    private static int beyond(List<?> all) {
        return Math.max(0, all.size() - NAMED);
    }

    /** The channels that nothing gets out by. One that is not set up is no news as long as nobody has a line on it. */
    static List<String> cannotSend(List<? extends Channel> channels, Setup setup) {
        return channels.stream()
                .filter(channel -> switch (channel.health().state()) {
                    case READY -> false;
                    case TROUBLED -> true;
                    case NOT_CONFIGURED -> setup.channels().contains(channel.name());
                })
                .map(channel -> channel.name() + ": " + channel.health().sentence())
                .toList();
    }

    /** The clock on the page is that of the first site. */
    private static ZoneId zone(Setup setup) {
        return setup.sites().values().stream().findFirst().map(Site::zone).orElse(ZoneOffset.UTC);
    }
}
