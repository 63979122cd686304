package yardlight.demo.study;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardlight.demo.lease.LeaseDesign;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.limit.Drift;
import yardlight.escalation.limit.Limits;
import yardlight.escalation.limit.Rules;
import yardlight.escalation.runtime.PumpRules;
import yardlight.escalation.runtime.Unusual;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Equipment;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.tank.TankRules;
import yardlight.escalation.tank.Upright;
import yardlight.escalation.trend.FallRules;

/**
 * How the owner of a lease sets it up who knows the levels of the float switch, the sizes of the tanks and what the
 * pressures usually are: nothing is fitted to a seed.
 */
final class StudySetup {

    static final String SITE = "larkspur";
    static final String BOX = "larkspur-box";
    static final String WATER = "water-tank";
    static final String OIL = "oil-tank";
    static final String SEPARATOR = "separator";
    static final String INJECTION = "injection-line";
    static final String PUMP = "injection-pump";
    static final ZoneId ZONE = ZoneId.of("America/Chicago");

    private static final Duration MISSING = Duration.ofMinutes(30);

    private StudySetup() {}

    static Setup of(LeaseDesign design) {
        var site = new Site(SITE, "Larkspur", ZONE, "night");
        var box = new Box(
                BOX,
                SITE,
                Optional.of("wells"),
                Optional.empty(),
                true,
                Optional.of(Duration.ofMinutes(5)),
                Duration.ofMinutes(10));
        var ana = new Contact(
                "ana", "Ana Ruelas", ZONE, Language.EN, List.of(new Line("mail", "ana@mesa.example")), List.of(), 20);
        var night = new Ladder(
                "night", Ladder.EndsWhen.ACKNOWLEDGED, List.of(new Rung(List.of("ana"), Duration.ofMinutes(15), 3)), 0);
        return new Setup(List.of(site), List.of(box), points(design), List.of(ana), List.of(), List.of(night));
    }

    private static List<Point> points(LeaseDesign design) {
        return List.of(
                point(WATER, "WATER TANK", "ft", water(design), tank(design)),
                point(OIL, "OIL TANK", "ft", limits("18", "16", null, null, "0.5"), tank(design)),
                point(SEPARATOR, "SEPARATOR", "psi", limits(null, "45", "12", null, "2"), falls()),
                point(INJECTION, "INJECTION LINE", "psi", limits(null, "800", "300", null, "15"), falls()),
                point(PUMP, "INJECTION PUMP", null, rules(null, null, null), pump()));
    }

    private static Point point(String id, String name, String unit, Rules rules, Equipment equipment) {
        return new Point(
                        id,
                        SITE,
                        name,
                        Optional.ofNullable(unit),
                        Optional.of(Priority.HIGH),
                        Timing.PLAIN,
                        Set.of(),
                        true,
                        rules)
                .with(equipment);
    }

    /** A foot and a half beyond the float switch something is wrong with it; a drift is looked for beyond its band. */
    private static Rules water(LeaseDesign design) {
        LeaseDesign.Floats floats = design.floats();
        double low = Math.max(1.2, floats.stop() - 1.5);
        var limits = new Limits(
                Optional.of(feet(design.highSwitch() - 1)),
                Optional.of(feet(floats.start() + 1.5)),
                Optional.of(feet(low)),
                Optional.of(feet(0.8)),
                feet(0.5));
        double band = floats.start() - floats.stop();
        var drift = new Drift(feet((floats.start() + floats.stop()) / 2), feet(band / 2 + 0.25), feet(30));
        return rules(limits, drift, Duration.ofHours(2));
    }

    private static Rules limits(String highHigh, String high, String low, String lowLow, String deadband) {
        var limits = new Limits(number(highHigh), number(high), number(low), number(lowLow), new BigDecimal(deadband));
        return rules(limits, null, null);
    }

    private static Rules rules(Limits limits, Drift drift, Duration stuck) {
        return new Rules(
                Optional.ofNullable(limits),
                Optional.empty(),
                Optional.ofNullable(drift),
                Optional.ofNullable(stuck),
                Optional.of(MISSING),
                Optional.empty());
    }

    private static Optional<BigDecimal> number(String digits) {
        return Optional.ofNullable(digits).map(BigDecimal::new);
    }

    private static BigDecimal feet(double feet) {
        return BigDecimal.valueOf(feet).setScale(2, RoundingMode.HALF_UP);
    }

    private static Equipment tank(LeaseDesign design) {
        var rules = new TankRules(new Upright(LeaseDesign.DIAMETER, design.brim()));
        return new Equipment(Optional.of(rules), Optional.empty(), Optional.empty());
    }

    private static Equipment falls() {
        return new Equipment(Optional.empty(), Optional.empty(), Optional.of(FallRules.USUAL));
    }

    private static Equipment pump() {
        var rules = new PumpRules(
                PumpRules.HALF,
                PumpRules.HOLD,
                Optional.of(WATER),
                Optional.of(INJECTION),
                Unusual.USUAL,
                PumpRules.DAYS);
        return new Equipment(Optional.empty(), Optional.of(rules), Optional.empty());
    }
}
