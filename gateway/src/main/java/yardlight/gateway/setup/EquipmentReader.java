package yardlight.gateway.setup;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import yardlight.escalation.runtime.PumpRules;
import yardlight.escalation.runtime.Unusual;
import yardlight.escalation.setup.Equipment;
import yardlight.escalation.tank.Head;
import yardlight.escalation.tank.Lying;
import yardlight.escalation.tank.Rectangular;
import yardlight.escalation.tank.Response;
import yardlight.escalation.tank.Strapping;
import yardlight.escalation.tank.Tank;
import yardlight.escalation.tank.TankRules;
import yardlight.escalation.tank.Upright;
import yardlight.escalation.trend.FallRules;
import yardlight.gateway.document.Fields;

/** Reads what a point's readings are of: a tank, a pump, a pressure that may tell of a leak. What is wrong is noted, and left out. */
final class EquipmentReader {

    private static final Duration SHORTEST = Duration.ofMinutes(1);
    private static final Duration DAY = Duration.ofDays(1);
    private static final Duration MONTH = Duration.ofDays(31);

    private EquipmentReader() {}

    static Equipment equipment(Fields point) {
        return new Equipment(
                point.object("tank").flatMap(EquipmentReader::tank),
                point.object("pump").flatMap(EquipmentReader::pump),
                point.object("leak").flatMap(EquipmentReader::leak));
    }

    static Response response(Fields fields) {
        Response usual = Response.USUAL;
        Duration reach = fields.duration("reach", Duration.ZERO, DAY).orElse(usual.reach());
        Duration drive = fields.duration("drive", Duration.ZERO, DAY).orElse(usual.drive());
        Duration act = fields.duration("act", Duration.ZERO, DAY).orElse(usual.act());
        double margin = real(fields, "margin").orElse(usual.margin());
        fields.nothingElse();
        return made(fields, "margin", () -> new Response(reach, drive, act, margin))
                .orElse(usual);
    }

    private static Optional<TankRules> tank(Fields fields) {
        Optional<Tank> tank = shape(fields);
        Optional<Head> head =
                real(fields, "gravity").flatMap(gravity -> made(fields, "gravity", () -> new Head(gravity)));
        fields.nothingElse();
        return tank.map(one -> new TankRules(one, head));
    }

    private static Optional<Tank> shape(Fields fields) {
        if (fields.has("strapping")) {
            List<Strapping.Row> rows = fields.pairs("strapping").stream()
                    .map(row -> new Strapping.Row(
                            row.get(0).doubleValue(), row.get(1).doubleValue()))
                    .toList();
            return made(fields, "strapping", () -> new Strapping(rows));
        }
        Optional<String> shape = fields.needs("shape")
                .as(
                        "shape",
                        "must be upright, lying or box",
                        text -> Optional.of(text).filter(List.of("upright", "lying", "box")::contains));
        return shape.flatMap(name -> switch (name) {
            case "upright" -> sized(fields, size -> new Upright(size[0], size[1]), "diameter", "height");
            case "lying" -> sized(fields, size -> new Lying(size[0], size[1]), "diameter", "length");
            default -> sized(fields, size -> new Rectangular(size[0], size[1], size[2]), "length", "width", "height");
        });
    }

    private static Optional<Tank> sized(
            Fields fields, java.util.function.Function<double[], Tank> tank, String... names) {
        fields.needs(names);
        var sizes = new double[names.length];
        boolean whole = true;
        for (int i = 0; i < names.length; i++) {
            Optional<Double> size = real(fields, names[i]);
            if (size.isPresent() && size.get() <= 0) {
                fields.fault(names[i], String.format(Locale.ROOT, "must be above 0: %s", size.get()));
                size = Optional.empty();
            }
            whole = whole && size.isPresent();
            sizes[i] = size.orElse(1.0);
        }
        return whole ? Optional.of(tank.apply(sizes)) : Optional.empty();
    }

    private static Optional<PumpRules> pump(Fields fields) {
        double on = real(fields, "on").orElse(PumpRules.HALF);
        Duration hold = fields.duration("hold", SHORTEST, MONTH).orElse(PumpRules.HOLD);
        Optional<String> empties = reference(fields, "empties");
        Optional<String> pressure = reference(fields, "pressure");
        double least = real(fields, "least").orElse(Unusual.USUAL.least());
        double deviations = real(fields, "deviations").orElse(Unusual.USUAL.deviations());
        int days = fields.whole("days", 5, PumpRules.DAYS).orElse(PumpRules.DAYS);
        fields.nothingElse();
        return made(fields, "least", () -> new Unusual(least, deviations))
                .map(unusual -> new PumpRules(on, hold, empties, pressure, unusual, days));
    }

    private static Optional<FallRules> leak(Fields fields) {
        FallRules usual = FallRules.USUAL;
        Duration within =
                fields.duration("within", SHORTEST, Duration.ofHours(1)).orElse(usual.within());
        double factor = real(fields, "factor").orElse(usual.factor());
        double least = real(fields, "least").orElse(usual.least());
        Duration learn = fields.duration("learn", Duration.ZERO, MONTH).orElse(usual.learn());
        fields.nothingElse();
        return made(fields, "factor", () -> new FallRules(within, factor, least, learn));
    }

    private static Optional<String> reference(Fields fields, String name) {
        return fields.has(name) ? Optional.of(Ids.reference(fields, name)) : Optional.empty();
    }

    private static Optional<Double> real(Fields fields, String name) {
        return fields.number(name).map(BigDecimal::doubleValue);
    }

    /** What the record itself refuses is noted where it is most likely to be. */
    private static <T> Optional<T> made(Fields fields, String name, Supplier<T> made) {
        try {
            return Optional.of(made.get());
        } catch (IllegalArgumentException refused) {
            fields.fault(name, refused.getMessage());
            return Optional.empty();
        }
    }
}
