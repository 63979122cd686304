package yardlight.gateway.paths;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import yardlight.channels.Channel;
import yardlight.channels.Health;
import yardlight.channels.Receiver;
import yardlight.db.figures.Figures.Waiting;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Masks;
import yardlight.gateway.page.Tongue;

/**
 * Puts channels into words.
 *
 * @param whole whether addresses may be shown in the words of carriers
 * @param down channels whose carriers count as down
 */
record Paths(
        Setup setup,
        Collection<LineHealth> known,
        Map<String, Waiting> waiting,
        Set<String> down,
        boolean whole,
        Tongue tongue,
        Clockface clock) {

    private static final String HTTP = "http-";

    Path of(Channel channel) {
        String name = channel.name();
        Health health = channel.health();
        boolean broken = down.contains(name);
        return new Path(
                name,
                what(name),
                tongue.say(broken ? "paths.down" : "paths.state." + word(health.state())),
                broken,
                health.sentence(),
                health.state() == Health.State.NOT_CONFIGURED ? property(name) : "",
                Optional.ofNullable(waiting.get(name)).map(this::waits).orElse(""),
                lately(name),
                true,
                users(name));
    }

    /** What only hears, such as a mailbox. */
    Path of(Receiver receiver) {
        Health health = receiver.health();
        boolean unset = health.state() == Health.State.NOT_CONFIGURED;
        return new Path(
                receiver.name(),
                tongue.say("paths.hears"),
                tongue.say("paths.hearing." + word(health.state())),
                false,
                health.sentence(),
                unset ? tongue.say("paths.property.mailbox") : "",
                "",
                List.of(),
                false,
                List.of());
    }

    private String what(String name) {
        return name.startsWith(HTTP) ? tongue.say("paths.what.http") : said("paths.what." + name, "");
    }

    private String property(String name) {
        return name.startsWith(HTTP)
                ? tongue.say("paths.property.http", name.substring(HTTP.length()))
                : said("paths.property." + name, "");
    }

    private String said(String key, String otherwise) {
        return tongue.words().getMessage(key, null, otherwise, tongue.locale());
    }

    private static String word(Health.State state) {
        return switch (state) {
            case READY -> "ready";
            case TROUBLED -> "troubled";
            case NOT_CONFIGURED -> "unset";
        };
    }

    private String waits(Waiting one) {
        return tongue.count("paths.waiting", one.count())
                + one.oldest()
                        .map(since -> " " + tongue.say("paths.since", clock.read(since)))
                        .orElse("");
    }

    private List<String> lately(String channel) {
        var said = new ArrayList<String>();
        lines(channel)
                .flatMap(line -> line.handedOverAt().stream())
                .max(Instant::compareTo)
                .ifPresent(at -> said.add(tongue.say("paths.taken", clock.read(at))));
        lines(channel)
                .flatMap(line -> line.provenAt().stream())
                .max(Instant::compareTo)
                .ifPresent(at -> said.add(tongue.say("paths.arrived", clock.read(at))));
        lines(channel)
                .map(line -> whole ? line : Masks.of(line))
                .flatMap(line -> line.trouble().stream())
                .reduce((one, other) -> one.at().isAfter(other.at()) ? one : other)
                .ifPresent(trouble -> said.add(tongue.say("paths.trouble", clock.read(trouble.at()), trouble.words())));
        return List.copyOf(said);
    }

    private Stream<LineHealth> lines(String channel) {
        return known.stream().filter(line -> line.key().channel().equals(channel));
    }

    private List<Path.User> users(String channel) {
        return setup.contacts().values().stream()
                .flatMap(contact -> users(contact, channel))
                .toList();
    }

    private Stream<Path.User> users(Contact contact, String channel) {
        return IntStream.range(0, contact.lines().size())
                .filter(place -> contact.lines().get(place).channel().equals(channel))
                .mapToObj(place -> new Path.User(
                        contact.id(), contact.name(), place + 1, tongue.say("paths.user", contact.name(), place + 1)));
    }
}
