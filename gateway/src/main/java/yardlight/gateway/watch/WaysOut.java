package yardlight.gateway.watch;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yardlight.channels.Channel;
import yardlight.channels.Health;
import yardlight.escalation.setup.Line;
import yardlight.gateway.setup.SetupInForce;

/** Whether a text can leave at all: by one at least of the channels that people have lines on. */
final class WaysOut implements Vital {

    private final SetupInForce inForce;
    private final List<Channel> channels;

    WaysOut(SetupInForce inForce, List<Channel> channels) {
        this.inForce = inForce;
        this.channels = List.copyOf(channels);
    }

    /** Nothing while there is nobody who could be told. */
    @Override
    public Optional<String> trouble() {
        Set<String> used = inForce.setup().contacts().values().stream()
                .flatMap(contact -> contact.lines().stream())
                .map(Line::channel)
                .collect(Collectors.toSet());
        boolean open = channels.stream()
                .filter(channel -> used.contains(channel.name()))
                .anyMatch(channel -> channel.health().state() == Health.State.READY);
        return used.isEmpty() || open
                ? Optional.empty()
                : Optional.of("nothing goes out by " + used.stream().sorted().collect(Collectors.joining(", ")));
    }
}
