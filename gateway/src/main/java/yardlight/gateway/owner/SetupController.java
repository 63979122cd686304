package yardlight.gateway.owner;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.Principal;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import yardlight.db.setup.SetupVersion;
import yardlight.db.setup.SetupVersions;
import yardlight.escalation.Stimulus;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.coverage.Coverages;
import yardlight.gateway.coverage.GapView;
import yardlight.gateway.coverage.Opened;
import yardlight.gateway.document.Body;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Format;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.problem.Reader;
import yardlight.gateway.setup.SetupInForce;
import yardlight.gateway.setup.SetupReader;
import yardlight.gateway.setup.SetupText;

/** Everything that the owner sets up, as one document: stored whole or not at all. */
@RestController
@RequestMapping("/api/v1/setup")
class SetupController {

    private static final Logger LOG = LoggerFactory.getLogger(SetupController.class);
    private static final String NONE = "there is no setup yet; PUT one to this address";

    /** Of so many sites the new gaps are named; after that it is the setup as a whole that wants looking at. */
    private static final int MOST_GAPS = 100;

    private final SetupVersions versions;
    private final SetupReader reader;
    private final Lane lane;
    private final SetupInForce inForce;
    private final Coverages coverages;

    SetupController(SetupVersions versions, SetupReader reader, Lane lane, SetupInForce inForce, Coverages coverages) {
        this.versions = versions;
        this.reader = reader;
        this.lane = lane;
        this.inForce = inForce;
        this.coverages = coverages;
    }

    /**
     * What was stored, counted.
     *
     * @param gaps what it opened: times in which before it somebody was called at once and now nobody is, one of each site
     */
    record Stored(int sites, int boxes, int points, int contacts, int rosters, int ladders, List<GapView> gaps) {

        static Stored of(Setup setup, List<GapView> gaps) {
            return new Stored(
                    setup.sites().size(),
                    setup.boxes().size(),
                    setup.points().size(),
                    setup.contacts().size(),
                    setup.rosters().size(),
                    setup.ladders().size(),
                    gaps);
        }
    }

    @PutMapping(produces = "application/json")
    Stored put(HttpServletRequest request, Principal login) throws IOException {
        String text = Body.text(request, Body.roomy());
        Setup setup = reader.read(document(Format.of(request, text), text));
        Setup before = inForce.setup();
        lane.setup(text, new Stimulus.SetupChanged(setup, login.getName()));
        LOG.info("{} stored a setup of {} sites", login.getName(), setup.sites().size());
        return Stored.of(setup, opened(before, setup));
    }

    /** It is stored: whatever is found or not found out about it now, the answer says so. */
    private List<GapView> opened(Setup before, Setup after) {
        try {
            Opened opened = coverages.opened(before, after);
            return opened.sites().keySet().stream()
                    .sorted()
                    .limit(MOST_GAPS)
                    .map(site -> GapView.of(site, opened.of(site)))
                    .toList();
        } catch (RuntimeException e) {
            LOG.error("the gaps that a setup opened were not found out", e);
            return List.of();
        }
    }

    private static Document document(Optional<Format> format, String text) {
        if (format.equals(Optional.of(Format.JSON))) {
            return Document.setupJson(text);
        }
        if (format.equals(Optional.of(Format.YAML))) {
            return Document.setupYaml(text);
        }
        throw Problem.wrongType(Format.YAML.type() + " or " + Format.JSON.type());
    }

    @GetMapping(produces = {"application/yaml", "application/json"})
    ResponseEntity<byte[]> get(HttpServletRequest request) {
        SetupVersion newest = versions.newest().orElseThrow(() -> Problem.notFound(NONE));
        Format format = wanted(request, SetupText.format(newest.document()));
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_TYPE, format.type())
                .eTag(Integer.toString(newest.version()))
                .body(text(format, newest.document(), request).getBytes(StandardCharsets.UTF_8));
    }

    /** As it was handed in, to those who may know the addresses of people. */
    private static String text(Format format, String stored, HttpServletRequest request) {
        return request.isUserInRole("HAND") || request.isUserInRole("OWNER")
                ? SetupText.as(format, stored)
                : SetupText.of(
                        format, WithoutAddresses.of(SetupText.document(stored).root()));
    }

    private static Format wanted(HttpServletRequest request, Format stored) {
        Format other = stored == Format.JSON ? Format.YAML : Format.JSON;
        return Reader.choose(request, stored.type(), other.type()).equals(stored.type()) ? stored : other;
    }
}
