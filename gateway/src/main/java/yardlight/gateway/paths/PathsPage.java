package yardlight.gateway.paths;

import jakarta.servlet.http.HttpServletRequest;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.ModelAndView;
import yardlight.channels.Channel;
import yardlight.channels.Receiver;
import yardlight.db.figures.Figures;
import yardlight.db.outbox.DownCarriers;
import yardlight.db.proof.KnownLines;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.setup.SetupInForce;

/** All channels, and what else hears. Its three questions to the database do not grow with what was sent. */
@Controller
class PathsPage {

    /** There is no such channel at all until it is set up. */
    private static final String MODEM = "modem";

    private final List<Channel> channels;
    private final List<Receiver> receivers;
    private final KnownLines known;
    private final Figures figures;
    private final DownCarriers down;
    private final SetupInForce inForce;
    private final MessageSource words;
    private final InstantSource clock;

    PathsPage(
            List<Channel> channels,
            List<Receiver> receivers,
            KnownLines known,
            Figures figures,
            DownCarriers down,
            SetupInForce inForce,
            MessageSource words,
            InstantSource clock) {
        this.channels = channels;
        this.receivers = receivers.stream()
                .filter(receiver -> !(receiver instanceof Channel))
                .toList();
        this.known = known;
        this.figures = figures;
        this.down = down;
        this.inForce = inForce;
        this.words = words;
        this.clock = clock;
    }

    @GetMapping(path = "/paths", produces = "text/html")
    ModelAndView show(Locale locale, HttpServletRequest request) {
        Setup setup = inForce.setup();
        var zone = setup.sites().values().stream().findFirst().map(Site::zone).orElse(ZoneOffset.UTC);
        var paths = new Paths(
                setup,
                known.all().values(),
                figures.queuedByChannel(),
                down.channels(),
                request.isUserInRole("HAND") || request.isUserInRole("OWNER"),
                new Tongue(words, locale),
                new Clockface(zone, clock.instant(), locale));
        return new ModelAndView("paths")
                .addObject(
                        "modem",
                        channels.stream().anyMatch(channel -> channel.name().equals(MODEM)))
                .addObject(
                        "paths",
                        Stream.concat(
                                        channels.stream().map(paths::of),
                                        receivers.stream().map(paths::of))
                                .toList());
    }
}
