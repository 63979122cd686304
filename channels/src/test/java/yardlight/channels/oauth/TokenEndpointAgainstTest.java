package yardlight.channels.oauth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.web.Limits;

/**
 * Towards a token endpoint on the JDK's own server: RFC 6749 4.4.2, 5.1, 5.2 and 6, with the values of its own examples (memory:
 * no stored text was read).
 */
class TokenEndpointAgainstTest {

    private static final String GIVEN =
            "{\"access_token\":\"2YotnFZFEjr1zCsicMWpAA\",\"token_type\":\"example\",\"expires_in\":3600,"
                    + "\"example_parameter\":\"example_value\"}";

    @TempDir
    private Path folder;

    private StandInEndpoint endpoint;

    @BeforeEach
    void open() throws IOException {
        endpoint = new StandInEndpoint();
        endpoint.says(200, GIVEN);
    }

    @AfterEach
    void close() {
        endpoint.close();
    }

    private EndpointSettings settings(Optional<String> secret, Optional<Path> refresh) {
        return new EndpointSettings(endpoint.address(), "s6BhdRkqt3", secret, Optional.empty(), refresh, Limits.USUAL);
    }

    private Path file(String content) throws IOException {
        return Files.writeString(folder.resolve("refresh"), content);
    }

    // 4.4.2 and 2.3.1: the example's "Basic czZCaGRSa3F0MzpnWDFmQmF0M2JW".
    @Test
    void a_client_asks_for_itself() throws Exception {
        var tokens = new TokenEndpoint(settings(Optional.of("gX1fBat3bV"), Optional.empty()));

        assertThat(tokens.token()).isEqualTo("2YotnFZFEjr1zCsicMWpAA");

        assertThat(endpoint.asked).singleElement().satisfies(asked -> {
            assertThat(asked.form()).isEqualTo(Map.of("grant_type", "client_credentials"));
            assertThat(asked.authorization()).isEqualTo("Basic czZCaGRSa3F0MzpnWDFmQmF0M2JW");
        });
    }

    // 6
    @Test
    void a_refresh_token_gets_a_token() throws Exception {
        var tokens =
                new TokenEndpoint(settings(Optional.of("gX1fBat3bV"), Optional.of(file("tGzv3JOkF0XG5Qx2TlKWIA\n"))));

        tokens.token();

        assertThat(endpoint.asked.get(0).form())
                .isEqualTo(Map.of("grant_type", "refresh_token", "refresh_token", "tGzv3JOkF0XG5Qx2TlKWIA"));
    }

    @Test
    void a_client_without_a_secret_says_who_it_is() throws Exception {
        var tokens = new TokenEndpoint(settings(Optional.empty(), Optional.of(file("tGzv3JOkF0XG5Qx2TlKWIA"))));

        tokens.token();

        assertThat(endpoint.asked.get(0).form()).containsEntry("client_id", "s6BhdRkqt3");
        assertThat(endpoint.asked.get(0).authorization()).isEqualTo("null");
    }

    @Test
    void a_token_is_used_as_long_as_it_is_good_and_renewed_before_it_ends() throws Exception {
        var tokens = new TokenEndpoint(settings(Optional.of("gX1fBat3bV"), Optional.empty()));
        tokens.token();
        tokens.token();
        assertThat(endpoint.asked).hasSize(1);
        tokens.refused("2YotnFZFEjr1zCsicMWpAA");
        endpoint.says(200, "{\"access_token\":\"short\",\"expires_in\":1}");
        assertThat(tokens.token()).isEqualTo("short");

        endpoint.says(200, "{\"access_token\":\"next\",\"expires_in\":3600}");

        org.awaitility.Awaitility.await().until(() -> tokens.token().equals("next"));
        assertThat(endpoint.asked).hasSize(3);
    }

    @Test
    void while_the_endpoint_is_away_a_token_is_used_to_its_end() throws Exception {
        var tokens = new TokenEndpoint(settings(Optional.of("gX1fBat3bV"), Optional.empty()));
        endpoint.says(200, "{\"access_token\":\"old\",\"expires_in\":5}");
        tokens.token();
        endpoint.says(503, "");

        org.awaitility.Awaitility.await().until(() -> {
            assertThat(tokens.token()).isEqualTo("old");
            return endpoint.asked.size() == 2;
        });
        org.awaitility.Awaitility.await()
                .untilAsserted(() -> assertThatThrownBy(tokens::token).hasMessageContaining("503"));
    }

    // 6: "the client MUST discard the old refresh token and replace it with the new".
    @Test
    void another_refresh_token_takes_the_place_of_the_one_before_also_after_a_restart() throws Exception {
        Path file = file("first");
        endpoint.says(200, "{\"access_token\":\"a\",\"expires_in\":3600,\"refresh_token\":\"second\"}");
        new TokenEndpoint(settings(Optional.empty(), Optional.of(file))).token();

        new TokenEndpoint(settings(Optional.empty(), Optional.of(file))).token();

        assertThat(endpoint.asked.get(1).form()).containsEntry("refresh_token", "second");
        assertThat(Files.readString(file)).isEqualTo("second\n");
        assertThat(folder).isDirectoryContaining("glob:**/refresh").isNotEmptyDirectory();
        assertThat(Files.getPosixFilePermissions(file)).hasSize(2);
    }

    // 5.2
    @Test
    void what_the_endpoint_refuses_is_said_without_a_secret_and_not_asked_again_at_once() throws Exception {
        endpoint.says(400, "{\"error\":\"invalid_grant\",\"error_description\":\"tGzv3JOkF0XG5Qx2TlKWIA is over\"}");
        var tokens =
                new TokenEndpoint(settings(Optional.of("gX1fBat3bV"), Optional.of(file("tGzv3JOkF0XG5Qx2TlKWIA"))));

        assertThatThrownBy(tokens::token)
                .isInstanceOf(NoToken.class)
                .hasMessage("the token endpoint answered 400: invalid_grant");
        assertThatThrownBy(tokens::token).hasMessageContaining("invalid_grant");
        assertThat(endpoint.asked).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "{}",
                "{\"access_token\":7}",
                "{\"access_token\":\"two words\"}",
                "{\"access_token\":\"\"}"
            })
    void what_is_no_token_is_none(String body) {
        endpoint.says(200, body);
        var tokens = new TokenEndpoint(settings(Optional.of("gX1fBat3bV"), Optional.empty()));

        assertThatThrownBy(tokens::token).isInstanceOf(NoToken.class);
    }

    @Test
    void an_endpoint_that_is_not_there_is_said() {
        var settings = settings(Optional.of("gX1fBat3bV"), Optional.empty());
        endpoint.close();

        assertThatThrownBy(() -> new TokenEndpoint(settings).token())
                .isInstanceOf(NoToken.class)
                .hasMessageContaining("127.0.0.1 cannot be reached");
    }

    @Test
    void no_text_form_has_a_secret() throws Exception {
        var settings = settings(Optional.of("gX1fBat3bV"), Optional.of(file("tGzv3JOkF0XG5Qx2TlKWIA")));

        assertThat(settings.toString()).contains("s6BhdRkqt3").doesNotContain("gX1fBat3bV");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "http://id.example/token",
                "https://me:pw@id.example/token",
                "https://id.example/token#x",
                "id.example"
            })
    void a_secret_is_sent_to_no_such_address(String address) {
        assertThatThrownBy(() -> new EndpointSettings(
                        URI.create(address), "id", Optional.of("s"), Optional.empty(), Optional.empty(), Limits.USUAL))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("https");
    }
}
