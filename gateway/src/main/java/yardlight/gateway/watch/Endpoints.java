package yardlight.gateway.watch;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.boot.health.actuate.endpoint.CompositeHealthDescriptor;
import org.springframework.boot.health.actuate.endpoint.HealthDescriptor;
import org.springframework.boot.health.actuate.endpoint.HealthEndpoint;
import org.springframework.boot.health.contributor.Status;

/** What the gateway would tell a supervisor: its readiness, with the database, and its liveness, with all its threads. */
final class Endpoints implements Vital {

    private final HealthEndpoint health;

    Endpoints(HealthEndpoint health) {
        this.health = health;
    }

    @Override
    public Optional<String> trouble() {
        return Stream.of("readiness", "liveness")
                .flatMap(group -> trouble(group).stream())
                .findFirst();
    }

    private Optional<String> trouble(String group) {
        HealthDescriptor found = health.healthForPath(group);
        if (found == null || found.getStatus().equals(Status.UP)) {
            return Optional.empty();
        }
        return Optional.of(group + " is down" + parts(found));
    }

    private static String parts(HealthDescriptor found) {
        if (!(found instanceof CompositeHealthDescriptor composite)) {
            return "";
        }
        return composite.getComponents().entrySet().stream()
                .filter(part -> !part.getValue().getStatus().equals(Status.UP))
                .map(Map.Entry::getKey)
                .collect(Collectors.joining(", ", ": ", ""));
    }
}
