package yardlight.gateway.passkeys;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where passkeys work. W3C Web Authentication, level 3 (from memory): the id is a domain name, the origin is secure. */
class PasskeyAddressTest {

    @ParameterizedTest
    @CsvSource({
        "https://yl.example/, yl.example, https://yl.example",
        "https://yl.example:8443, yl.example, https://yl.example:8443",
        "http://localhost:8081, localhost, http://localhost:8081"
    })
    void is_the_public_one(String url, String host, String origin) {
        var address = new PasskeyAddress(url, "8080");

        assertThat(address.isThere()).isTrue();
        assertThat(address.host()).isEqualTo(host);
        assertThat(address.origin()).isEqualTo(origin);
    }

    @Test
    void is_this_machine_s_own_where_there_is_no_public_one() {
        var address = new PasskeyAddress(" ", "8080");

        assertThat(address.host()).isEqualTo("localhost");
        assertThat(address.origin()).isEqualTo("http://localhost:8080");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "http://yl.example",
                "https://192.0.2.7",
                "https://[2001:db8::7]",
                "https://not a url",
                "yl.example"
            })
    void is_nowhere_where_the_public_one_is_a_bare_number_or_not_secure(String url) {
        assertThat(new PasskeyAddress(url, "8080").isThere()).isFalse();
    }
}
