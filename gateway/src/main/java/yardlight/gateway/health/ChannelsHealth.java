package yardlight.gateway.health;

import java.util.List;
import org.springframework.boot.health.contributor.Health;
import org.springframework.boot.health.contributor.HealthIndicator;
import org.springframework.stereotype.Component;
import yardlight.channels.Channel;

/**
 * Says in the readiness details how each channel stands. It never makes the gateway count as down: a gateway that cannot
 * send still has to take what the boxes report.
 */
@Component("channels")
class ChannelsHealth implements HealthIndicator {

    private final List<Channel> channels;

    ChannelsHealth(List<Channel> channels) {
        this.channels = channels;
    }

    @Override
    public Health health() {
        var health = Health.up();
        for (Channel channel : channels) {
            health.withDetail(channel.name(), channel.health().sentence());
        }
        return health.build();
    }
}
