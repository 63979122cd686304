package yardlight.gateway.answer;

import java.time.Instant;
import java.time.InstantSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.View;
import org.springframework.web.servlet.view.RedirectView;
import yardlight.db.link.AnswerLink;
import yardlight.escalation.Answer;
import yardlight.escalation.Stimulus;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.problem.Problem;

/**
 * The page behind the link in a text. To look at it does nothing, because mail scanners follow links too; the button
 * answers, once.
 */
@Controller
@RequestMapping("/a/{token}")
class AnswerPage {

    private final Followed followed;
    private final AnswerSheets sheets;
    private final Lane lane;
    private final Proving proving;
    private final InstantSource clock;

    AnswerPage(Followed followed, AnswerSheets sheets, Lane lane, Proving proving, InstantSource clock) {
        this.proving = proving;
        this.followed = followed;
        this.sheets = sheets;
        this.lane = lane;
        this.clock = clock;
    }

    @GetMapping
    String show(@PathVariable String token, Model model) {
        Instant now = clock.instant();
        model.addAttribute("sheet", sheets.of(follow(token, now), now));
        return "answer";
    }

    /** A link counts as used only once its answer is on disk: if that fails, the button can be pressed again. */
    @PostMapping
    View answer(@PathVariable String token) {
        Instant now = clock.instant();
        AnswerLink link = follow(token, now);
        if (link.usedAt().isEmpty()) {
            boolean refused = lane.decide(new Stimulus.AnswerNotice(link.notice(), "link")) instanceof Answer.Refusal;
            if (!refused) {
                followed.use(link, now);
            }
            proving.linkUsed(link.notice());
        }
        var back = new RedirectView("/a/" + token, true);
        back.setStatusCode(HttpStatus.SEE_OTHER);
        return back;
    }

    private AnswerLink follow(String token, Instant now) {
        AnswerLink link = followed.link(token, now)
                .orElseThrow(() -> Problem.notFound("this link leads nowhere; it may have been cut short on its way"));
        if (!now.isBefore(link.expiresAt())) {
            throw Problem.of(HttpStatus.GONE, "this link is too old to be followed");
        }
        return link;
    }
}
