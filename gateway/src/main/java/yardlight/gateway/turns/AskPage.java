package yardlight.gateway.turns;

import java.security.Principal;
import java.time.InstantSource;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import yardlight.db.swap.Swaps;
import yardlight.escalation.Answer;
import yardlight.escalation.Stimulus;
import yardlight.escalation.SwapSaid;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.swap.Offer;
import yardlight.escalation.swap.Part;
import yardlight.escalation.walltime.WallTime;
import yardlight.gateway.edit.Notes;
import yardlight.gateway.edit.Takeover;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.sentence.Sentences;
import yardlight.gateway.setup.SetupInForce;

/** Asks the others by text whether they take a turn, takes that back, and takes it for one of them who said so. */
@Controller
class AskPage {

    private final SwapPage swap;
    private final Swaps swaps;
    private final Takeover takeover;
    private final Lane lane;
    private final SetupInForce inForce;
    private final MessageSource words;
    private final InstantSource clock;

    AskPage(
            SwapPage swap,
            Swaps swaps,
            Takeover takeover,
            Lane lane,
            SetupInForce inForce,
            MessageSource words,
            InstantSource clock) {
        this.swap = swap;
        this.swaps = swaps;
        this.takeover = takeover;
        this.lane = lane;
        this.inForce = inForce;
        this.words = words;
        this.clock = clock;
    }

    @PostMapping("/turns/{id}/swap/ask")
    ModelAndView ask(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String from,
            @RequestParam(defaultValue = "") String to,
            Locale locale,
            Principal login) {
        Roster roster = Optional.ofNullable(inForce.setup().rosters().get(id))
                .orElseThrow(() -> Problem.notFound("there is no such roster"));
        Optional<LocalDateTime> start = Times.of(from);
        Optional<LocalDateTime> end =
                Times.of(to).filter(at -> start.filter(at::isAfter).isPresent());
        if (end.isEmpty()) {
            throw Problem.notFound("there is no such turn");
        }
        var part = new Part(start.orElseThrow(), end.get());
        String contact =
                roster.onCall(WallTime.instant(part.from(), roster.zone())).orElse("");
        var said = new SwapSaid.AskedFor(contact, id, part, Optional.of(login.getName()));
        Answer answer = lane.decide(new Stimulus.Swap(said));
        return done(answer, id, from, to, locale);
    }

    @PostMapping("/turns/{id}/swap/ask/off")
    ModelAndView off(
            @PathVariable String id, @RequestParam(defaultValue = "") String offer, Locale locale, Principal login) {
        Offer known = open(id, offer);
        Answer answer = lane.decide(new Stimulus.Swap(new SwapSaid.Withdrawn(known.id(), login.getName())));
        return done(answer, id, known.from().toString(), known.to().toString(), locale);
    }

    @PostMapping("/turns/{id}/swap/ask/take")
    ModelAndView take(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String offer,
            @RequestParam(defaultValue = "") String contact,
            Locale locale,
            Principal login) {
        Offer known = open(id, offer);
        Answer answer = takeover.take(known, contact, login.getName());
        return done(answer, id, known.from().toString(), known.to().toString(), locale);
    }

    private Offer open(String roster, String offer) {
        return swaps.open(clock.instant()).stream()
                .filter(one -> one.id().equals(offer) && one.roster().equals(roster))
                .findFirst()
                .orElseThrow(() -> Problem.conflict("nobody is asked about this turn any more"));
    }

    private ModelAndView done(Answer answer, String id, String from, String to, Locale locale) {
        if (answer instanceof Answer.Refusal refusal) {
            String why = Sentences.say(refusal.why(), words, locale);
            return swap.refused(
                    id, new SwapForm(0, from, to, ""), new Notes(Map.of(), List.of(why), "", List.of()), locale);
        }
        return new ModelAndView(SwapPage.back());
    }
}
