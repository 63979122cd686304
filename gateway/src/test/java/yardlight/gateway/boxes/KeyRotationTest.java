package yardlight.gateway.boxes;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.http.HttpMethod;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import yardlight.db.boxkey.BoxKey;
import yardlight.escalation.Fixtures;
import yardlight.gateway.Doors;
import yardlight.gateway.FakeLane;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;
import yardlight.gateway.setup.Documents;
import yardlight.gateway.setup.SetupReader;
import yardlight.gateway.setup.SetupText;

/** Keys of boxes: 256 bits, kept as a hash, of one box and its site, replaced with an overlap, dead when they are revoked. */
@GatewayTest
class KeyRotationTest {

    private static final String KEYS = "/api/v1/boxes/spare-box/keys";

    private final Doors doors;
    private final FakeLane lane;
    private final JdbcTemplate jdbc;
    private final LastUses uses;
    private final SetupReader reader;
    private final TestGateway.InMemorySetup operator;

    KeyRotationTest(
            Doors doors,
            FakeLane lane,
            JdbcTemplate jdbc,
            LastUses uses,
            SetupReader reader,
            TestGateway.InMemorySetup operator) {
        this.doors = doors;
        this.lane = lane;
        this.jdbc = jdbc;
        this.uses = uses;
        this.reader = reader;
        this.operator = operator;
    }

    @BeforeEach
    void add_a_box() {
        lane.clear();
        jdbc.update("delete from box_key where box = 'spare-box'");
        String document = Documents.CONTRACT
                .replace("sites:    [", "sites:    [{id: loma-4, zone: America/Chicago, ladder: night}, ")
                .replace("boxes:    [", "boxes:    [{id: spare-box, site: loma-4}, ");
        operator.set(reader.read(SetupText.document(document)));
    }

    @AfterEach
    void leave_it() {
        operator.set(Fixtures.theSetup());
    }

    @Test
    void a_key_has_256_bits_and_only_its_hash_is_kept() {
        JsonNode made = made("");
        String key = made.get("key").asString();

        assertThat(Base64.getUrlDecoder().decode(key)).hasSize(32);
        assertThat(made("").get("key").asString()).isNotEqualTo(key);
        List<Map<String, Object>> rows = jdbc.queryForList("select * from box_key where box = 'spare-box'");
        assertThat(rows.toString()).doesNotContain(key).contains(KeyRing.hash(key));
    }

    @Test
    void a_further_key_leaves_the_others_as_they_are() {
        JsonNode first = made("");
        JsonNode second = made("{}");

        assertThat(beat(first)).hasStatus(202);
        assertThat(beat(second)).hasStatus(202);
        assertThat(second.has("othersEndAt")).isFalse();
        assertThat(listed().findValues("endsAt")).isEmpty();
    }

    @Test
    void a_key_in_place_of_others_lets_them_go_on_for_the_overlap_and_says_until_when() {
        JsonNode old = made("");
        JsonNode fresh = made("{\"endOthersAfter\": \"P7D\"}");

        String end = TestGateway.NOW.plus(Duration.ofDays(7)).toString();
        assertThat(fresh.get("othersEndAt").asString()).isEqualTo(end);
        assertThat(beat(old)).hasStatus(202);
        assertThat(of(old).get("endsAt").asString()).isEqualTo(end);
        assertThat(of(fresh).has("endsAt")).isFalse();
    }

    @Test
    void an_overlap_of_nothing_ends_the_others_at_once() {
        JsonNode old = made("");
        assertThat(beat(old)).hasStatus(202);

        JsonNode fresh = made("{\"endOthersAfter\": \"PT0S\"}");

        assertThat(beat(old)).hasStatus(401);
        assertThat(beat(fresh)).hasStatus(202);
    }

    /** As another gateway would: this one has it in memory, and asks. */
    @Test
    void a_key_ends_in_its_second() {
        BoxKey key = new BoxKey(
                "e-1",
                "spare-box",
                "0",
                TestGateway.NOW,
                java.util.Optional.of(TestGateway.NOW),
                java.util.Optional.empty(),
                java.util.Optional.empty());

        assertThat(key.goodAt(TestGateway.NOW.minusNanos(1))).isTrue();
        assertThat(key.goodAt(TestGateway.NOW)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"endOthersAfter\": \"P91D\"}",
                "{\"endOthersAfter\": \"-PT1S\"}",
                "{\"endOthersAfter\": \"a week\"}",
                "{\"endOthersAfter\": 7}",
                "{\"endOthers\": \"P7D\"}"
            })
    void an_overlap_that_is_none_is_refused_and_no_key_is_made(String body) {
        MvcTestResult refused = doors.as("owner", HttpMethod.POST, KEYS)
                .contentType("application/json")
                .content(body)
                .exchange();

        assertThat(refused).hasStatus(422);
        assertThat(listed()).isEmpty();
    }

    @Test
    void a_revoked_key_opens_nothing_from_then_on() {
        JsonNode key = made("");
        assertThat(beat(key)).hasStatus(202);

        String where = KEYS + "/" + key.get("id").asString();
        assertThat(doors.as("owner", HttpMethod.DELETE, where)).hasStatus(204);

        assertThat(beat(key)).hasStatus(401);
        assertThat(of(key).get("revokedAt").asString()).isEqualTo(TestGateway.NOW.toString());
        assertThat(doors.as("owner", HttpMethod.DELETE, where)).hasStatus(404);
    }

    @Test
    void a_key_of_one_box_does_not_revoke_under_the_name_of_another() {
        String id = made("").get("id").asString();

        assertThat(doors.as("owner", HttpMethod.DELETE, "/api/v1/boxes/mesa-9-box/keys/" + id))
                .hasStatus(404);
    }

    @Test
    void its_last_use_is_shown_and_stored() {
        JsonNode key = made("");
        assertThat(of(key).has("usedAt")).isFalse();

        assertThat(beat(key)).hasStatus(202);

        assertThat(of(key).get("usedAt").asString()).isEqualTo(TestGateway.NOW.toString());
        uses.store(Duration.ZERO);
        assertThat(jdbc.queryForObject(
                        "select count(*) from box_key where id = ? and used_at is not null",
                        Integer.class,
                        key.get("id").asString()))
                .isEqualTo(1);
    }

    @Test
    void it_speaks_for_its_own_site_whatever_the_post_says() {
        JsonNode key = made("");

        MvcTestResult posted = doors.stranger(HttpMethod.POST, "/api/v1/events")
                .header("Authorization", "Bearer " + key.get("key").asString())
                .contentType("application/json")
                .content("{\"site\": \"mesa-9\", \"box\": \"mesa-9-box\", \"point\": \"water-tank\","
                        + " \"condition\": \"high\", \"state\": \"normal\"}")
                .exchange();

        assertThat(posted).hasStatus(202);
        assertThat(lane.events.get(0).report().key().site()).isEqualTo("loma-4");
        assertThat(lane.events.get(0).report().box()).contains("spare-box");
    }

    private JsonNode made(String body) {
        MvcTestResult result = doors.as("owner", HttpMethod.POST, KEYS)
                .contentType("application/json")
                .content(body)
                .exchange();
        assertThat(result).hasStatus(201);
        return json(result);
    }

    private MvcTestResult beat(JsonNode key) {
        return doors.stranger(HttpMethod.POST, "/api/v1/heartbeats")
                .header("Authorization", "Bearer " + key.get("key").asString())
                .exchange();
    }

    private JsonNode listed() {
        return json(doors.as("owner", HttpMethod.GET, KEYS).exchange());
    }

    private JsonNode of(JsonNode key) {
        for (JsonNode one : listed()) {
            if (one.get("id").equals(key.get("id"))) {
                return one;
            }
        }
        throw new AssertionError("no such key");
    }

    private static JsonNode json(MvcTestResult result) {
        return JsonMapper.shared().readTree(result.getResponse().getContentAsByteArray());
    }
}
