package yardlight.escalation.wording;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.UnaryOperator;
import yardlight.escalation.alarm.AlarmDraft;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Site;

/** Subjects made for tests of the wording: an alarm that began at 2:13 in the morning in Chicago. */
final class Made {

    static final Instant BEGAN = Instant.parse("2026-11-25T08:13:40Z");
    static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    static final Site MESA = new Site("mesa-9", "Mesa 9", CHICAGO, "night");

    private Made() {}

    static Subject subject(Site site, Point point, String condition, UnaryOperator<AlarmDraft> with) {
        AlarmDraft draft = new AlarmDraft(new AlarmKey("mesa-9", "any", condition))
                .state(AlarmState.UNACKNOWLEDGED)
                .occurredAt(Optional.of(BEGAN));
        return new Subject(site, point, with.apply(draft).done());
    }

    static Subject subject(String site, String point, String condition) {
        return subject(site(site), point(point), condition, draft -> draft);
    }

    static Subject tank(UnaryOperator<AlarmDraft> with) {
        return subject(MESA, point("WATER TANK"), "high-high", with);
    }

    static Site site(String name) {
        return new Site(name.toLowerCase(java.util.Locale.ROOT).replace(' ', '-'), name, CHICAGO, "night");
    }

    static Point point(String name) {
        return new Point(
                "some-point",
                "mesa-9",
                name,
                Optional.of("ft"),
                Optional.empty(),
                Timing.PLAIN,
                java.util.Set.of(),
                true);
    }

    static Measured measured(String value, String limit, String unit) {
        return new Measured(
                Optional.ofNullable(value).map(BigDecimal::new),
                Optional.ofNullable(limit).map(BigDecimal::new),
                Optional.ofNullable(unit),
                Optional.empty());
    }

    static Answering code(int code) {
        return new Answering(Optional.of(code), Optional.empty());
    }

    static Answering all() {
        return new Answering(Optional.empty(), Optional.empty());
    }

    static Answering link(int code, String link) {
        return new Answering(Optional.of(code), Optional.of(link));
    }
}
