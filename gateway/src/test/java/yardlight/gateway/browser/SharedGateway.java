package yardlight.gateway.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/**
 * A whole gateway, started once for all tests of a process that share it. Each of them begins with the setup of the contract; what
 * they make beyond that has names of its own, and no alarm is left behind.
 */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.DEFINED_PORT)
public abstract class SharedGateway {

    /** Known before the gateway starts, because a passkey belongs to an address, port included. */
    private static final int PORT = freePort();

    protected final int port = PORT;
    protected final Web web = new Web(PORT);

    protected SharedGateway() {}

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
        registry.add("server.port", () -> PORT);
        registry.add("yardlight.public-url", () -> "http://localhost:" + PORT);
    }

    @BeforeEach
    void set_up() {
        setUp(Documents.CONTRACT);
    }

    /** No box is to fall silent between two tests: the gateway lives on when the one that heard it is done. */
    protected final void setUp(String document) {
        web.put("/api/v1/setup", "application/yaml", document.replace("grace: PT2M", "grace: PT6H"), Web.owner());
    }

    private static int freePort() {
        try (var socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
