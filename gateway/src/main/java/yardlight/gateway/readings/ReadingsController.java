package yardlight.gateway.readings;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import yardlight.db.journal.ReadingRows.Fate;
import yardlight.db.reading.Keep;
import yardlight.gateway.document.Body;
import yardlight.gateway.document.Format;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.lane.OtherUnit;
import yardlight.gateway.lane.TooManyPosts;
import yardlight.gateway.posting.Allowance;
import yardlight.gateway.posting.PostingBox;
import yardlight.gateway.wire.Posts;

/** Takes what boxes measure. */
@RestController
class ReadingsController {

    /** A reading costs far less than an event: it is one small row. */
    private static final int READINGS_FOR_A_TOKEN = 500;

    private final Lane lane;
    private final Allowance allowance;
    private final Posts posts;
    private final Scales scales;
    private final Keep keep;
    private final InstantSource clock;

    ReadingsController(Lane lane, Allowance allowance, Posts posts, Scales scales, Keep keep, InstantSource clock) {
        this.lane = lane;
        this.allowance = allowance;
        this.posts = posts;
        this.scales = scales;
        this.keep = keep;
        this.clock = clock;
    }

    /**
     * What a box is told.
     *
     * @param kept how many were new
     * @param repeated how many were there already, by their point and time
     * @param tooOld how many are older than what can be added to
     * @param results what there is to say about single ones
     */
    record Taken(Instant received, long kept, long repeated, long tooOld, List<Map<String, Object>> results) {}

    @PostMapping(path = "/api/v1/readings", produces = MediaType.APPLICATION_JSON_VALUE)
    @ResponseStatus(HttpStatus.ACCEPTED)
    Taken post(HttpServletRequest request, @AuthenticationPrincipal PostingBox box) throws IOException {
        Instant received = clock.instant();
        boolean spent = !allowance.take(box.getName(), 1);
        boolean backlog = Format.LINES.claimedBy(request) || Format.CSV.claimedBy(request);
        String body = Body.text(request, backlog ? Body.LARGEST_POST : Body.USUAL);
        var reader = new BundleReader(new ReadingReader(box, received, scales));
        Bundle bundle = reader.read(Format.of(request, body), body);
        spent |= !allowance.take(box.getName(), (bundle.readings().size() - 1) / READINGS_FOR_A_TOKEN);
        List<Fate> fates;
        try {
            fates = decide(box, bundle, received, spent);
        } catch (OtherUnit known) {
            // Somebody was faster with the first reading of a point; by now its unit can be looked up.
            scales.forget();
            bundle = reader.read(Format.of(request, body), body);
            fates = decide(box, bundle, received, spent);
        }
        return taken(request, box, received, bundle, fates);
    }

    private Taken taken(HttpServletRequest request, PostingBox box, Instant received, Bundle bundle, List<Fate> fates) {
        posts.tell(request, box.getName(), () -> Told.readings(bundle.readings()), () -> Told.fates(fates));
        return new Taken(
                received,
                count(fates, Fate.KEPT),
                count(fates, Fate.REPEATED),
                count(fates, Fate.TOO_OLD),
                bundle.results(fates));
    }

    private static long count(List<Fate> fates, Fate wanted) {
        return fates.stream().filter(fate -> fate == wanted).count();
    }

    private List<Fate> decide(PostingBox box, Bundle bundle, Instant received, boolean spent) {
        try {
            return lane.readings(box.getName(), bundle.readings(), received.minus(keep.all()), spent);
        } catch (TooManyPosts ordinary) {
            throw allowance.refusal(box.getName());
        }
    }
}
