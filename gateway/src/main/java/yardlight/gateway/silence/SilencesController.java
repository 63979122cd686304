package yardlight.gateway.silence;

import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import yardlight.db.alarm.Silences;

/** The newest silences, and how often in a year what people were told was right. */
@RestController
@RequestMapping(path = "/api/v1/silences", produces = MediaType.APPLICATION_JSON_VALUE)
class SilencesController {

    static final Duration YEAR = Duration.ofDays(365);
    private static final int MOST = 500;

    /** What people were told, what it was held for in the end, and how often. */
    record TallyView(String told, String settled, long count) {}

    record SilencesView(List<TallyView> lastYear, List<SilenceView> newest) {}

    private final Silences silences;
    private final InstantSource clock;

    SilencesController(Silences silences, InstantSource clock) {
        this.silences = silences;
        this.clock = clock;
    }

    @GetMapping
    SilencesView find() {
        List<TallyView> tally = silences.tally(clock.instant().minus(YEAR)).stream()
                .map(one -> new TallyView(one.told().condition(), one.settled().condition(), one.count()))
                .toList();
        return new SilencesView(
                tally, silences.newest(MOST).stream().map(SilenceView::of).toList());
    }
}
