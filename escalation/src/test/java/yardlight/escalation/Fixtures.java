package yardlight.escalation;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.limit.Limits;
import yardlight.escalation.limit.Rules;
import yardlight.escalation.quiet.QuietHours;
import yardlight.escalation.roster.Relief;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/** One made-up operator for every test: what a test does not care about comes from here. All people are invented. */
public final class Fixtures {

    public static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

    /** The high-high of the water tank on Mesa 9. */
    public static final AlarmKey TANK = new AlarmKey("mesa-9", "water-tank", "high-high");

    /** The injection pump on Mesa 9, standing still. */
    public static final AlarmKey PUMP = new AlarmKey("mesa-9", "injection-pump", "off");

    private Fixtures() {}

    /** An instant by the clock on the wall of Mesa 9: {@code at("2026-11-25T02:13")}. */
    public static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(CHICAGO).toInstant();
    }

    /** The water tank's first occurrence, 18.4 ft against 18.0, since 2:13 in the night, unanswered. */
    public static Alarm anAlarm() {
        Instant since = at("2026-11-25T02:13");
        return Alarm.normal(TANK)
                .draft()
                .occurrence(1)
                .state(AlarmState.UNACKNOWLEDGED)
                .box(Optional.of("mesa-9-box"))
                .priority(Priority.HIGH)
                .measured(measured("18.4", "18.0", "ft"))
                .active(true)
                .seen(false)
                .occurredAt(Optional.of(since))
                .receivedAt(Optional.of(since))
                .activations(List.of(since))
                .done();
    }

    /** The box says that a condition holds, just now, by the clock of the gateway. */
    public static Report active(AlarmKey key, Instant at) {
        return report(key, true, at);
    }

    /** The box says that a condition is over, just now, by the clock of the gateway. */
    public static Report normal(AlarmKey key, Instant at) {
        return report(key, false, at);
    }

    private static Report report(AlarmKey key, boolean active, Instant at) {
        return new Report(key, Optional.of("mesa-9-box"), active, Optional.empty(), Measured.NOTHING, at, false);
    }

    public static Measured measured(String value, String limit, String unit) {
        return new Measured(
                Optional.of(new BigDecimal(value)),
                Optional.of(new BigDecimal(limit)),
                Optional.of(unit),
                Optional.empty());
    }

    public static Site aSite() {
        return new Site("mesa-9", "Mesa 9", CHICAGO, "night");
    }

    public static Box aBox() {
        return new Box(
                "mesa-9-box",
                "mesa-9",
                Optional.of("wells"),
                Optional.of("hub"),
                true,
                Optional.of(Duration.ofMinutes(1)),
                Duration.ofMinutes(2));
    }

    public static Point waterTank() {
        return point("water-tank", "WATER TANK", Optional.of("ft"), Set.of());
    }

    /** Suppressed by design while the pump's own power is off. */
    public static Point injectionPump() {
        return point("injection-pump", "INJECTION PUMP", Optional.empty(), Set.of("power-pump/power-off"));
    }

    private static Point point(String id, String name, Optional<String> unit, Set<String> suppressedWhile) {
        return new Point(id, "mesa-9", name, unit, Optional.of(Priority.HIGH), Timing.PLAIN, suppressedWhile, true);
    }

    /** Two lines, quiet from 21:00 to 06:00 below high. */
    public static Contact ana() {
        return new Contact(
                "ana",
                "Ana Ruelas",
                CHICAGO,
                Language.EN,
                List.of(new Line("sms-mail", "5755550101@txt.example"), new Line("mail", "ana@mesa.example")),
                List.of(QuietHours.daily(LocalTime.of(21, 0), LocalTime.of(6, 0), CHICAGO, Priority.HIGH)),
                20);
    }

    /** One line, never quiet. */
    public static Contact ben() {
        return new Contact(
                "ben",
                "Ben Tully",
                CHICAGO,
                Language.EN,
                List.of(new Line("sms-mail", "5755550102@txt.example")),
                List.of(),
                20);
    }

    /** Ana and Ben week about from Monday 2026-11-23 07:00; Ben stands in over Christmas. */
    public static Roster crew() {
        return new Roster(
                "crew",
                CHICAGO,
                LocalDateTime.parse("2026-11-23T07:00"),
                Duration.ofDays(7),
                List.of("ana", "ben"),
                List.of(new Relief(
                        LocalDateTime.parse("2026-12-24T07:00"), LocalDateTime.parse("2026-12-26T07:00"), "ben")));
    }

    /** Ana twice, five minutes each; the crew, five minutes; everyone three times, a quarter of an hour each; once again. */
    public static Ladder night() {
        return new Ladder(
                "night",
                Ladder.EndsWhen.ACKNOWLEDGED,
                List.of(
                        new Rung(List.of("ana"), Duration.ofMinutes(5), 2),
                        new Rung(List.of("roster:crew"), Duration.ofMinutes(5), 1),
                        new Rung(List.of(Rung.EVERYONE), Duration.ofMinutes(15), 3)),
                1);
    }

    /** Mesa 9 with its box, Ana and Ben, and no more than this ladder. */
    public static Setup calling(Ladder ladder) {
        return new Setup(
                List.of(aSite()), List.of(aBox()), List.of(), List.of(ana(), ben()), List.of(), List.of(ladder));
    }

    /** The water tank is read: high-high above 18.0 ft, high above 16, half a foot of deadband, and missed after 15 min. */
    public static Point measuredTank() {
        var limits = new Limits(
                Optional.of(new BigDecimal("18.0")),
                Optional.of(new BigDecimal("16")),
                Optional.of(new BigDecimal("2")),
                Optional.empty(),
                new BigDecimal("0.5"));
        return waterTank()
                .with(new Rules(
                        Optional.of(limits),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Duration.ofMinutes(15)),
                        Optional.empty()));
    }

    /** The same operator, whose box reads the water tank. */
    public static Setup measuring() {
        return new Setup(
                List.of(aSite()),
                List.of(aBox()),
                List.of(measuredTank(), injectionPump()),
                List.of(ana(), ben()),
                List.of(crew()),
                List.of(night()));
    }

    public static Setup theSetup() {
        return new Setup(
                List.of(aSite()),
                List.of(aBox()),
                List.of(waterTank(), injectionPump()),
                List.of(ana(), ben()),
                List.of(crew()),
                List.of(night()));
    }
}
