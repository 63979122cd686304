package yardlight.gateway.start;

import jakarta.servlet.http.HttpServletRequest;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import yardlight.channels.Channel;
import yardlight.channels.Health;
import yardlight.db.alarm.HeardBoxes;
import yardlight.db.proof.KnownLines;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.setup.Contact;
import yardlight.gateway.edit.Desk;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.setup.SetupInForce;
import yardlight.gateway.wire.Address;
import yardlight.gateway.wire.Examples;
import yardlight.gateway.wire.Posts;
import yardlight.gateway.wire.Spans;

/** Fills the page of the first start. */
@Component
class StartView {

    /** A browser subscribes by a page of its own. */
    private static final String PUSH = "push";

    private static final List<String> REGIONS =
            List.of("Africa", "America", "Asia", "Atlantic", "Australia", "Europe", "Indian", "Pacific");

    private final SetupInForce inForce;
    private final Desk desk;
    private final HeardBoxes heard;
    private final KnownLines lines;
    private final Posts posts;
    private final List<Channel> channels;
    private final Address address;
    private final MessageSource words;
    private final InstantSource clock;

    StartView(
            SetupInForce inForce,
            Desk desk,
            HeardBoxes heard,
            KnownLines lines,
            Posts posts,
            List<Channel> channels,
            Address address,
            MessageSource words,
            InstantSource clock) {
        this.inForce = inForce;
        this.desk = desk;
        this.heard = heard;
        this.lines = lines;
        this.posts = posts;
        this.channels = channels;
        this.address = address;
        this.words = words;
        this.clock = clock;
    }

    /** A step as the list of them shows it. */
    record Mark(String word, boolean done, boolean open, boolean here) {}

    /** A way to reach somebody. */
    record Way(String name, boolean ready) {}

    Progress progress() {
        Desk.Look look = desk.look();
        boolean posted = Progress.first(look.tree(), Part.BOXES)
                .filter(box -> heard.byId(box.key()).isPresent())
                .isPresent();
        return Progress.of(look, posted, line().flatMap(LineHealth::answeredAt).isPresent());
    }

    /** The first contact, whose first line is tried. */
    Optional<Contact> contact() {
        return inForce.setup().contacts().values().stream().findFirst();
    }

    private Optional<LineHealth> line() {
        return contact().flatMap(contact -> lines.of(contact).stream().findFirst());
    }

    Tongue tongue(Locale locale) {
        return new Tongue(words, locale);
    }

    /** @param typed empty for what is set up or usual */
    void show(Step step, Progress progress, Map<String, String> typed, Model model, Locale locale) {
        List<Way> ways = channels.stream()
                .filter(channel -> !channel.name().equals(PUSH))
                .map(channel -> new Way(channel.name(), channel.health().state() != Health.State.NOT_CONFIGURED))
                .sorted((one, other) -> Boolean.compare(other.ready(), one.ready()))
                .toList();
        String first = ways.isEmpty() ? "" : ways.get(0).name();
        Map<String, String> fields =
                typed.isEmpty() ? Typed.before(step, progress, locale.getLanguage(), first) : typed;
        Tongue tongue = tongue(locale);
        model.addAttribute("step", step.word());
        model.addAttribute("marks", marks(step, progress));
        model.addAttribute("seen", progress.version());
        model.addAttribute("typed", fields);
        model.addAttribute("ways", ways);
        model.addAttribute("unreachable", ways.stream().noneMatch(Way::ready));
        model.addAttribute("linkless", !address.isPublic());
        model.addAttribute("zones", zones());
        model.addAttribute("waits", Spans.choices(Spans.WAIT, fields.getOrDefault("wait", ""), tongue));
        model.addAttribute("everys", Spans.choices(Spans.EVERY, fields.getOrDefault("every", ""), tongue));
        model.addAttribute(
                "ownLadder",
                progress.ladder().filter(one -> !Progress.simple(one)).isPresent());
        model.addAttribute("boxId", progress.box().map(Piece::key).orElse(""));
        if (!model.containsAttribute("mistakes")) {
            model.addAttribute("mistakes", Map.of());
        }
        contact().ifPresent(contact -> model.addAttribute("who", contact.name()));
        test(model, locale);
    }

    private static List<Mark> marks(Step here, Progress progress) {
        return Arrays.stream(Step.values())
                .map(step -> new Mark(step.word(), progress.done(step), progress.open(step), step == here))
                .toList();
    }

    /** Those of places: a name such as {@code EST} has no summer. */
    private static Set<String> zones() {
        var zones = new TreeSet<String>();
        for (String zone : ZoneId.getAvailableZoneIds()) {
            if (REGIONS.contains(zone.replaceFirst("/.*", ""))) {
                zones.add(zone);
            }
        }
        return zones;
    }

    /** What became of the test text. */
    void test(Model model, Locale locale) {
        contact()
                .ifPresent(contact -> line().ifPresent(line -> model.addAttribute(
                        "test",
                        Test.of(
                                Names.line(0, line.key().channel()) + ", "
                                        + line.key().address(),
                                line,
                                new Clockface(contact.zone(), clock.instant(), locale),
                                tongue(locale)))));
    }

    /**
     * The examples for a box, and what arrives from it.
     *
     * @param key empty when it is not known any more
     */
    void wire(String box, Optional<String> key, HttpServletRequest request, Model model, Locale locale) {
        key.ifPresent(fresh -> model.addAttribute("fresh", fresh));
        String shown = key.orElseGet(() -> tongue(locale).say("wire.key.placeholder"));
        model.addAttribute("examples", Examples.first(new Examples.Wired(address.of(request), box, shown)));
        model.addAttribute("box", box);
        String site = Optional.ofNullable(inForce.setup().boxes().get(box))
                .map(known -> known.site())
                .orElse("");
        model.addAttribute("clock", new Clockface(new Names(inForce.setup()).zone(site), clock.instant(), locale));
        model.addAttribute("posts", posts.look(box));
    }
}
