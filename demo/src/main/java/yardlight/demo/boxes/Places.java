package yardlight.demo.boxes;

import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import yardlight.demo.boxes.Gauge.Buttons;
import yardlight.demo.boxes.Gauge.Scale;
import yardlight.demo.cast.Cast;

/** The four places. Their ids, points and boxes are those of the setup document. */
public final class Places {

    public static final String MESA_9 = "mesa-9";
    public static final String CALICO_DRAW = "calico-draw";
    public static final String LARKSPUR_BARN = "larkspur-barn";
    public static final String TULE_CREEK = "tule-creek";

    private final Cast cast;
    private final InstantSource clock;
    private final List<Place> all;

    public Places(Cast cast, InstantSource clock) {
        this.cast = cast;
        this.clock = clock;
        all = List.of(mesa9(), calicoDraw(), larkspurBarn(), tuleCreek());
    }

    public List<Place> all() {
        return all;
    }

    /**
     * @throws IllegalArgumentException if there is no such place
     */
    public Place at(String id) {
        return all.stream()
                .filter(place -> place.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("site must be one of the demo: " + id));
    }

    private Place mesa9() {
        SimulatedBox box = new SimulatedBox("mesa-9-box", true, List.of("wells", "pump"), clock);
        return place(
                MESA_9,
                "Oil lease with salt-water injection. The wells hang on one feed, the pump on another.",
                List.of(
                        scale("water-tank", "high-high", "Water tank", new Scale(11.2, 18.4, 18.0, "ft")),
                        scale("separator", "high", "Separator", new Scale(42, 128, 125, "psi")),
                        switched("injection-pump", "off", "Injection pump", new Buttons("Trip", "Restart"))),
                box);
    }

    private Place calicoDraw() {
        SimulatedBox box = new SimulatedBox("calico-draw-box", true, List.of("lease"), clock);
        return place(
                CALICO_DRAW,
                "Small oil lease. Its float switch sticks and flutters when the wind is up.",
                List.of(switched("float-switch", "high", "Float switch", new Buttons("Lift", "Let go"))),
                box);
    }

    private Place larkspurBarn() {
        SimulatedBox box = new SimulatedBox("larkspur-box", true, List.of("house"), clock);
        return place(
                LARKSPUR_BARN,
                "Chicken house, 20,000 birds. When the fans stop there is half an hour.",
                List.of(
                        scale("house-temperature", "high", "House temperature", new Scale(78, 92, 90, "F")),
                        new Gauge(
                                "box-battery",
                                "low",
                                "Battery of the box",
                                Optional.of(new Scale(13.1, 11.4, 11.6, "V")),
                                new Buttons("Run down", "Charge"))),
                box);
    }

    private Place tuleCreek() {
        SimulatedBox box = new SimulatedBox("tule-creek-box", false, List.of("station"), clock);
        return place(
                TULE_CREEK,
                "Pump station at the end of a bad link. Its box has no battery.",
                List.of(scale("wet-well", "high", "Wet well", new Scale(4.1, 9.6, 9.0, "ft"))),
                box);
    }

    private Place place(String id, String character, List<Gauge> gauges, SimulatedBox box) {
        return new Place(new Place.Sign(id, cast.siteNames().get(id), character), gauges, box);
    }

    private static Gauge scale(String point, String condition, String label, Scale scale) {
        return new Gauge(point, condition, label, Optional.of(scale), new Buttons("Raise", "Lower"));
    }

    private static Gauge switched(String point, String condition, String label, Buttons buttons) {
        return new Gauge(point, condition, label, Optional.empty(), buttons);
    }
}
