package yardlight.gateway.ladders;

import java.util.Locale;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import yardlight.gateway.edit.Desk;

/** The last 90 days, and one of their nights, played through a ladder as it stands in the form. */
@Controller
class NightsPage {

    private final Practice practice;
    private final LadderSheets sheets;
    private final NightsSheets nights;

    NightsPage(Practice practice, LadderSheets sheets, NightsSheets nights) {
        this.practice = practice;
        this.sheets = sheets;
        this.nights = nights;
    }

    /** A ladder that something is wrong with goes back to where it is built. */
    @PostMapping("/ladders/{id}/nights")
    String play(@PathVariable String id, @RequestParam MultiValueMap<String, String> sent, Model model, Locale locale) {
        LadderForm form = sheets.form(id, sent);
        Ask ask = Ask.read(sent, sheets.usual(id));
        Desk.Trial trial = practice.attempt(sheets.piece(form), ask);
        Optional<NightsSheet> sheet = trial.setup()
                .map(setup -> nights.of(form, ask, setup, LadderForm.field(sent, "night"), sheets.tongue(locale)));
        if (sheet.isPresent()) {
            model.addAttribute("sheet", sheet.get());
            return "ladder-nights";
        }
        LadderSheet wrong = sheets.sheet(form, ask, locale, true);
        model.addAttribute("sheet", wrong);
        model.addAttribute("rehearsal", wrong.rehearsal());
        return "ladder";
    }
}
