package yardlight.gateway.lines;

import jakarta.servlet.http.HttpServletRequest;
import java.security.Principal;
import java.time.DayOfWeek;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import yardlight.channels.Channel;
import yardlight.escalation.setup.Contact;
import yardlight.gateway.edit.Notes;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.edit.Sent;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.setup.SetupInForce;

/** The form for a person, new or known. A button that adds or moves a row sends it as well, and stores nothing. */
@Controller
class PersonEditPage {

    private static final List<String> ZONES = List.of(
            "America/Chicago",
            "America/Denver",
            "America/New_York",
            "America/Los_Angeles",
            "America/Phoenix",
            "America/Anchorage");

    private static final String WORDS = "people";
    private static final String SAVE = "save";

    /** A day of the week by its word in the setup. */
    record Day(String word, String name) {}

    private final PersonDesk desk;
    private final SetupInForce inForce;
    private final List<String> channels;
    private final MessageSource words;
    private final InstantSource clock;

    PersonEditPage(
            PersonDesk desk, SetupInForce inForce, List<Channel> channels, MessageSource words, InstantSource clock) {
        this.desk = desk;
        this.inForce = inForce;
        this.channels = channels.stream().map(Channel::name).toList();
        this.words = words;
        this.clock = clock;
    }

    @GetMapping(path = "/new-person", produces = "text/html")
    ModelAndView blank(Locale locale) {
        return form(desk.blank(), Notes.NONE, HttpStatus.OK, locale);
    }

    @PostMapping("/new-person")
    ModelAndView make(
            @RequestParam(name = "do", defaultValue = SAVE) String step,
            Locale locale,
            HttpServletRequest request,
            Principal login) {
        return done(PersonForm.of("", request.getParameterMap()), step, locale, new Saver(login, request));
    }

    @GetMapping(path = "/people/{id}/edit", produces = "text/html")
    ModelAndView open(@PathVariable String id, Locale locale) {
        return form(desk.open(id), Notes.NONE, HttpStatus.OK, locale);
    }

    @PostMapping("/people/{id}/edit")
    ModelAndView change(
            @PathVariable String id,
            @RequestParam(name = "do", defaultValue = SAVE) String step,
            Locale locale,
            HttpServletRequest request,
            Principal login) {
        return done(PersonForm.of(id, request.getParameterMap()), step, locale, new Saver(login, request));
    }

    /**
     * Who saves.
     *
     * @param agreed the sign of the gaps that they were told of
     */
    private record Saver(String login, String agreed) {

        Saver(Principal login, HttpServletRequest request) {
            this(login.getName(), Sent.text(request.getParameterMap(), "agreed"));
        }
    }

    private ModelAndView done(PersonForm form, String step, Locale locale, Saver saver) {
        if (!step.equals(SAVE)) {
            return form(form.after(step), Notes.NONE, HttpStatus.OK, locale);
        }
        var tongue = new Tongue(words, locale);
        Optional<PersonForm> orphaned = desk.orphaned(form);
        if (orphaned.isPresent()) {
            var notes = new Notes(Map.of(), List.of(tongue.say("people.gone")), "", List.of());
            return form(orphaned.get(), notes, HttpStatus.CONFLICT, locale);
        }
        Piece wish = desk.wish(form);
        Saved saved = desk.save(form, wish, saver.login(), saver.agreed());
        if (saved instanceof Saved.Wrong wrong) {
            return form(form, Notes.of(wrong, wish, tongue, WORDS), HttpStatus.UNPROCESSABLE_CONTENT, locale);
        }
        if (saved instanceof Saved.Overtaken overtaken) {
            var names = new Names(inForce.setup());
            var clockface = new Clockface(zone(form.id()), clock.instant(), locale);
            Notes notes = Notes.of(overtaken, names, clockface, tongue, WORDS);
            return form(form.seeing(overtaken.version()), notes, HttpStatus.CONFLICT, locale);
        }
        if (saved instanceof Saved.Opens opens) {
            return form(form, Notes.of(opens, tongue), HttpStatus.CONFLICT, locale);
        }
        return new ModelAndView(PeoplePage.to("/people/{id}", wish.key()));
    }

    private ZoneId zone(String contact) {
        return inForce.setup().contacts().values().stream()
                .filter(one -> one.id().equals(contact))
                .map(Contact::zone)
                .findFirst()
                .orElseGet(() -> ZoneOffset.UTC);
    }

    private ModelAndView form(PersonForm form, Notes notes, HttpStatusCode status, Locale locale) {
        var page = new ModelAndView("person-edit");
        page.setStatus(status);
        return page.addObject("form", form)
                .addObject("notes", notes)
                .addObject("channels", channels)
                .addObject("zones", zones())
                .addObject("days", days(locale));
    }

    private List<String> zones() {
        return Stream.concat(
                        inForce.setup().sites().values().stream()
                                .map(site -> site.zone().getId()),
                        ZONES.stream())
                .distinct()
                .toList();
    }

    private static List<Day> days(Locale locale) {
        return IntStream.range(0, PersonForm.DAYS.size())
                .mapToObj(i ->
                        new Day(PersonForm.DAYS.get(i), DayOfWeek.of(i + 1).getDisplayName(TextStyle.SHORT, locale)))
                .toList();
    }
}
