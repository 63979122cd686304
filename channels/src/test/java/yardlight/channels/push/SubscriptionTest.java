package yardlight.channels.push;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Base64;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.web.Neighbours;

/** Which addresses are subscriptions, and where they may lead. */
class SubscriptionTest {

    private static final String KEYS = "|" + Browser.KEY + "|" + Browser.SECRET;

    private static boolean taken(String endpoint, boolean loopback) {
        return Subscription.of(endpoint + KEYS, loopback).isPresent();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "https://push.example/p/1",
                "https://push.example:443/p/1?a=b",
                "https://a-1.push.example/wpush/v2/gAAAA_-.~%7C",
                "https://PUSH.example/"
            })
    void a_public_name_over_TLS(String endpoint) {
        assertThat(taken(endpoint, false)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "push.example/p",
                "http://push.example/p",
                "ftp://push.example/p",
                "file:///etc/passwd",
                "https://push.example:8443/p",
                "https://push.example:22/",
                "https://user@push.example/p",
                "https://push.example/p#x",
                "https://push.example/\u00e1",
                "https://push.example/a b",
                "https://push.example./p",
                "https://push/p",
                "https://localhost/p",
                "https://www.localhost/p",
                "https://printer.local/p",
                "https://db.internal/p",
                "https://nas.home.arpa/p",
                "https://127.0.0.1/p",
                "https://127.1/p",
                "https://2130706433/p",
                "https://0x7f.0.0.1/p",
                "https://10.0.0.1/p",
                "https://[::1]/p",
                "https://[::ffff:127.0.0.1]/p"
            })
    void nothing_else(String endpoint) {
        assertThat(taken(endpoint, false)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://127.0.0.1:8080/p", "https://localhost:8443/p"})
    void this_machine_only_where_that_is_allowed(String endpoint) {
        assertThat(taken(endpoint, true)).isTrue();
        assertThat(taken(endpoint, false)).isFalse();
        assertThat(taken("http://10.0.0.1/p", true)).isFalse();
    }

    @Test
    void with_a_key_on_the_curve_and_a_secret_of_sixteen_bytes() {
        byte[] offCurve = Browser.bytes(Browser.KEY);
        offCurve[64] ^= 1;
        byte[] compressed = new byte[33];
        compressed[0] = 2;

        assertThat(Subscription.of("https://push.example/p" + KEYS, false)).isPresent();
        assertThat(Subscription.of("https://push.example/p" + KEYS + "==", false))
                .isPresent();
        for (String key : new String[] {text(offCurve), text(compressed), text(new byte[65]), "", "!", "a b"}) {
            assertThat(Subscription.of("https://push.example/p|" + key + "|" + Browser.SECRET, false))
                    .isEmpty();
        }
        for (String secret : new String[] {text(new byte[15]), text(new byte[17]), "", "+/=="}) {
            assertThat(Subscription.of("https://push.example/p|" + Browser.KEY + "|" + secret, false))
                    .isEmpty();
        }
        assertThat(Subscription.of("https://push.example/p" + KEYS + "|", false))
                .isEmpty();
    }

    @Test
    void of_bounded_length() {
        assertThat(taken("https://push.example/" + "a".repeat(900), false)).isTrue();
        assertThat(taken("https://push.example/" + "a".repeat(1_000), false)).isFalse();
    }

    /** IANA's registries of special-purpose addresses, RFC 6890 (memory), and their edges. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "0.0.0.0",
                "10.0.0.0",
                "10.255.255.255",
                "100.64.0.0",
                "100.127.255.255",
                "127.0.0.1",
                "127.255.255.255",
                "169.254.169.254",
                "172.16.0.0",
                "172.31.255.255",
                "192.0.0.8",
                "192.168.0.0",
                "192.168.255.255",
                "198.18.0.1",
                "198.19.255.255",
                "203.0.113.9",
                "224.0.0.1",
                "240.0.0.1",
                "255.255.255.255",
                "::",
                "::1",
                "::ffff:10.0.0.1",
                "64:ff9b::a00:1",
                "64:ff9b:1::1",
                "100::1",
                "2001::1",
                "2001:db8::1",
                "2002:a00:1::",
                "fc00::1",
                "fdff::1",
                "fe80::1",
                "ff02::1"
            })
    void neighbours_are_known(String address) throws UnknownHostException {
        assertThat(Neighbours.include(InetAddress.getByName(address))).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1.1.1.1",
                "9.255.255.255",
                "11.0.0.0",
                "100.63.255.255",
                "100.128.0.0",
                "126.255.255.255",
                "128.0.0.1",
                "169.253.255.255",
                "172.15.255.255",
                "172.32.0.0",
                "192.167.255.255",
                "192.169.0.0",
                "198.17.255.255",
                "198.20.0.0",
                "223.255.255.255",
                "2001:4860::1",
                "2606:4700::1",
                "2a00::1"
            })
    void the_world_is_none_of_them(String address) throws UnknownHostException {
        assertThat(Neighbours.include(InetAddress.getByName(address))).isFalse();
    }

    private static String text(byte[] bytes) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }
}
