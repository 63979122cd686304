package yardlight.gateway.paths;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.context.support.ReloadableResourceBundleMessageSource;
import yardlight.channels.Attempt;
import yardlight.channels.Channel;
import yardlight.channels.Health;
import yardlight.channels.Message;
import yardlight.db.figures.Figures.Waiting;
import yardlight.escalation.Fixtures;
import yardlight.escalation.proof.LineHealth;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongue;

/** How channels stand, in words. */
class PathsTest {

    private static final Instant NOW = Fixtures.at("2026-11-25T02:13");

    @Test
    void one_that_is_set_up_says_what_it_took_and_who_is_reached_by_it() {
        LineHealth line = line().handedOver(Fixtures.at("2026-11-25T01:00")).delivered(Fixtures.at("2026-11-25T01:01"));

        Path path = paths(Set.of(), true, line).of(channel("mail", Health.State.READY));

        assertThat(path.standing()).isEqualTo("Ready");
        assertThat(path.property()).isEmpty();
        assertThat(path.lately()).containsExactly("Last took a text 1:00 AM", "Last proved to get there 1:01 AM");
        assertThat(path.users()).extracting(Path.User::words).containsExactly("Ana Ruelas, line 2");
        assertThat(path.waiting()).isEqualTo("2 texts wait since 2:03 AM");
    }

    @Test
    void one_that_is_not_set_up_names_the_property() {
        assertThat(paths(Set.of(), true)
                        .of(channel("modem", Health.State.NOT_CONFIGURED))
                        .property())
                .contains("yardlight.modem.port");
        assertThat(paths(Set.of(), true)
                        .of(channel("http-calls", Health.State.NOT_CONFIGURED))
                        .property())
                .contains("yardlight.http.calls.url");
    }

    @Test
    void one_whose_carrier_is_down_says_so_whatever_it_says_itself() {
        assertThat(paths(Set.of("mail"), true)
                        .of(channel("mail", Health.State.READY))
                        .standing())
                .startsWith("Down");
    }

    @Test
    void what_a_carrier_said_names_no_address_to_who_may_only_read() {
        LineHealth line = line().troubled(NOW, "550 <ana@mesa.example> no such user");

        assertThat(paths(Set.of(), true, line)
                        .of(channel("mail", Health.State.READY))
                        .lately()
                        .get(0))
                .contains("<ana@mesa.example>");
        assertThat(paths(Set.of(), false, line)
                        .of(channel("mail", Health.State.READY))
                        .lately()
                        .get(0))
                .contains("550 <***@mesa.example> no such user");
    }

    private static LineHealth line() {
        return LineHealth.unknown(new LineHealth.Key("ana", "mail", "ana@mesa.example"));
    }

    private static Paths paths(Set<String> down, boolean whole, LineHealth... known) {
        var words = new ReloadableResourceBundleMessageSource();
        words.setBasename("classpath:words/paths");
        words.setDefaultEncoding("UTF-8");
        words.setFallbackToSystemLocale(false);
        return new Paths(
                Fixtures.theSetup(),
                List.of(known),
                Map.of("mail", new Waiting(2, Optional.of(NOW.minusSeconds(600)))),
                down,
                whole,
                new Tongue(words, Locale.ENGLISH),
                new Clockface(Fixtures.CHICAGO, NOW, Locale.ENGLISH));
    }

    private static Channel channel(String name, Health.State state) {
        return new Still(name, new Health(state, "as it says itself"));
    }

    /** A channel that sends nothing. */
    private record Still(String name, Health health) implements Channel {

        @Override
        public Attempt send(Message message) {
            return Attempt.deferred("never");
        }

        @Override
        public Optional<String> knock() {
            return Optional.empty();
        }

        @Override
        public Optional<String> complaintAbout(String address) {
            return Optional.empty();
        }

        @Override
        public void close() {}
    }
}
