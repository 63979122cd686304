package yardlight.gateway.board;

import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import yardlight.channels.Channel;
import yardlight.db.alarm.Alarms;
import yardlight.db.alarm.HeardBoxes;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.setup.SetupInForce;

/** Makes the first page of what is known now. */
@Component
class Sheets {

    private final Alarms alarms;
    private final HeardBoxes boxes;
    private final Reached reached;
    private final Unset unset;
    private final SetupInForce inForce;
    private final List<Channel> channels;
    private final InstantSource clock;

    Sheets(
            Alarms alarms,
            HeardBoxes boxes,
            Reached reached,
            Unset unset,
            SetupInForce inForce,
            List<Channel> channels,
            InstantSource clock) {
        this.alarms = alarms;
        this.boxes = boxes;
        this.reached = reached;
        this.unset = unset;
        this.inForce = inForce;
        this.channels = channels;
        this.clock = clock;
    }

    Sheet now() {
        Instant now = clock.instant();
        Setup setup = inForce.setup();
        List<RecordedAlarm> current = alarms.current();
        var cards = new Cards(setup, now);
        return new Sheet(
                new Clockface(zone(setup), now, Locale.ENGLISH).read(now),
                which(current, cards, one -> one.alarm().state().awaitsAnswer()),
                which(
                        current,
                        cards,
                        one -> !one.alarm().state().awaitsAnswer()
                                && !one.alarm().state().withheld()),
                which(current, cards, one -> one.alarm().state().withheld()),
                new Places(boxes.all(), now).of(setup, current),
                reached.of(setup, now),
                unset.of(setup),
                Stream.concat(cannotSend(channels, setup).stream(), Unreachable.of(setup, current).stream())
                        .toList(),
                setup.sites().isEmpty());
    }

    private static List<Sheet.Card> which(List<RecordedAlarm> alarms, Cards cards, Predicate<RecordedAlarm> wanted) {
        return alarms.stream().filter(wanted).map(cards::of).toList();
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
