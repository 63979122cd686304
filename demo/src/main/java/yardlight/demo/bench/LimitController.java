package yardlight.demo.bench;

import java.io.IOException;
import java.io.InputStream;
import java.sql.SQLException;
import java.util.Map;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;

/** The bare endpoint, and the plain way to store. Only in the process that is the limit, not in the demo. */
@RestController
@ConditionalOnProperty(LimitServer.MARK)
class LimitController {

    static final String BARE = "/bare";
    static final String PLAIN = "/plain";

    /** Stores the rows of {@value #AT_ONCE} alarms. */
    static final String ROWS = "/rows";

    static final int AT_ONCE = 100;

    static final String READY = "/actuator/health/readiness";

    /** One byte more than the gateway takes. */
    private static final int LONGEST = 1_048_577;

    private final PlainWay plain;

    LimitController(PlainWay plain) {
        this.plain = plain;
    }

    @GetMapping(READY)
    void ready() {}

    @PostMapping(BARE)
    ResponseEntity<Map<String, Object>> bare(InputStream body) throws IOException {
        return answer(event(body));
    }

    @PostMapping(PLAIN)
    ResponseEntity<Map<String, Object>> plain(InputStream body) throws IOException, SQLException {
        PlainEvent event = event(body);
        plain.store();
        return answer(event);
    }

    @PostMapping(ROWS)
    ResponseEntity<Map<String, Object>> rows(InputStream body) throws IOException, SQLException {
        PlainEvent event = event(body);
        plain.store(AT_ONCE);
        return answer(event);
    }

    private static PlainEvent event(InputStream body) throws IOException {
        return JsonMapper.shared().readValue(body.readNBytes(LONGEST), PlainEvent.class);
    }

    private static ResponseEntity<Map<String, Object>> answer(PlainEvent event) {
        return event.right()
                ? ResponseEntity.accepted().body(event.receipt())
                : ResponseEntity.unprocessableContent().build();
    }
}
