package yardlight.gateway.edit;

import java.time.InstantSource;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.escalation.Answer;
import yardlight.escalation.Stimulus;
import yardlight.escalation.sentence.Sentence;
import yardlight.escalation.swap.Offer;
import yardlight.gateway.document.Node;

/**
 * Has somebody take a turn that they were asked to take: an edit like any other, which can be taken back like any other. It is
 * stored together with the end of the offer, or not at all.
 */
@Component
public class Takeover {

    private static final int TRIES = 3;
    private static final String RELIEFS = "reliefs";

    private final Desk desk;
    private final InstantSource clock;

    Takeover(Desk desk, InstantSource clock) {
        this.desk = desk;
        this.clock = clock;
    }

    /**
     * @param contact who takes it
     * @param by who stands in the history of edits
     * @return a refusal when the rules forbid it, or when others keep changing the setup
     */
    public Answer take(Offer offer, String contact, String by) {
        Answer answer = new Answer.Refusal("the setup was changed meanwhile");
        for (int i = 0; i < TRIES; i++) {
            Desk.Look look = desk.look();
            answer = take(look, offer, contact, by);
            if (!(answer instanceof Answer.Refusal) || desk.look().version() == look.version()) {
                return answer;
            }
        }
        return answer;
    }

    private Answer take(Desk.Look look, Offer offer, String contact, String by) {
        Piece roster = look.tree().piece(Part.ROSTERS, offer.roster());
        LocalDateTime now = LocalDateTime.ofInstant(
                clock.instant(),
                Optional.of(Filled.of(roster).text("zone"))
                        .filter(zone -> !zone.isEmpty())
                        .map(ZoneId::of)
                        .orElse(ZoneOffset.UTC));
        if (roster.node().isEmpty() || !now.isBefore(offer.to().minusMinutes(1))) {
            return new Answer.Refusal(Sentence.of("swap.expired", "it is too late for this one"));
        }
        Desk.Trial trial = desk.attempt(look, List.of(with(roster, offer.left(now), contact)));
        if (trial.setup().isEmpty()) {
            return new Answer.Refusal(trial.mistakes().get(0).rule());
        }
        return desk.store(
                trial,
                new Stimulus.SetupChanged(
                        trial.setup().get(), by, Optional.of(new Stimulus.Taking(offer.id(), contact))));
    }

    private static Piece with(Piece roster, yardlight.escalation.swap.Part part, String contact) {
        var reliefs = new ArrayList<Node.Members>(
                Filled.of(roster).each(RELIEFS).stream().map(Filled::members).toList());
        reliefs.add(Filling.of(Optional.empty())
                .text("from", part.from().toString())
                .text("to", part.to().toString())
                .text("contact", contact)
                .done());
        return Piece.of(
                roster.part(),
                Filling.of(roster.node()).each(RELIEFS, reliefs, false).done());
    }
}
