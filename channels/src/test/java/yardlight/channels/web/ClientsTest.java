package yardlight.channels.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpClient;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ClientsTest {

    @Test
    void keep_connections_for_the_next_message_of_a_burst() {
        var clients = new Clients(Limits.USUAL, Optional.empty(), Duration.ofHours(1));

        assertThat(clients.client()).isSameAs(clients.client());
    }

    @Test
    void begin_anew_after_a_pause_so_that_no_message_is_lost_in_a_connection_that_a_router_forgot() {
        var clients = new Clients(Limits.USUAL, Optional.empty(), Duration.ofNanos(1));
        HttpClient before = clients.client();

        assertThat(clients.client()).isNotSameAs(before);
    }
}
