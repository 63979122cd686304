package yardlight.gateway.curves;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import yardlight.db.reading.Newest;
import yardlight.escalation.BoxAlarms;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Telling;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;
import yardlight.gateway.strip.Past;
import yardlight.gateway.strip.Stretch;
import yardlight.gateway.strip.Strip;
import yardlight.gateway.strip.Strips;
import yardlight.gateway.strip.Troubles;

/** Makes the page of curves. */
@Component
class CurvesSheets {

    private static final List<Duration> LENGTHS = List.of(
            Duration.ofHours(1),
            Duration.ofHours(6),
            Duration.ofDays(1),
            Duration.ofDays(7),
            Duration.ofDays(30),
            Asked.LONGEST);

    /** Of points that nobody chose. */
    private static final int USUAL = 4;

    private final Past past;
    private final Strips strips;
    private final Troubles troubles;
    private final SetupInForce inForce;
    private final InstantSource clock;

    CurvesSheets(Past past, Strips strips, Troubles troubles, SetupInForce inForce, InstantSource clock) {
        this.past = past;
        this.strips = strips;
        this.troubles = troubles;
        this.inForce = inForce;
        this.clock = clock;
    }

    /**
     * @throws Problem 404 when there is no such site
     */
    CurvesSheet of(String id, Asked asked, Tongue tongue) {
        Setup setup = inForce.setup();
        Site site = setup.site(id).orElseThrow(() -> Problem.notFound("there is no such site"));
        Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
        Stretch stretch = asked.stretch(now);
        var clockface = new Clockface(site.zone(), now, tongue.locale());
        List<String> read = past.newest(id).stream().map(Newest::point).toList();
        List<String> known = known(setup, id, read);
        List<String> chosen = asked.points().isEmpty()
                ? known.stream().filter(read::contains).limit(USUAL).toList()
                : asked.points();
        return new CurvesSheet(
                id,
                site.name(),
                tongue.say("curves.shown", clockface.read(stretch.from()), clockface.read(stretch.to())),
                site.zone().getId(),
                stretch.from().getEpochSecond(),
                stretch.to().getEpochSecond(),
                asked.span().toString(),
                stretch.to().equals(now) ? "" : stretch.to().toString(),
                asked.beside(),
                address(chosen, asked, stretch.from()),
                stretch.to().isBefore(now) ? address(chosen, asked, stretch.to().plus(asked.span())) : "",
                Stream.concat(known.stream(), chosen.stream())
                        .distinct()
                        .map(point -> new CurvesSheet.Choice(
                                point, setup.point(id, point).name(), chosen.contains(point)))
                        .toList(),
                lengths(asked.span(), tongue),
                chosen.stream()
                        .map(point -> account(setup.point(id, point), stretch, tongue))
                        .toList(),
                troubles.of(id, chosen, stretch, new Telling(tongue, new Names(setup), clockface)).stream()
                        .map(trouble -> new CurvesSheet.Trouble(trouble.id(), trouble.words()))
                        .toList());
    }

    /** What is set up, and what only posts. */
    private static List<String> known(Setup setup, String site, List<String> read) {
        Stream<String> set = setup.points().stream()
                .filter(point -> point.site().equals(site) && !BoxAlarms.have(point.id()))
                .map(Point::id);
        return Stream.concat(set, read.stream()).distinct().toList();
    }

    private CurvesSheet.Account account(Point point, Stretch stretch, Tongue tongue) {
        var strip = strips.of(point.site(), point.id(), stretch, tongue);
        return new CurvesSheet.Account(
                point.id(),
                point.name(),
                strip,
                strip.map(Strip::sentence).orElseGet(() -> tongue.say("strip.nothing", point.name())));
    }

    private static List<CurvesSheet.Length> lengths(Duration span, Tongue tongue) {
        Stream<CurvesSheet.Length> usual = LENGTHS.stream()
                .map(length -> new CurvesSheet.Length(
                        length.toString(), tongue.say("curves.length." + length.toHours()), length.equals(span)));
        Stream<CurvesSheet.Length> own = LENGTHS.contains(span)
                ? Stream.empty()
                : Stream.of(new CurvesSheet.Length(span.toString(), tongue.say("curves.length.own"), true));
        return Stream.concat(own, usual).toList();
    }

    private static String address(List<String> points, Asked asked, Instant until) {
        String chosen = points.stream()
                .map(point -> "points=" + URLEncoder.encode(point, StandardCharsets.UTF_8) + "&")
                .collect(Collectors.joining());
        return "?" + chosen + "span=" + asked.span() + "&until=" + until + (asked.beside() ? "&beside=true" : "");
    }
}
