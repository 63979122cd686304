package yardlight.gateway;

import java.time.Instant;
import java.time.InstantSource;
import java.util.concurrent.atomic.AtomicReference;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Primary;
import yardlight.escalation.Fixtures;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.setup.SetupInForce;

/** Puts a lane that only listens, a clock that stands still and the made-up operator into the application. */
@TestConfiguration(proxyBeanMethods = false)
public class TestGateway {

    /** When everything in these tests happens. */
    public static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");

    @Bean
    @Primary
    FakeLane fakeLane() {
        return new FakeLane();
    }

    @Bean
    @Primary
    InstantSource stoppedClock() {
        return InstantSource.fixed(NOW);
    }

    @Bean
    @Primary
    SetupInForce operator() {
        return new InMemorySetup();
    }

    /** The setup of the made-up operator, unless a test puts another in its place. */
    public static final class InMemorySetup implements SetupInForce {

        private final AtomicReference<Setup> now = new AtomicReference<>(Fixtures.theSetup());

        @Override
        public Setup setup() {
            return now.get();
        }

        public void set(Setup setup) {
            now.set(setup);
        }
    }
}
