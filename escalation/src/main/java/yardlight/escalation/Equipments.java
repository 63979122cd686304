package yardlight.escalation;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.limit.Watching;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.runtime.RunTime;
import yardlight.escalation.setup.Equipment;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Site;

/** What a reading says of the tank, the pump or the line that it is of, and of those that hang together with it. */
final class Equipments {

    private final Draft draft;

    Equipments(Draft draft) {
        this.draft = draft;
    }

    /** Looks at a measurement that is already in its gauge; each step is to be put before the next is made. */
    void look(Point point, Reading reading, Consumer<Watching.Step> put) {
        Gauge.Key key = new Gauge.Key(point.site(), point.id());
        boolean newest = draft.gauge(key)
                .newest()
                .filter(one -> one.at().equals(reading.at()))
                .isPresent();
        if (!newest) {
            return;
        }
        Equipment equipment = point.equipment();
        Instant at = reading.at();
        equipment.pump().ifPresent(rules -> put.accept(Pumps.look(draft.gauge(key), rules, zone(point), reading)));
        equipment.tank().ifPresent(rules -> put.accept(new Tanks(draft).look(draft.gauge(key), point, rules, at)));
        equipment.leak().ifPresent(rules -> put.accept(Leaks.look(draft.gauge(key), rules, behind(point), at)));
        draft.setup()
                .pumpsWith(point.site(), point.id())
                .forEach(pump -> pump.equipment()
                        .pump()
                        .ifPresent(rules -> put.accept(new Pumps(draft).effect(pump, rules, point.id(), at))));
    }

    /** Another setup: what its equipment is no longer asked for is over. */
    Watching.Step changed(Point point) {
        var remarks = new Remarks(draft.gauge(new Gauge.Key(point.site(), point.id())), draft.now());
        Equipment equipment = point.equipment();
        if (equipment.tank().isEmpty()) {
            List.of(Tanks.OVERFLOW, Tanks.FALLING).forEach(condition -> remarks.say(condition, false));
        }
        if (equipment.pump().isEmpty()) {
            List.of(Pumps.LESS, Pumps.MORE, Pumps.IN_VAIN).forEach(condition -> remarks.say(condition, false));
        }
        // A box may report a leak of its own accord; that is no matter of the gauge's.
        if (equipment.leak().isEmpty()) {
            remarks.say(Leaks.LEAK, false);
        }
        return remarks.done();
    }

    private Optional<RunTime> behind(Point pressure) {
        return draft.setup().pumpsWith(pressure.site(), pressure.id()).stream()
                .findFirst()
                .map(pump -> Curves.runs(draft.gauge(new Gauge.Key(pump.site(), pump.id()))))
                .filter(runs -> runs.running().isPresent());
    }

    private ZoneId zone(Point point) {
        return draft.setup().site(point.site()).map(Site::zone).orElse(ZoneOffset.UTC);
    }
}
