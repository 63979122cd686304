package yardlight.gateway.vacations;

import java.security.Principal;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.view.RedirectView;
import yardlight.channels.web.Limits;
import yardlight.channels.web.Outside;
import yardlight.escalation.sentence.Sentence;
import yardlight.escalation.setup.Away;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.walltime.WallTime;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Desk;
import yardlight.gateway.edit.Filled;
import yardlight.gateway.edit.Filling;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.sentence.Sentences;
import yardlight.gateway.setup.SetupInForce;

/**
 * When a person is away: what the setup says, and how it is taken over from a calendar. What was typed into the setup stays; what
 * came from a calendar before is replaced.
 */
@Controller
class VacationsPage {

    private static final String AWAY = "away";
    private static final String IMPORTED = "imported";

    /** So many of the events that were left out are named. */
    private static final int MOST_NAMED = 10;

    private final Desk desk;
    private final SetupInForce inForce;
    private final MessageSource words;
    private final InstantSource clock;
    private final Outside outside = new Outside(Limits.USUAL, VacationFile.MOST_BYTES);

    VacationsPage(Desk desk, SetupInForce inForce, MessageSource words, InstantSource clock) {
        this.desk = desk;
        this.inForce = inForce;
        this.words = words;
        this.clock = clock;
    }

    @GetMapping(path = "/people/{id}/vacations", produces = "text/html")
    ModelAndView show(@PathVariable String id, Locale locale) {
        return page(contact(id), "", List.of(), Optional.empty(), HttpStatus.OK, locale);
    }

    /**
     * @param address of a calendar; it is not kept
     * @param text of a calendar, used when there is no address
     */
    @PostMapping("/people/{id}/vacations")
    ModelAndView take(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String address,
            @RequestParam(defaultValue = "") String text,
            Locale locale,
            Principal login) {
        Contact contact = contact(id);
        Optional<Sentence> fault = Optional.empty();
        String calendar = text;
        if (!address.isBlank()) {
            Outside.Fetched fetched = outside.get(address);
            fault = fetched instanceof Outside.Fetched.Nothing nothing ? Optional.of(why(nothing.why())) : fault;
            calendar = fetched instanceof Outside.Fetched.Text got ? got.text() : "";
        } else if (text.length() > VacationFile.MOST_BYTES) {
            fault = Optional.of(why(Outside.Why.TOO_LONG));
        }
        List<String> left = List.of();
        if (fault.isEmpty()) {
            var found = new VacationFile(contact.zone(), clock.instant()).read(calendar);
            fault = found.fault().or(() -> save(id, found.away(), login.getName()));
            left = found.left();
        }
        if (fault.isPresent()) {
            return page(contact, address, List.of(), fault, HttpStatus.UNPROCESSABLE_CONTENT, locale);
        }
        // What was left out is said once: it is not kept.
        return left.isEmpty()
                ? new ModelAndView(back())
                : page(contact(id), "", left, Optional.empty(), HttpStatus.OK, locale);
    }

    @PostMapping("/people/{id}/vacations/off")
    ModelAndView forget(@PathVariable String id, Locale locale, Principal login) {
        Contact contact = contact(id);
        Optional<Sentence> fault = save(id, List.of(), login.getName());
        return fault.isPresent()
                ? page(contact, "", List.of(), fault, HttpStatus.UNPROCESSABLE_CONTENT, locale)
                : new ModelAndView(back());
    }

    private static Sentence why(Outside.Why why) {
        return switch (why) {
            case NOT_PUBLIC -> Sentence.of("vacations.not-public", "it must be a public https address of a calendar");
            case SILENCE -> Sentence.of("vacations.silence", "nobody answers at this address");
            case REFUSED -> Sentence.of("vacations.refused", "there is no calendar at this address");
            case TOO_LONG -> Sentence.of("vacations.long", "it must not be longer than 1 MB");
        };
    }

    private Optional<Sentence> save(String id, List<Away> away, String by) {
        Desk.Look look = desk.look();
        Piece before = look.tree().piece(Part.CONTACTS, id);
        var all = new ArrayList<Node.Members>(Filled.of(before).each(AWAY).stream()
                .filter(one -> !one.members().nodes().containsKey(IMPORTED))
                .map(Filled::members)
                .toList());
        away.stream().map(VacationsPage::node).forEach(all::add);
        Piece wish = Piece.of(
                Part.CONTACTS, Filling.of(before.node()).each(AWAY, all, false).done());
        Saved saved = desk.save(look.version(), List.of(wish), by);
        if (saved instanceof Saved.Wrong wrong) {
            return Optional.of(wrong.mistakes().get(0).rule());
        }
        return saved instanceof Saved.Stored
                ? Optional.empty()
                : Optional.of(
                        Sentence.of("vacations.overtaken", "somebody else changed this person meanwhile; do it again"));
    }

    private static Node.Members node(Away one) {
        return Filling.of(Optional.empty())
                .text("from", one.from().toString())
                .text("to", one.to().toString())
                .text("words", one.words())
                .node(IMPORTED, Optional.of(new Node.Flag(true)))
                .done();
    }

    private Contact contact(String id) {
        return Optional.ofNullable(inForce.setup().contacts().get(id))
                .orElseThrow(() -> Problem.notFound("there is no such contact"));
    }

    private static RedirectView back() {
        var view = new RedirectView("/people/{id}/vacations", true);
        view.setStatusCode(HttpStatus.SEE_OTHER);
        return view;
    }

    private ModelAndView page(
            Contact contact,
            String address,
            List<String> left,
            Optional<Sentence> fault,
            HttpStatus status,
            Locale locale) {
        var clockface = new Clockface(contact.zone(), clock.instant(), locale);
        var tongue = new Tongue(words, locale);
        var page = new ModelAndView("vacations");
        page.setStatus(status);
        return page.addObject("id", contact.id())
                .addObject("name", contact.name())
                .addObject("address", address)
                .addObject(
                        "left",
                        left.stream()
                                .limit(MOST_NAMED)
                                .map(name -> name.isEmpty() ? tongue.say("vacations.nameless") : name)
                                .toList())
                .addObject("more", Math.max(0, left.size() - MOST_NAMED))
                .addObject(
                        "fault",
                        fault.map(why -> Sentences.say(why, words, locale)).orElse(""))
                .addObject("imported", contact.away().stream().anyMatch(Away::imported))
                .addObject(
                        "away",
                        contact.away().stream()
                                .filter(one -> WallTime.instant(one.to(), contact.zone())
                                        .isAfter(clock.instant()))
                                .map(one -> tongue.say(
                                        "vacations.one",
                                        clockface.readWithDay(WallTime.instant(one.from(), contact.zone())),
                                        clockface.readWithDay(WallTime.instant(one.to(), contact.zone())),
                                        one.words()))
                                .toList());
    }
}
