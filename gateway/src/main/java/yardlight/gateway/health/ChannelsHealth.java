package yardlight.gateway.health;

import java.util.List;
import org.springframework.boot.health.contributor.Health;
import org.springframework.boot.health.contributor.HealthIndicator;
import org.springframework.stereotype.Component;
import yardlight.channels.Channel;
import yardlight.channels.Receiver;

/**
 * Says in the readiness details how each channel stands, and what else hears answers. It never makes the gateway count as down: a gateway that cannot
 * send still has to take what the boxes report.
 */
@Component("channels")
class ChannelsHealth implements HealthIndicator {

    private final List<Channel> channels;
    private final List<Receiver> receivers;

    ChannelsHealth(List<Channel> channels, List<Receiver> receivers) {
        this.channels = channels;
        this.receivers = receivers.stream()
                .filter(receiver -> !(receiver instanceof Channel))
                .toList();
    }

    @Override
    public Health health() {
        var health = Health.up();
        for (Channel channel : channels) {
            health.withDetail(channel.name(), channel.health().sentence());
        }
        for (Receiver receiver : receivers) {
            health.withDetail(receiver.name(), receiver.health().sentence());
        }
        return health.build();
    }
}
