package yardlight.gateway.dispatch;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import yardlight.channels.Channel;

/** The channels by the names that lines give them. */
record Channels(Map<String, Channel> byName) {

    static Channels of(Collection<? extends Channel> channels) {
        var byName = new LinkedHashMap<String, Channel>();
        for (Channel channel : channels) {
            if (byName.put(channel.name(), channel) != null) {
                throw new IllegalArgumentException("channel names must be unique: " + channel.name());
            }
        }
        return new Channels(byName);
    }

    Optional<Channel> named(String name) {
        return Optional.ofNullable(byName.get(name));
    }
}
