package yardlight.demo.night;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import yardlight.demo.boxes.Flutter;
import yardlight.demo.boxes.Gauge;
import yardlight.demo.boxes.Place;
import yardlight.demo.boxes.Places;
import yardlight.demo.gateway.BoxDoor;
import yardlight.demo.gateway.GatewayClock;
import yardlight.demo.gateway.OwnerDoor;
import yardlight.demo.night.NightScript.Act;
import yardlight.demo.phone.Phones;
import yardlight.demo.stage.World;

/** Plays the night. */
public final class Night {

    private final Places places;
    private final Phones phones;
    private final GatewayClock clock;
    private final Timeline timeline;
    private final ZoneId zone;
    private Optional<String> tank = Optional.empty();

    public Night(World world, Timeline timeline) {
        places = world.places();
        phones = world.phones();
        clock = world.clock();
        zone = world.cast().zone();
        this.timeline = timeline;
    }

    /** Plays all of it and comes back in the morning. */
    public Outcome play(OwnerDoor owner) throws InterruptedException {
        try (Sleepers sleepers = new Sleepers(zone, clock, timeline)) {
            sleepers.listen(phones);
            for (Act act : NightScript.acts()) {
                clock.awaitInstant(NightScript.instant(act.at(), zone));
                play(act.deed(), owner);
            }
            Instant quietEnds = NightScript.instant(NightScript.QUIET_ENDS, zone);
            Optional<String> by = tank.flatMap(id -> owner.alarm(id).acknowledgedBy());
            NightRecord night = new NightRecord(phones.texts(), sleepers.answers(), by, quietEnds);
            String hand = timeline.handled() ? " Somebody took a hand in it." : "";
            return new Outcome(night.summary() + hand, NightVerdict.reasons(night));
        }
    }

    private void play(NightScript.Deed deed, OwnerDoor owner) {
        switch (deed) {
            case EVERYBODY_BEATS -> tell("Four boxes", "give a sign of life every five minutes");
            case TANK_RISES -> tank = move(Places.MESA_9, "water-tank", true);
            case FLOAT_CHATTERS -> chatter();
            case BATTERY_RUNS_LOW ->
                move(Places.LARKSPUR_BARN, "box-battery", true)
                        .flatMap(alarm -> owner.alarm(alarm).heldUntil())
                        .ifPresent(until -> tell("Quiet hours", "hold that until " + timeline.time(until)));
            case LINK_BREAKS -> link(false);
            case TANK_FALLS -> move(Places.MESA_9, "water-tank", false);
            case LINK_MENDS -> link(true);
            case QUIET_ENDS -> tell("Quiet hours", "end: what was held goes out");
            case END -> tell("Morning", "the night is over");
        }
    }

    /** Moves a gauge; comes back with the id of the alarm if there is one. */
    private Optional<String> move(String site, String point, boolean beyond) {
        Place place = places.at(site);
        Gauge gauge = place.gauge(point);
        Instant now = clock.instant();
        Optional<BoxDoor.Result> result = place.move(point, beyond);
        timeline.add(
                now,
                place.name(),
                gauge.says(beyond) + "; posted, and answered: "
                        + result.map(BoxDoor.Result::outcome).orElse("nothing"));
        return result.map(BoxDoor.Result::alarm).filter(id -> !id.isEmpty());
    }

    private void chatter() {
        tell(
                places.at(Places.CALICO_DRAW).name(),
                "the float switch begins to chatter: " + Flutter.CHANGES + " changes in five minutes");
        Flutter.start(places.at(Places.CALICO_DRAW), "float-switch", clock);
    }

    private void link(boolean up) {
        Place place = places.at(Places.TULE_CREEK);
        place.link(up);
        tell(place.name(), up ? "the link is mended, the box is heard again" : "the link breaks, the box falls silent");
    }

    private void tell(String who, String what) {
        timeline.add(clock.instant(), who, what);
    }
}
