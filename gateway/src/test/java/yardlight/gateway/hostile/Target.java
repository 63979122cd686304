package yardlight.gateway.hostile;

import java.util.List;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.setup.Documents;

/**
 * A door and what is good there, as the contract shows it.
 *
 * @param where the part of a request that is spoilt
 * @param who whose key or login is shown
 */
enum Target {
    JSON(Where.BODY, Who.BOX, "POST", "/api/v1/events", "application/json", Good.EVENTS),
    LINES(Where.BODY, Who.BOX, "POST", "/api/v1/events", "application/x-ndjson", Good.LINES),
    FORM(Where.BODY, Who.BOX, "POST", "/api/v1/events", "application/x-www-form-urlencoded", Good.FORMS),
    HEARTBEAT(Where.BODY, Who.BOX, "POST", "/api/v1/heartbeats", "application/json", Good.HEARTBEATS),
    SETUP(Where.BODY, Who.OWNER, "PUT", "/api/v1/setup", "application/yaml", List.of(Documents.CONTRACT, Good.BOMB)),
    SETUP_JSON(Where.BODY, Who.OWNER, "PUT", "/api/v1/setup", "application/json", Good.SETUPS),
    READINGS(Where.BODY, Who.BOX, "POST", "/api/v1/readings", "application/json", Good.READINGS),
    READING_LINES(Where.BODY, Who.BOX, "POST", "/api/v1/readings", "application/x-ndjson", Good.READING_LINES),
    READING_FORM(
            Where.BODY, Who.BOX, "POST", "/api/v1/readings", "application/x-www-form-urlencoded", Good.READING_FORMS),
    READING_TABLE(Where.BODY, Who.BOX, "POST", "/api/v1/readings", "text/csv", Good.READING_TABLES),
    REPLY(Where.BODY, Who.PROVIDER, "POST", "/api/v1/replies", "application/json", Good.REPLIES),
    REHEARSAL(Where.BODY, Who.OWNER, "POST", "/api/v1/rehearsals", "application/json", Good.REHEARSALS),
    ACTION(Where.BODY, Who.OWNER, "POST", "/api/v1/alarms/none/shelve", "application/json", Good.ACTIONS),
    KEY(Where.BODY, Who.OWNER, "POST", "/api/v1/boxes/mesa-9-box/keys", "application/json", Good.KEYS),
    LINK(Where.PATH, Who.NOBODY, "GET", "/a/", "", Good.TOKENS),
    PRESSED_LINK(Where.PATH, Who.NOBODY, "POST", "/a/", "application/x-www-form-urlencoded", Good.TOKENS),
    ALARMS(Where.QUERY, Who.OWNER, "GET", "/api/v1/alarms?", "", Good.ALARM_QUERIES),
    LOG(Where.QUERY, Who.OWNER, "GET", "/api/v1/log?to=2020-01-01T00:00:00Z&", "", Good.LOG_QUERIES),
    KNOWN_LINES(Where.QUERY, Who.OWNER, "GET", "/api/v1/lines?", "", Good.LINE_QUERIES),
    HISTORY(Where.QUERY, Who.OWNER, "GET", "/api/v1/readings?", "", Good.HISTORY_QUERIES),
    SUGGESTIONS(Where.QUERY, Who.OWNER, "GET", "/api/v1/suggestions?", "", Good.SUGGESTION_QUERIES),
    PROOF(Where.QUERY, Who.OWNER, "GET", "/api/v1/log/proof?", "", Good.PROOF_QUERIES),
    CONSISTENCY(Where.QUERY, Who.OWNER, "GET", "/api/v1/log/consistency?", "", Good.CONSISTENCY_QUERIES),
    CURVES_PAGE(Where.QUERY, Who.OWNER, "GET", "/sites/mesa-9/curves?", "", Good.CURVES_QUERIES),
    FIGURES(Where.QUERY, Who.OWNER, "GET", "/sites/mesa-9/curves/figures?", "", Good.FIGURES_QUERIES),
    RECORD_PAGE(Where.QUERY, Who.OWNER, "GET", "/record?", "", Good.RECORD_QUERIES),
    TURNS_PAGE(Where.QUERY, Who.OWNER, "GET", "/turns?", "", Good.TURNS_QUERIES),
    SITE_PAGE(Where.PATH, Who.OWNER, "GET", "/sites/", "", List.of("mesa-9", "mesa-9/points/water-tank")),
    ALARM_PATH(Where.PATH, Who.OWNER, "GET", "/api/v1/alarms/", "", Good.ALARM_IDS),
    SIGNATURE(Where.HEADER, Who.NOBODY, "POST", "/api/v1/events", "application/json", Good.SIGNATURES);

    /** What is spoilt. */
    enum Where {
        BODY,
        PATH,
        QUERY,
        HEADER
    }

    /** Who asks. */
    enum Who {
        BOX,
        OWNER,
        PROVIDER,
        NOBODY
    }

    final Where where;
    final Who who;
    final String method;
    final String path;
    final String type;
    final List<String> good;

    Target(Where where, Who who, String method, String path, String type, List<String> good) {
        this.where = where;
        this.who = who;
        this.method = method;
        this.path = path;
        this.type = type;
        this.good = good;
    }

    static final String REPLIES_KEY = GatewayTest.REPLIES_KEY;

    private static final class Good {

        static final String EVENT =
                "{\"id\": \"e-1\", \"point\": \"water-tank\", \"condition\": \"high-high\", \"state\": \"active\","
                        + " \"priority\": \"high\", \"value\": 18.4, \"limit\": 18.0, \"unit\": \"ft\", \"at\":"
                        + " \"2026-11-25T08:12:00Z\", \"text\": \"Tank \u00e1\"}";
        static final List<String> EVENTS = List.of(
                EVENT,
                "[" + EVENT + "," + EVENT.replace("active", "normal") + "]",
                "{\"point\":\"pump\",\"condition\":\"off\",\"state\":\"active\"}");
        static final List<String> LINES =
                List.of(EVENT + "\n" + EVENT.replace("e-1", "e-2") + "\n", EVENT + "\r\n\r\n{}\n");
        static final List<String> FORMS = List.of(
                "point=water-tank&condition=high-high&state=active&value=18.4&limit=18.0&unit=ft",
                "point=pump&condition=off&state=normal&text=a%20b+c&at=2026-11-25T08:12:00Z");
        static final List<String> HEARTBEATS = List.of(
                "{\"uptime\": 86400, \"feeds\": {\"pump\": true, \"wells\": false}, \"battery\": 12.6, \"signal\": -97,"
                        + " \"at\": \"2026-11-25T08:12:00Z\"}",
                "{}");
        static final String BOMB = """
            a: &a [x, x, x, x, x, x, x, x, x]
            b: &b [*a, *a, *a, *a, *a, *a, *a, *a, *a]
            c: &c [*b, *b, *b, *b, *b, *b, *b, *b, *b]
            sites: [{id: mesa-9, <<: *c, zone: !!str America/Chicago, ladder: night}]
            """;
        static final List<String> SETUPS = List.of(
                "{\"sites\":[{\"id\":\"mesa-9\",\"zone\":\"America/Chicago\",\"ladder\":\"night\"}],\"boxes\":[{\"id\":\"b\",\"site\":\"mesa-9\","
                        + "\"heartbeat\":{\"every\":\"PT1M\"}}],\"points\":[],\"contacts\":[{\"id\":\"ana\",\"lines\":[{\"channel\":\"mail\","
                        + "\"address\":\"ana@mesa.example\"}],\"quiet\":[{\"from\":\"21:00\",\"to\":\"06:00\"}]}],\"rosters\":[],"
                        + "\"ladders\":[{\"id\":\"night\",\"rungs\":[{\"call\":[\"ana\"],\"wait\":\"PT5M\",\"rounds\":2}]}]}");
        static final List<String> REPLIES = List.of(
                "{\"from\": \"+15755550101\", \"text\": \"ok 47\"}",
                "{\"from\": \"ana@mesa.example\", \"text\": \"HOLD 47 2H, please\\n> quoted\"}",
                "{\"from\": \"+1 575 555 0101\", \"text\": \"listo 47 y 51 no gracias?\"}");
        static final List<String> REHEARSALS =
                List.of("{\"site\": \"mesa-9\", \"point\": \"water-tank\", \"condition\": \"high-high\", \"priority\":"
                        + " \"high\", \"at\": \"2026-11-25T08:13:00Z\", \"answers\": [{\"contact\": \"ben\", \"after\":"
                        + " \"PT12M\"}]}");
        static final List<String> ACTIONS = List.of("{\"for\": \"PT2H\", \"reason\": \"welding\"}");
        static final List<String> KEYS = List.of("{\"endOthersAfter\": \"P7D\"}");
        static final List<String> TOKENS = List.of("kLtNxKUe6yfmjrDW0GZsLA", "AAAAAAAAAAAAAAAAAAAAAA");
        static final String READING =
                "{\"point\":\"water-tank\",\"value\":12.4,\"unit\":\"ft\",\"at\":\"2026-11-25T08:12:00Z\"}";
        static final List<String> READINGS = List.of(
                "{\"readings\":[" + READING + "]}",
                "[" + READING + "," + READING.replace("08:12", "08:13") + "]",
                READING);
        static final List<String> READING_LINES =
                List.of(READING + "\n" + READING.replace("12.4", "12.5") + "\n", READING + "\r\n\r\n{}\n");
        static final List<String> READING_FORMS = List.of(
                "point=water-tank&value=12.4&unit=ft&at=2026-11-25T08:12:00Z", "point=pressure&value=-1e2&unit=psi");
        static final List<String> READING_TABLES = List.of(
                "point,value,unit,at\nwater-tank,12.4,ft,2026-11-25T08:12:00Z\npump,1,,2026-11-25T08:13:00Z\n",
                "at,value,point\r\n2026-11-25T08:12:00Z,\"12.4\",\"water-tank\"\r\n");
        static final List<String> HISTORY_QUERIES =
                List.of("site=mesa-9&point=water-tank&from=2026-11-25T00:00:00Z&to=2026-11-26T00:00:00Z&points=500");
        static final List<String> SUGGESTION_QUERIES = List.of("site=mesa-9&point=water-tank");
        static final List<String> PROOF_QUERIES = List.of("line=1&size=2");
        static final List<String> CONSISTENCY_QUERIES = List.of("first=1&second=2");
        static final List<String> CURVES_QUERIES =
                List.of("points=water-tank&points=pump&span=P7D&until=2026-11-25T08:12&beside=true");
        static final List<String> FIGURES_QUERIES =
                List.of("points=water-tank&points=pump&from=1795000000&to=1795003600&beside=true");
        static final List<String> RECORD_QUERIES =
                List.of("site=mesa-9&contact=ana&what=event&from=2026-11-25T00:00&to=2026-11-26T00:00&before=99");
        static final List<String> TURNS_QUERIES = List.of("from=2026-11-23");
        static final List<String> ALARM_IDS = List.of("mesa-9.water-tank.high-high.1");
        static final List<String> ALARM_QUERIES =
                List.of("site=mesa-9&state=unacknowledged&from=2026-11-25T00:00:00Z&to=2026-11-26T00:00:00Z");
        static final List<String> LOG_QUERIES = List.of("site=mesa-9&contact=ana&from=2026-11-25T00:00:00Z");
        static final List<String> LINE_QUERIES = List.of("contact=ana");
        static final List<String> SIGNATURES = List.of(
                "box=(\"@method\" \"@path\" \"content-digest\");created=1764058380;keyid=\"k1\";nonce=\"aaaaaaaaaaaa\"",
                "sig1=(\"@method\" \"@path\" \"@query\" \"@authority\""
                        + " \"host\");created=1764058380;keyid=\"k1\";nonce=\"bbbbbbbb\";alg=\"hmac-sha256\"");
    }
}
