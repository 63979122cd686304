package yardlight.gateway.sites;

import java.util.List;
import java.util.Set;
import yardlight.escalation.runtime.PumpRules;
import yardlight.escalation.runtime.Unusual;
import yardlight.escalation.trend.FallRules;
import yardlight.gateway.fields.Field;
import yardlight.gateway.fields.Group;
import yardlight.gateway.fields.Kind;
import yardlight.gateway.fields.Layout;

/** All that can be set up of a point, except whether it is in service, for which the page of its site has a button. */
final class PointFields {

    static final String TANK = "tank";

    private static final String STRAPPING = "strapping";
    private static final String UPRIGHT = "upright";
    private static final String LYING = "lying";
    private static final String BOX = "box";
    private static final String SHARE = "share";
    private static final String TIMES = "times";

    private static final Group POINT = Group.of(
            "point",
            Field.text("name"),
            Field.text("unit"),
            Field.choice("priority"),
            Field.span("onDelay"),
            Field.span("offDelay"),
            Field.of(Kind.TICK, "latching"));

    private static final Group LIMITS = Group.any(
            "limits",
            Field.signed("limits/highHigh", Field.OF_POINT),
            Field.signed("limits/high", Field.OF_POINT),
            Field.signed("limits/low", Field.OF_POINT),
            Field.signed("limits/lowLow", Field.OF_POINT),
            Field.number("limits/deadband", Field.OF_POINT).usually("0"));

    private static final Group CHANGE = Group.any(
            "change",
            Field.number("change/rise", Field.OF_POINT),
            Field.number("change/fall", Field.OF_POINT),
            Field.span("change/within"));

    private static final Group DRIFT = Group.any(
            "drift",
            Field.signed("drift/target", Field.OF_POINT),
            Field.number("drift/slack", Field.OF_POINT),
            Field.number("drift/decision", Field.OF_POINT));

    private static final Group SILENCE = Group.of("silence", Field.span("missing"), Field.span("stuck"));

    private static final Group CURRENT = Group.any(
            "current", Field.signed("current/low", Field.OF_POINT), Field.signed("current/high", Field.OF_POINT));

    private static final Group TANKS = Group.cases(
            TANK,
            "shape",
            List.of(UPRIGHT, LYING, BOX, STRAPPING),
            Set.of(STRAPPING),
            Field.number("tank/diameter", Field.OF_TANK).when(UPRIGHT, LYING),
            Field.number("tank/length", Field.OF_TANK).when(LYING, BOX),
            Field.number("tank/width", Field.OF_TANK).when(BOX),
            Field.number("tank/height", Field.OF_TANK).when(UPRIGHT, BOX),
            Field.of(Kind.ROWS, "tank/strapping").in(Field.OF_TANK).when(STRAPPING),
            Field.number("tank/gravity", "gravity"));

    private static final Group PUMP = Group.ticked(
            "pump",
            Field.signed("pump/on", Field.OF_POINT).usually(PumpRules.HALF),
            Field.span("pump/hold").usually(PumpRules.HOLD),
            Field.choice("pump/empties"),
            Field.choice("pump/pressure"),
            Field.number("pump/least", SHARE).usually(Unusual.USUAL.least()),
            Field.number("pump/deviations", TIMES).usually(Unusual.USUAL.deviations()),
            Field.number("pump/days", "days").usually(PumpRules.DAYS));

    private static final Group LEAK = Group.ticked(
            "leak",
            Field.span("leak/within").usually(FallRules.USUAL.within()),
            Field.number("leak/factor", TIMES).usually(FallRules.USUAL.factor()),
            Field.number("leak/least", "of-pressure").usually(FallRules.USUAL.least()),
            Field.span("leak/learn").usually(FallRules.USUAL.learn()));

    private static final Group AGAIN =
            Group.of("again", Field.span("reAlarm"), Field.of(Kind.LINES, "suppressedWhile"));

    static final Layout LAYOUT = Layout.of(POINT, LIMITS, CHANGE, DRIFT, SILENCE, CURRENT, TANKS, PUMP, LEAK, AGAIN);

    private PointFields() {}
}
