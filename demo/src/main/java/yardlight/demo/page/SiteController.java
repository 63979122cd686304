package yardlight.demo.page;

import java.util.List;
import java.util.Locale;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import yardlight.demo.boxes.Flutter;
import yardlight.demo.boxes.Gauge;
import yardlight.demo.boxes.Place;
import yardlight.demo.boxes.Places;
import yardlight.demo.gateway.GatewayClock;
import yardlight.demo.night.Timeline;
import yardlight.demo.page.Shown.FeedShown;
import yardlight.demo.page.Shown.GaugeShown;
import yardlight.demo.page.Shown.SiteShown;
import yardlight.demo.stage.World;

/** The sites: how they stand, and the switches for playing. */
@RestController
class SiteController {

    private final Places places;
    private final GatewayClock clock;
    private final Timeline timeline;

    SiteController(World world, Timeline timeline) {
        places = world.places();
        clock = world.clock();
        this.timeline = timeline;
    }

    @GetMapping("/sites")
    List<SiteShown> sites() {
        return places.all().stream().map(SiteController::site).toList();
    }

    private static SiteShown site(Place place) {
        return new SiteShown(
                place.id(),
                place.name(),
                place.character(),
                place.box().linked(),
                place.box().kept(),
                place.gauges().stream().map(gauge -> gauge(place, gauge)).toList(),
                place.box().feeds().entrySet().stream()
                        .map(feed -> new FeedShown(feed.getKey(), feed.getValue()))
                        .toList());
    }

    private static GaugeShown gauge(Place place, Gauge gauge) {
        boolean beyond = place.beyond(gauge.point());
        return new GaugeShown(
                gauge.point(),
                gauge.label(),
                gauge.shows(beyond),
                gauge.scale()
                        .map(scale -> String.format(Locale.ROOT, "limit %.1f", scale.limit()))
                        .orElse(""),
                beyond,
                beyond ? gauge.buttons().right() : gauge.buttons().wrong(),
                gauge.scale().isEmpty());
    }

    @PostMapping("/sites/{site}/gauges/{point}")
    void move(@PathVariable String site, @PathVariable String point, @RequestParam boolean beyond) {
        Place place = places.at(site);
        note(place, place.gauge(point).says(beyond));
        place.move(point, beyond);
    }

    @PostMapping("/sites/{site}/feeds/{feed}")
    void feed(@PathVariable String site, @PathVariable String feed, @RequestParam boolean on) {
        places.at(site).feed(feed, on);
        note(places.at(site), "mains, feed " + feed + (on ? ", restored" : ", cut"));
    }

    @PostMapping("/sites/{site}/link")
    void link(@PathVariable String site, @RequestParam boolean up) {
        note(places.at(site), up ? "link mended" : "link broken");
        places.at(site).link(up);
    }

    @PostMapping("/sites/{site}/gauges/{point}/chatter")
    void chatter(@PathVariable String site, @PathVariable String point) {
        Place place = places.at(site);
        note(place, place.gauge(point).label() + " chatters");
        Flutter.start(place, point, clock);
    }

    private void note(Place place, String what) {
        timeline.addByHand(clock.instant(), place.name(), what);
    }

    @ExceptionHandler(IllegalArgumentException.class)
    @ResponseStatus(HttpStatus.NOT_FOUND)
    String unknown(IllegalArgumentException trouble) {
        return trouble.getMessage();
    }
}
