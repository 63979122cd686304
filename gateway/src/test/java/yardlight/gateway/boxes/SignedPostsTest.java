package yardlight.gateway.boxes;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.escalation.Fixtures;
import yardlight.gateway.Doors;
import yardlight.gateway.FakeLane;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;
import yardlight.gateway.setup.Documents;
import yardlight.gateway.setup.SetupReader;
import yardlight.gateway.setup.SetupText;

/** A box that signs instead of showing its key: what it signed is taken once, in its time, as it was signed, and nothing else. */
@GatewayTest
class SignedPostsTest {

    private static final String EVENTS = "/api/v1/events";
    private static final byte[] EVENT =
            "{\"point\":\"water-tank\",\"condition\":\"high\",\"state\":\"active\"}".getBytes(StandardCharsets.UTF_8);
    private static final long NOW = TestGateway.NOW.getEpochSecond();
    private static final AtomicInteger NONCES = new AtomicInteger();
    private static final String NOT_OF_THIS = "the signature is not of this request and this key";

    private final Doors doors;
    private final FakeLane lane;
    private final SetupReader reader;
    private final TestGateway.InMemorySetup operator;
    private final Signer box = Signer.with("k1", "the-key-of-mesa-9");

    SignedPostsTest(Doors doors, FakeLane lane, SetupReader reader, TestGateway.InMemorySetup operator) {
        this.doors = doors;
        this.lane = lane;
        this.reader = reader;
        this.operator = operator;
    }

    @BeforeEach
    void begin() {
        lane.clear();
    }

    @AfterEach
    void leave_the_setup() {
        operator.set(Fixtures.theSetup());
    }

    private static String nonce() {
        return "signed-posts-" + NONCES.incrementAndGet();
    }

    private MvcTestResult post(String path, byte[] body, String... headers) {
        var request = doors.stranger(HttpMethod.POST, path)
                .contentType("application/json")
                .content(body);
        for (int i = 0; i < headers.length; i += 2) {
            request.header(headers[i], headers[i + 1]);
        }
        return request.exchange();
    }

    private void refused(MvcTestResult result, String why) {
        assertThat(result)
                .hasStatus(401)
                .hasHeader("WWW-Authenticate", "Bearer realm=\"Yardlight\"")
                .containsHeader("Accept-Signature");
        assertThat(result).bodyJson().extractingPath("$.detail").asString().contains(why);
        assertThat(lane.events).isEmpty();
        assertThat(lane.heartbeats).isEmpty();
        assertThat(lane.signs).isEmpty();
    }

    @Test
    void are_taken_without_the_key() {
        assertThat(post(EVENTS, EVENT, box.headers(EVENTS, EVENT, NOW, nonce())))
                .hasStatus(202);

        assertThat(lane.events).hasSize(1);
    }

    @Test
    void need_no_digest_of_no_body() {
        String parameters = "(\"@method\" \"@path\");created=" + NOW + ";keyid=\"k1\";nonce=\"" + nonce() + "\"";
        String base = "\"@method\": POST\n\"@path\": /api/v1/heartbeats\n\"@signature-params\": " + parameters;
        String[] headers = {"Signature-Input", "s=" + parameters, "Signature", "s=:" + box.sign(base) + ":"};

        refused(
                post("/api/v1/heartbeats", "{}".getBytes(StandardCharsets.UTF_8), headers),
                "must cover content-digest");
        assertThat(post("/api/v1/heartbeats", new byte[0], headers)).hasStatus(202);
    }

    @Test
    void are_taken_once() {
        String[] headers = box.headers(EVENTS, EVENT, NOW, nonce());
        assertThat(post(EVENTS, EVENT, headers)).hasStatus(202);
        lane.clear();

        refused(post(EVENTS, EVENT, headers), "came before");
    }

    @ParameterizedTest
    @ValueSource(longs = {-300, 300})
    void are_taken_within_five_minutes_of_the_gateway_s_clock(long off) {
        assertThat(post(EVENTS, EVENT, box.headers(EVENTS, EVENT, NOW + off, nonce())))
                .hasStatus(202);
    }

    @ParameterizedTest
    @CsvSource({"-301, 301 s behind", "301, 301 s ahead of"})
    void are_refused_beyond_and_told_what_time_it_is(long off, String why) {
        refused(post(EVENTS, EVENT, box.headers(EVENTS, EVENT, NOW + off, nonce())), why);
        refused(post(EVENTS, EVENT, box.headers(EVENTS, EVENT, NOW + off, nonce())), "which is at " + NOW);
    }

    @Test
    void with_another_body_are_refused() {
        byte[] other = new String(EVENT, StandardCharsets.UTF_8)
                .replace("active", "normal")
                .getBytes(StandardCharsets.UTF_8);

        refused(post(EVENTS, other, box.headers(EVENTS, EVENT, NOW, nonce())), "the body is not the one");
    }

    @Test
    void for_another_address_are_refused() {
        refused(post("/api/v1/heartbeats", EVENT, box.headers(EVENTS, EVENT, NOW, nonce())), NOT_OF_THIS);
    }

    @Test
    void with_a_query_that_is_not_covered_are_refused() {
        refused(post(EVENTS + "?a=b", EVENT, box.headers(EVENTS, EVENT, NOW, nonce())), "must cover @query");
    }

    @Test
    void with_another_key_or_an_unknown_one_are_refused_alike() {
        var wrong = Signer.with("k1", "another-key");
        var unknown = Signer.with("0123456789abcdef", "the-key-of-mesa-9");

        refused(post(EVENTS, EVENT, wrong.headers(EVENTS, EVENT, NOW, nonce())), NOT_OF_THIS);
        refused(post(EVENTS, EVENT, unknown.headers(EVENTS, EVENT, NOW, nonce())), NOT_OF_THIS);
    }

    /** Whoever has a copy of the database can sign, but the hash is no key. */
    @Test
    void are_made_with_the_hash_of_the_key_which_opens_nothing_when_it_is_shown() {
        assertThat(post(EVENTS, EVENT, "Authorization", "Bearer " + KeyRing.hash("the-key-of-mesa-9")))
                .hasStatus(401);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "created=%d | created=%da | a parameter",
                "created=%d | x=%d | must say created",
                "keyid=\"k1\" | x=\"k1\" | must say created, keyid",
                "nonce=\"signed | nonce=\"a\";x=\"signed | a nonce of 8 to 64",
                "\"@method\" |  | must be one label",
                "\"@method\" \"@path\" | \"@path\" | must cover @method",
                "box=( | box2=( | Signature must be box2=",
                "keyid=\"k1\" | keyid=\"k1\";alg=\"ed25519\" | hmac-sha256",
                "keyid=\"k1\" | keyid=\"k1\";alg=\"hmac-sha256\" | is not of this request"
            })
    void that_say_something_else_than_was_signed_are_refused(String part, String instead, String why) {
        String[] headers = box.headers(EVENTS, EVENT, NOW, nonce());
        headers[3] = headers[3].replace(part.formatted(NOW), instead == null ? "" : instead.formatted(NOW));

        refused(post(EVENTS, EVENT, headers), why);
    }

    @Test
    void with_half_of_the_headers_are_refused() {
        String[] all = box.headers(EVENTS, EVENT, NOW, nonce());

        refused(post(EVENTS, EVENT, all[0], all[1], all[2], all[3]), "one Signature-Input and one Signature");
        refused(post(EVENTS, EVENT, all[0], all[1], all[4], all[5]), "one Signature-Input and one Signature");
        refused(post(EVENTS, EVENT, all[2], all[3], all[4], all[5]), "content-digest, which is not there");
    }

    @Test
    void are_all_that_a_box_may_send_that_is_set_up_to_sign() {
        String document = Documents.CONTRACT.replace("{id: mesa-9-box,", "{id: mesa-9-box, signed: true,");
        operator.set(reader.read(SetupText.document(document)));

        refused(
                post(EVENTS, EVENT, "Authorization", "Bearer the-key-of-mesa-9"),
                "box mesa-9-box is set up to sign its posts");
        assertThat(post(EVENTS, EVENT, box.headers(EVENTS, EVENT, NOW, nonce())))
                .hasStatus(202);
    }

    @Test
    void are_not_vouched_for_by_a_key_beside_a_wrong_signature() {
        String[] headers = box.headers(EVENTS, EVENT, NOW - 9_999, nonce());

        refused(
                post(
                        EVENTS,
                        EVENT,
                        "Authorization",
                        "Bearer the-key-of-mesa-9",
                        headers[0],
                        headers[1],
                        headers[2],
                        headers[3],
                        headers[4],
                        headers[5]),
                "behind");
    }
}
