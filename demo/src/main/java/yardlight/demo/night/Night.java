package yardlight.demo.night;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import yardlight.demo.boxes.Flutter;
import yardlight.demo.boxes.Gauge;
import yardlight.demo.boxes.Place;
import yardlight.demo.boxes.Places;
import yardlight.demo.gateway.AlarmView;
import yardlight.demo.gateway.BoxDoor;
import yardlight.demo.gateway.GatewayClock;
import yardlight.demo.gateway.OwnerDoor;
import yardlight.demo.night.NightScript.Act;
import yardlight.demo.phone.Phones;

/** Plays the night. */
public final class Night {

    private final Places places;
    private final Phones phones;
    private final GatewayClock clock;
    private final Timeline timeline;
    private final ZoneId zone;
    private String tankAlarm = "";

    public Night(Places places, Phones phones, GatewayClock clock, Timeline timeline, ZoneId zone) {
        this.places = places;
        this.phones = phones;
        this.clock = clock;
        this.timeline = timeline;
        this.zone = zone;
    }

    /**
     * Plays all of it and comes back in the morning.
     *
     * @return why it did not go as written; empty when it did
     */
    public List<String> play(OwnerDoor owner) throws InterruptedException {
        try (Sleepers sleepers = new Sleepers(zone, clock, timeline)) {
            sleepers.listen(phones);
            for (Act act : NightScript.acts()) {
                clock.awaitInstant(NightScript.instant(act.at(), zone));
                play(act);
            }
            Instant quietEnds = NightScript.instant(NightScript.QUIET_ENDS, zone);
            Optional<String> by = tankAlarm.isEmpty()
                    ? Optional.empty()
                    : Optional.of(owner.alarm(tankAlarm)).flatMap(AlarmView::acknowledgedBy);
            return NightVerdict.reasons(new NightRecord(phones.texts(), sleepers.answers(), by, quietEnds));
        }
    }

    private void play(Act act) {
        switch (act.deed()) {
            case EVERYBODY_BEATS -> tell("Four boxes", "give a sign of life every five minutes");
            case TANK_RISES ->
                tankAlarm = move(Places.MESA_9, "water-tank", true)
                        .map(BoxDoor.Result::alarm)
                        .orElse("");
            case FLOAT_CHATTERS -> chatter();
            case BATTERY_RUNS_LOW -> move(Places.LARKSPUR_BARN, "box-battery", true);
            case LINK_BREAKS -> link(false);
            case TANK_FALLS -> move(Places.MESA_9, "water-tank", false);
            case LINK_MENDS -> link(true);
            case QUIET_ENDS -> tell("Quiet hours", "end: what was held goes out");
            case END -> tell("Morning", "the night is over");
        }
    }

    private Optional<BoxDoor.Result> move(String site, String point, boolean beyond) {
        Place place = places.at(site);
        Gauge gauge = place.gauge(point);
        Instant now = clock.instant();
        Optional<BoxDoor.Result> result = place.move(point, beyond);
        timeline.add(
                now,
                place.name(),
                gauge.says(beyond) + "; posted, and answered: "
                        + result.map(BoxDoor.Result::outcome).orElse("nothing"));
        return result;
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
