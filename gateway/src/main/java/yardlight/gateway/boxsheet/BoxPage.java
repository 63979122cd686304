package yardlight.gateway.boxsheet;

import jakarta.servlet.http.HttpServletRequest;
import java.security.Principal;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import yardlight.gateway.edit.Desk;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.wire.Keys;
import yardlight.gateway.wire.Posts;

/** One box: what it says, its keys, how it is set up, and what arrives from it now. */
@Controller
@RequestMapping("/boxes/{id}")
class BoxPage {

    /** How long the others may still be used, by the words of the form. */
    private static final Map<String, Duration> OVERLAPS = Map.of(
            "now", Duration.ZERO, "hour", Duration.ofHours(1), "day", Duration.ofDays(1), "week", Duration.ofDays(7));

    private final BoxView view;
    private final Desk desk;
    private final Keys keys;
    private final Posts posts;

    BoxPage(BoxView view, Desk desk, Keys keys, Posts posts) {
        this.view = view;
        this.desk = desk;
        this.keys = keys;
        this.posts = posts;
    }

    @GetMapping(produces = "text/html")
    String show(@PathVariable String id, HttpServletRequest request, Model model, Locale locale) {
        Desk.Look look = desk.look();
        return view.show(id, model, request, locale)
                .form(look.version(), BoxForm.of(look.tree().piece(Part.BOXES, id)))
                .name();
    }

    /** What came in since somebody began to look. */
    @GetMapping(path = "/live", produces = "text/html")
    String live(@PathVariable String id, Model model, Locale locale) {
        view.posts(id, model, locale);
        return "wiring :: posts";
    }

    @PostMapping(produces = "text/html")
    Object edit(
            @PathVariable String id,
            @RequestParam Map<String, String> typed,
            HttpServletRequest request,
            Model model,
            Locale locale) {
        view.box(id);
        BoxForm form = BoxForm.typed(typed);
        int seen = seen(typed);
        Piece there = desk.look().tree().piece(Part.BOXES, id);
        Saved saved = desk.save(seen, List.of(form.over(there)), request.getRemoteUser());
        if (saved instanceof Saved.Stored) {
            return BoxesPage.to("/boxes/" + id);
        }
        return view.show(id, model, request, locale)
                .form(seen, form)
                .refused(saved)
                .name();
    }

    /**
     * Shows the key in the answer and nowhere else: it is in no session and in no address. The same form sent again, as by a
     * page that is loaded again, makes no second one.
     */
    @PostMapping(path = "/keys", produces = "text/html")
    Object key(
            @PathVariable String id,
            @RequestParam Map<String, String> typed,
            HttpServletRequest request,
            Model model,
            Locale locale) {
        List<Keys.Known> known = keys.of(id);
        String newest = known.isEmpty() ? "" : known.get(known.size() - 1).id();
        if (!newest.equals(typed.getOrDefault("after", ""))) {
            return BoxesPage.to("/boxes/" + id);
        }
        Optional<Duration> overlap = Optional.ofNullable(OVERLAPS.get(typed.getOrDefault("others", "")));
        Keys.Fresh fresh = keys.make(id, overlap, request.getUserPrincipal());
        Desk.Look look = desk.look();
        return view.show(id, model, request, locale)
                .form(look.version(), BoxForm.of(look.tree().piece(Part.BOXES, id)))
                .fresh(fresh.key())
                .name();
    }

    @PostMapping(path = "/keys/{key}/revoke", produces = "text/html")
    Object revoke(@PathVariable String id, @PathVariable String key, Principal login) {
        if (!keys.revoke(id, key, login)) {
            throw Problem.notFound("this box has no such key that is still good");
        }
        return BoxesPage.to("/boxes/" + id);
    }

    /** Its keys go with it: a box that is set up under the same name later is another one. */
    @PostMapping(path = "/remove", produces = "text/html")
    Object remove(
            @PathVariable String id,
            @RequestParam Map<String, String> typed,
            HttpServletRequest request,
            Model model,
            Locale locale) {
        view.box(id);
        Desk.Look look = desk.look();
        Saved saved = desk.save(seen(typed), List.of(Piece.none(Part.BOXES, id)), request.getRemoteUser());
        if (saved instanceof Saved.Stored) {
            keys.of(id).stream()
                    .filter(Keys.Known::good)
                    .forEach(key -> keys.revoke(id, key.id(), request.getUserPrincipal()));
            return BoxesPage.to("/boxes");
        }
        return view.show(id, model, request, locale)
                .form(look.version(), BoxForm.of(look.tree().piece(Part.BOXES, id)))
                .refused(saved)
                .name();
    }

    private static int seen(Map<String, String> typed) {
        String seen = typed.getOrDefault("seen", "");
        return seen.matches("\\d{1,9}") ? Integer.parseInt(seen) : 0;
    }
}
