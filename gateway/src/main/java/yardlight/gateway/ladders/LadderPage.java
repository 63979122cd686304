package yardlight.gateway.ladders;

import jakarta.servlet.http.HttpServletRequest;
import java.security.Principal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.view.RedirectView;
import yardlight.gateway.edit.Desk;
import yardlight.gateway.edit.Notes;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.edit.Telling;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;

/** One ladder: built here, rehearsed while it is built, looked at before it is stored. */
@Controller
@RequestMapping("/ladders/{id}")
class LadderPage {

    private static final String LADDER = "ladder";
    private static final String REHEARSAL = "ladder :: rehearsal";

    private final Desk desk;
    private final Practice practice;
    private final LadderSheets sheets;

    LadderPage(Desk desk, Practice practice, LadderSheets sheets) {
        this.desk = desk;
        this.practice = practice;
        this.sheets = sheets;
    }

    @GetMapping(produces = "text/html")
    String show(
            @PathVariable String id, @RequestParam MultiValueMap<String, String> asked, Model model, Locale locale) {
        LadderForm form = sheets.stored(id).orElseGet(() -> {
            if (!asked.containsKey("new")) {
                throw Problem.notFound("there is no ladder " + id);
            }
            return LadderForm.fresh(id, desk.look().version());
        });
        return page(sheets.sheet(form, Ask.read(asked, sheets.usual(id)), locale, false), model);
    }

    private String page(LadderForm form, Ask ask, Model model, Locale locale) {
        return page(sheets.sheet(form, ask, locale, true), model);
    }

    private static String page(LadderSheet sheet, Model model) {
        model.addAttribute("sheet", sheet);
        model.addAttribute("rehearsal", sheet.rehearsal());
        return LADDER;
    }

    /** Without a script it answers with the whole page; with one only what stands beside the ladder is wanted. */
    @PostMapping("/rehearsal")
    String rehearse(
            @PathVariable String id,
            @RequestParam MultiValueMap<String, String> sent,
            Model model,
            Locale locale,
            HttpServletRequest request) {
        LadderForm form = sheets.form(id, sent);
        Ask ask = Ask.read(sent, sheets.usual(id));
        if (request.getHeader("HX-Request") == null) {
            return page(form, ask, model, locale);
        }
        model.addAttribute("rehearsal", sheets.rehearsal(form, ask, locale));
        return REHEARSAL;
    }

    /** Moves rungs, looks before saving, or saves, as the button says. */
    @PostMapping
    Object act(
            @PathVariable String id,
            @RequestParam MultiValueMap<String, String> sent,
            Model model,
            Locale locale,
            Principal login) {
        LadderForm form = sheets.form(id, sent);
        Ask ask = Ask.read(sent, sheets.usual(id));
        return switch (LadderForm.field(sent, "act")) {
            case "look" -> look(form, ask, model, locale);
            case "save" -> save(form, ask, LadderForm.field(sent, "agreed"), model, locale, login);
            default -> {
                LadderForm moved = Moves.apply(form, LadderForm.field(sent, "act"));
                yield page(sheets.sheet(moved, ask, locale, false), model);
            }
        };
    }

    private String look(LadderForm form, Ask ask, Model model, Locale locale) {
        Piece wanted = sheets.piece(form);
        Optional<Saved.Overtaken> overtaken = desk.overtaken(form.seen(), List.of(wanted));
        if (overtaken.isPresent()) {
            return overtaken(overtaken.get(), form, ask, model, locale);
        }
        Practice.Practised practised = practice.play(wanted, ask);
        Saved.Changed changed = desk.change(wanted);
        if (practised.played().isEmpty() || changed.differences().isEmpty()) {
            model.addAttribute("same", changed.differences().isEmpty());
            return page(form, ask, model, locale);
        }
        Tongue tongue = sheets.tongue(locale);
        Notes notes = desk.opens(List.of(wanted))
                .map(opens -> Notes.of(opens, tongue))
                .orElse(Notes.NONE);
        model.addAttribute(
                "sheet", LookSheet.of(form, practice.stored(form.id(), ask), practised, changed, notes, tongue));
        return "ladder-look";
    }

    /** Whoever comes from the look has been told what gaps it opens; those that it opens by now may be others. */
    private Object save(LadderForm form, Ask ask, String agreed, Model model, Locale locale, Principal login) {
        Saved saved = desk.save(form.seen(), List.of(sheets.piece(form)), login.getName(), agreed);
        if (saved instanceof Saved.Opens) {
            return look(form, ask, model, locale);
        }
        if (saved instanceof Saved.Overtaken overtaken) {
            return overtaken(overtaken, form, ask, model, locale);
        }
        return saved instanceof Saved.Stored ? to("/ladders/" + form.id() + "?saved") : page(form, ask, model, locale);
    }

    /** What was typed stays; it was now made knowing what the other one did, so that saving it is a decision. */
    private String overtaken(Saved.Overtaken overtaken, LadderForm form, Ask ask, Model model, Locale locale) {
        var telling = new Telling(sheets.tongue(locale), sheets.setup(), true);
        model.addAttribute("overtaken", overtaken);
        model.addAttribute("overtakenAt", sheets.clockface(locale).read(overtaken.at()));
        model.addAttribute(
                "changes",
                overtaken.changes().stream()
                        .flatMap(change -> telling.differences(change).stream())
                        .toList());
        return page(form.seen(overtaken.version()), ask, model, locale);
    }

    @PostMapping("/remove")
    Object remove(
            @PathVariable String id,
            @RequestParam MultiValueMap<String, String> sent,
            Model model,
            Locale locale,
            Principal login) {
        LadderForm form = sheets.stored(id).orElseThrow(() -> Problem.notFound("there is no ladder " + id));
        Ask ask = sheets.usual(id);
        Saved saved = desk.save(LadderForm.seen(sent), List.of(Piece.none(Part.LADDERS, id)), login.getName());
        if (saved instanceof Saved.Overtaken overtaken) {
            return overtaken(overtaken, form, ask, model, locale);
        }
        if (saved instanceof Saved.Wrong wrong) {
            model.addAttribute(
                    "kept",
                    Mistakes.of(form, wrong.mistakes(), sheets.setup(), sheets.tongue(locale))
                            .others());
            return page(form, ask, model, locale);
        }
        return to("/ladders?removed");
    }

    private static RedirectView to(String path) {
        var view = new RedirectView(path, true);
        view.setStatusCode(HttpStatus.SEE_OTHER);
        return view;
    }
}
