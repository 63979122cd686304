package yardlight.gateway.watch;

import java.net.URI;
import java.time.Duration;
import yardlight.channels.web.Limits;

/**
 * The gateway that watches this one. Its text form keeps the key back.
 *
 * @param url without the path of its doors
 * @param every from one heartbeat to the next, until it says what it expects
 */
record Watcher(URI url, String key, Duration every, Limits limits) {

    /** Where heartbeats are posted. */
    URI door() {
        return URI.create(url.toString().replaceFirst("/+$", "") + "/api/v1/heartbeats");
    }

    /** For a person to read. */
    String name() {
        return url.getAuthority();
    }

    @Override
    public String toString() {
        return "Watcher[" + name() + "]";
    }
}
