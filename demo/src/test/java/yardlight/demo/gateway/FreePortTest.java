package yardlight.demo.gateway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import org.junit.jupiter.api.Test;

class FreePortTest {

    @Test
    void is_the_wished_one_while_nobody_has_it() {
        int port = FreePort.any();

        assertThat(FreePort.orAnother(port)).isEqualTo(port);
    }

    @Test
    void is_another_one_when_somebody_has_it() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            assertThat(FreePort.orAnother(taken.getLocalPort())).isPositive().isNotEqualTo(taken.getLocalPort());
        }
    }
}
