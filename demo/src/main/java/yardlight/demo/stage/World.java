package yardlight.demo.stage;

import yardlight.demo.boxes.Places;
import yardlight.demo.cast.Cast;
import yardlight.demo.gateway.GatewayClock;
import yardlight.demo.phone.Phones;

/**
 * The made-up operator with everything that hangs together: people, places and phones, on the gateway's time.
 *
 * @param clock the gateway's time; not known before the stage is open
 */
public record World(Cast cast, GatewayClock clock, Places places, Phones phones) {

    public static World ofTheDemo() {
        Cast cast = Cast.ofTheDemo();
        GatewayClock clock = new GatewayClock();
        return new World(cast, clock, new Places(cast, clock), new Phones(cast, clock));
    }
}
