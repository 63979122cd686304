package yardlight.gateway.people;

import java.util.Map;
import yardlight.gateway.people.RightsTest.Who;

/** Who may what, of what no controller answers: files, the actuator, and what the security chains answer. */
final class Besides {

    static final Map<String, Who> DOORS = Map.ofEntries(
            Map.entry("GET /actuator", Who.READER_UP),
            Map.entry("GET /actuator/health", Who.ANYBODY),
            Map.entry("GET /actuator/health/**", Who.ANYBODY),
            Map.entry("GET /actuator/prometheus", Who.READER_UP),
            Map.entry("GET /yardlight.css", Who.ANYBODY),
            Map.entry("GET /yardlight.svg", Who.ANYBODY),
            Map.entry("GET /wiring.js", Who.READER_UP),
            Map.entry("GET /hold.js", Who.READER_UP),
            Map.entry("GET /curves.js", Who.READER_UP),
            Map.entry("GET /calm.js", Who.ANYBODY),
            Map.entry("GET /phone.js", Who.ANYBODY),
            Map.entry("GET /phone-worker.js", Who.ANYBODY),
            Map.entry("GET /phone-app.json", Who.ANYBODY),
            Map.entry("GET /webjars/htmx.org/2.0.10/dist/htmx.min.js", Who.ANYBODY),
            Map.entry("GET /yardlight-180.png", Who.ANYBODY),
            Map.entry("GET /yardlight-192.png", Who.ANYBODY),
            Map.entry("GET /yardlight-512.png", Who.ANYBODY),
            Map.entry("GET /passkey.js", Who.ANYBODY),
            Map.entry("POST /webauthn/register/options", Who.READER_UP),
            Map.entry("POST /webauthn/register", Who.READER_UP),
            Map.entry("POST /webauthn/authenticate/options", Who.ANYBODY),
            Map.entry("POST /login/webauthn", Who.KEY),
            Map.entry("POST /login", Who.ANYBODY),
            Map.entry("POST /logout", Who.ANYBODY));

    private Besides() {}
}
