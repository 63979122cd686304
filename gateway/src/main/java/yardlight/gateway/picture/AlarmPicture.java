package yardlight.gateway.picture;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import yardlight.channels.Attachment;
import yardlight.db.alarm.Told;
import yardlight.db.reading.Curve;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Telling;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.sentence.Locales;
import yardlight.gateway.setup.SetupInForce;
import yardlight.gateway.strip.Account;
import yardlight.gateway.strip.Limit;
import yardlight.gateway.strip.Limits;
import yardlight.gateway.strip.Past;
import yardlight.gateway.strip.Rounded;
import yardlight.gateway.strip.Stretch;

/** Makes the picture for a notice: the point of its alarm, an hour before, or longer where readings come rarely. */
@Component
class AlarmPicture {

    private static final List<Duration> BEFORE =
            List.of(Duration.ofHours(1), Duration.ofHours(6), Duration.ofDays(1), Duration.ofDays(7));

    /** Fewer make no curve. */
    private static final int FEW = 6;

    /** As many as there are dots along the picture. */
    private static final int MOST = 500;

    private final Told told;
    private final Past past;
    private final SetupInForce inForce;
    private final MessageSource words;
    private final InstantSource clock;

    AlarmPicture(Told told, Past past, SetupInForce inForce, MessageSource words, InstantSource clock) {
        this.told = told;
        this.past = past;
        this.inForce = inForce;
        this.words = words;
        this.clock = clock;
    }

    /** Of the first alarm of which there are readings; empty when there are none of any. */
    Optional<Attachment> of(Notice notice) {
        return told.about(notice.id()).stream()
                .flatMap(alarm -> of(alarm, notice.contact()).stream())
                .findFirst();
    }

    private Optional<Attachment> of(Alarm alarm, String contact) {
        Instant now = clock.instant();
        Instant began = alarm.occurredAt().orElse(now);
        for (Duration before : BEFORE) {
            var stretch = new Stretch(began.minus(before), now.isAfter(began) ? now : began.plusSeconds(1));
            Curve curve = past.series(alarm.key().site(), alarm.key().point(), stretch.from(), stretch.to(), MOST);
            if (curve.samples().size() >= FEW) {
                return Optional.of(draw(alarm, contact, stretch, curve));
            }
        }
        return Optional.empty();
    }

    private Attachment draw(Alarm alarm, String contact, Stretch stretch, Curve curve) {
        Setup setup = inForce.setup();
        var names = new Names(setup);
        String site = alarm.key().site();
        var tongue =
                new Tongue(words, locale(Optional.ofNullable(setup.contacts().get(contact))));
        var clockface = new Clockface(names.zone(site), clock.instant(), tongue.locale());
        Point point = setup.point(site, alarm.key().point());
        List<Limit> limits = Limits.of(point, new Telling(tongue, names, clockface));
        String unit = curve.unit().or(point::unit).orElse("");
        var account = new Account(point.name(), unit, curve.samples(), clockface, tongue);
        String said = tongue.say(
                "strip.picture", clockface.read(stretch.from()), clockface.read(stretch.to()), account.sentence());
        byte[] png = Drawing.of(
                        stretch, curve.samples(), limits, alarm.occurredAt().orElse(stretch.to()), clockface)
                .png();
        return new Attachment("curve.png", "image/png", png, said + drawnIn(limits, unit, tongue));
    }

    private static String drawnIn(List<Limit> limits, String unit, Tongue tongue) {
        return limits.isEmpty()
                ? ""
                : " "
                        + tongue.say(
                                "strip.limits",
                                limits.stream()
                                        .map(limit -> limit.words() + " " + Rounded.of(limit.value(), unit))
                                        .collect(Collectors.joining(", ")));
    }

    private static Locale locale(Optional<Contact> contact) {
        return contact.map(Contact::language).map(Locales::of).orElse(Locales.ENGLISH);
    }
}
