package yardlight.escalation.rehearsal;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import yardlight.escalation.Changes;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.shutin.Consent;
import yardlight.escalation.shutin.Request;
import yardlight.escalation.shutin.Standing;
import yardlight.escalation.shutin.Terms;

/**
 * A rung that asks the site to shut in, on paper: as if that were turned on wherever the setup says how, and as if the site
 * confirmed at once.
 *
 * @param box that speaks for a site
 */
record RehearsedShutIn(Setup setup, UnaryOperator<String> box) {

    /** By whom an answer to a request counts as acknowledged: no person. */
    static final String NOBODY = "shut-in";

    /** What is noted, and what the site says to it. */
    record Asked(Rehearsal.Line line, Stimulus answer) {}

    static Optional<Changes> turnedOn(Setup setup, String site, Instant at) {
        return setup.site(site)
                .flatMap(Site::shutIn)
                .map(terms -> new Consent(terms.words(), "rehearsal", at))
                .map(consent -> Changes.standings(List.of(Standing.none(site).with(Optional.of(consent)))));
    }

    Optional<Asked> of(Happening happening) {
        return happening.decision().changes().standings().stream()
                .flatMap(standing -> standing.open().stream()
                        .filter(one -> one.askedAt().equals(happening.at()))
                        .map(one -> asked(standing.site(), one)))
                .findFirst();
    }

    private Asked asked(String site, Request request) {
        Terms terms = setup.site(site).flatMap(Site::shutIn).orElseThrow();
        var line = new Rehearsal.Line(
                request.askedAt(),
                "asked-to-shut-in",
                Optional.empty(),
                Optional.empty(),
                "the site is asked to shut in, where that is turned on; goes to "
                        + terms.way().word() + " " + terms.through());
        var report = new Report(
                new AlarmKey(site, terms.point(), terms.done()),
                Optional.of(box.apply(site)),
                true,
                Optional.empty(),
                Measured.NOTHING,
                request.askedAt(),
                false);
        return new Asked(line, new Stimulus.Reported(box.apply(site), List.of(report)));
    }
}
