package yardlight.gateway.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.context.ApplicationContext;
import org.springframework.http.HttpMethod;
import yardlight.gateway.Doors;
import yardlight.gateway.FormToken;
import yardlight.gateway.GatewayTest;

/**
 * Who may use which address. What is asked is made of the gateway itself: what its controllers and the actuator answer, the
 * files that it serves, and what filters of the security chains answer on their own. Each has to stand here; a new one
 * fails until somebody has decided.
 */
@GatewayTest
class RightsTest {

    enum Who {
        OWNER,
        HAND_UP,
        READER_UP,
        /** Boxes, providers and passkeys, by keys of their own. */
        KEY,
        ANYBODY
    }

    private static final Map<String, Who> DECIDED = decided();

    private final Doors doors;
    private final Routes routes;

    RightsTest(Doors doors, ApplicationContext context) {
        this.doors = doors;
        this.routes = new Routes(context);
    }

    private static Map<String, Who> decided() {
        var decided = new LinkedHashMap<String, Who>();
        api(decided);
        pages(decided);
        decided.putAll(logins());
        laddersAndReports(decided);
        pagesOfPeople(decided);
        boxes(decided);
        return decided;
    }

    private static void api(Map<String, Who> decided) {
        decided.put("POST /api/v1/events", Who.KEY);
        decided.put("POST /api/v1/heartbeats", Who.KEY);
        decided.put("POST /api/v1/readings", Who.KEY);
        decided.put("GET /api/v1/readings", Who.READER_UP);
        decided.put("GET /api/v1/suggestions", Who.READER_UP);
        decided.put("POST /api/v1/replies", Who.KEY);
        decided.put("GET /api/v1/setup", Who.READER_UP);
        decided.put("PUT /api/v1/setup", Who.OWNER);
        decided.put("GET /api/v1/boxes/{box}/keys", Who.OWNER);
        decided.put("POST /api/v1/boxes/{box}/keys", Who.OWNER);
        decided.put("DELETE /api/v1/boxes/{box}/keys/{key}", Who.OWNER);
        decided.put("POST /api/v1/link-keys", Who.OWNER);
        decided.put("GET /api/v1/lines", Who.READER_UP);
        decided.put("POST /api/v1/contacts/{id}/lines/{line}/test", Who.HAND_UP);
        decided.put("GET /api/v1/alarms", Who.READER_UP);
        decided.put("GET /api/v1/alarms/{id}", Who.READER_UP);
        decided.put("GET /api/v1/silences", Who.READER_UP);
        decided.put("POST /api/v1/alarms/{id}/acknowledge", Who.HAND_UP);
        decided.put("POST /api/v1/alarms/{id}/shelve", Who.HAND_UP);
        decided.put("POST /api/v1/alarms/{id}/unshelve", Who.HAND_UP);
        decided.put("POST /api/v1/alarms/{id}/notes", Who.HAND_UP);
        decided.put("POST /api/v1/alarms/{id}/reset", Who.OWNER);
        decided.put("POST /api/v1/rehearsals", Who.READER_UP);
        decided.put("POST /api/v1/rehearsals/nights", Who.HAND_UP);
        decided.put("GET /api/v1/log", Who.READER_UP);
        decided.put("GET /api/v1/log/head", Who.READER_UP);
        decided.put("GET /api/v1/log/proof", Who.READER_UP);
        decided.put("GET /api/v1/log/consistency", Who.READER_UP);
        decided.put("GET /api/v1/log/export", Who.READER_UP);
    }

    private static void pages(Map<String, Who> decided) {
        decided.put("GET /contacts/{id}", Who.READER_UP);
        decided.put("GET /phone", Who.HAND_UP);
        decided.put("GET /silences", Who.READER_UP);
        decided.put("GET /api/v1/coverage", Who.READER_UP);
        decided.put("GET /sites/{id}/coverage", Who.READER_UP);
        decided.put("GET /a/{token}", Who.ANYBODY);
        decided.put("POST /a/{token}", Who.ANYBODY);
        decided.put("GET /", Who.READER_UP);
        decided.put("GET /live", Who.READER_UP);
        decided.put("GET /alarms/{id}", Who.READER_UP);
        decided.put("POST /alarms/{id}/acknowledge", Who.HAND_UP);
        decided.put("POST /alarms/{id}/shelve", Who.HAND_UP);
        decided.put("POST /alarms/{id}/unshelve", Who.HAND_UP);
        decided.put("POST /alarms/{id}/notes", Who.HAND_UP);
        decided.put("POST /alarms/{id}/reset", Who.OWNER);
        decided.put("GET /sites", Who.READER_UP);
        decided.put("GET /sites/{id}", Who.READER_UP);
        decided.put("GET /sites/{id}/curves", Who.READER_UP);
        decided.put("GET /sites/{id}/curves/figures", Who.READER_UP);
        decided.put("POST /sites/{id}/service", Who.OWNER);
        decided.put("GET /sites/{id}/shut-in", Who.READER_UP);
        decided.put("POST /sites/{id}/shut-in", Who.HAND_UP);
        decided.put("GET /sites/{id}/shut-in/on", Who.OWNER);
        decided.put("POST /sites/{id}/shut-in/on", Who.OWNER);
        decided.put("POST /sites/{id}/shut-in/off", Who.OWNER);
        decided.put("GET /sites/{id}/shut-in/terms", Who.OWNER);
        decided.put("POST /sites/{id}/shut-in/terms", Who.OWNER);
        decided.put("POST /sites/{id}/response", Who.OWNER);
        decided.put("GET /sites/{site}/points/{point}", Who.OWNER);
        decided.put("GET /sites/{site}/points/{point}/replay", Who.OWNER);
        decided.put("POST /sites/{site}/points/{point}", Who.OWNER);
        decided.put("POST /sites/{id}/points/{point}/service", Who.OWNER);
        decided.put("GET /record", Who.READER_UP);
        decided.put("GET /record.csv", Who.READER_UP);
        decided.put("GET /record/{line}", Who.READER_UP);
        decided.put("GET /login", Who.ANYBODY);
        decided.put("GET /v3/api-docs", Who.ANYBODY);
        decided.put("GET /v3/api-docs.yaml", Who.ANYBODY);
    }

    private static Map<String, Who> logins() {
        var decided = new LinkedHashMap<String, Who>();
        decided.put("GET /api/v1/logins", Who.OWNER);
        decided.put("PUT /api/v1/logins/{login}", Who.OWNER);
        decided.put("DELETE /api/v1/logins/{login}", Who.OWNER);
        decided.put("DELETE /api/v1/logins/{login}/sessions", Who.OWNER);
        decided.put("GET /api/v1/invitations", Who.OWNER);
        decided.put("POST /api/v1/invitations", Who.OWNER);
        decided.put("DELETE /api/v1/invitations/{id}", Who.OWNER);
        decided.put("GET /logins", Who.OWNER);
        decided.put("POST /logins/invitations", Who.OWNER);
        decided.put("POST /logins/invitations/{id}/take-back", Who.OWNER);
        decided.put("POST /logins/{name}/role", Who.OWNER);
        decided.put("POST /logins/{name}/remove", Who.OWNER);
        decided.put("POST /logins/{name}/sign-out", Who.OWNER);
        decided.put("POST /logins/devices", Who.OWNER);
        decided.put("GET /me", Who.READER_UP);
        decided.put("POST /me/password", Who.READER_UP);
        decided.put("POST /me/sessions", Who.READER_UP);
        decided.put("GET /join/{token}", Who.ANYBODY);
        decided.put("POST /join/{token}", Who.ANYBODY);
        decided.put("GET /me/calendar", Who.READER_UP);
        decided.put("POST /me/calendar", Who.READER_UP);
        decided.put("POST /me/calendar/off", Who.READER_UP);
        decided.put("GET /me/passkeys", Who.READER_UP);
        decided.put("POST /me/passkeys/remove", Who.READER_UP);
        decided.put("POST /me/passkeys/confirm", Who.READER_UP);
        return decided;
    }

    private static void pagesOfPeople(Map<String, Who> decided) {
        decided.put("POST /phone/lines", Who.OWNER);
        decided.put("GET /people", Who.READER_UP);
        decided.put("GET /people/{id}", Who.READER_UP);
        decided.put("POST /people/{id}/lines/{line}/test", Who.HAND_UP);
        decided.put("GET /people/{id}/edit", Who.OWNER);
        decided.put("POST /people/{id}/edit", Who.OWNER);
        decided.put("GET /people/{id}/remove", Who.OWNER);
        decided.put("POST /people/{id}/remove", Who.OWNER);
        decided.put("GET /new-person", Who.OWNER);
        decided.put("POST /new-person", Who.OWNER);
        decided.put("GET /paths", Who.READER_UP);
        decided.put("GET /people/{id}/calendar", Who.OWNER);
        decided.put("POST /people/{id}/calendar", Who.OWNER);
        decided.put("POST /people/{id}/calendar/off", Who.OWNER);
        decided.put("GET /people/{id}/vacations", Who.OWNER);
        decided.put("POST /people/{id}/vacations", Who.OWNER);
        decided.put("POST /people/{id}/vacations/off", Who.OWNER);
        decided.put("GET /calendar/{token}.ics", Who.ANYBODY);
        decided.put("GET /turns", Who.READER_UP);
        decided.put("GET /turns/{id}/swap", Who.OWNER);
        decided.put("POST /turns/{id}/swap", Who.OWNER);
        decided.put("POST /turns/{id}/swap/off", Who.OWNER);
        decided.put("POST /turns/{id}/swap/ask", Who.OWNER);
        decided.put("POST /turns/{id}/swap/ask/off", Who.OWNER);
        decided.put("POST /turns/{id}/swap/ask/take", Who.OWNER);
        decided.put("GET /turns/{id}/edit", Who.OWNER);
        decided.put("POST /turns/{id}/edit", Who.OWNER);
        decided.put("GET /new-roster", Who.OWNER);
        decided.put("POST /new-roster", Who.OWNER);
    }

    private static void boxes(Map<String, Who> decided) {
        decided.put("GET /boxes", Who.READER_UP);
        decided.put("POST /boxes", Who.OWNER);
        decided.put("GET /boxes/{id}", Who.READER_UP);
        decided.put("POST /boxes/{id}", Who.OWNER);
        decided.put("GET /boxes/{id}/live", Who.READER_UP);
        decided.put("POST /boxes/{id}/keys", Who.OWNER);
        decided.put("POST /boxes/{id}/keys/{key}/revoke", Who.OWNER);
        decided.put("POST /boxes/{id}/remove", Who.OWNER);
        decided.put("GET /start", Who.OWNER);
        decided.put("GET /start/test", Who.OWNER);
        decided.put("POST /start/{step}", Who.OWNER);
        decided.put("POST /start/key", Who.OWNER);
        decided.put("POST /start/test", Who.OWNER);
    }

    private static void laddersAndReports(Map<String, Who> decided) {
        decided.put("GET /ladders", Who.READER_UP);
        decided.put("POST /ladders", Who.OWNER);
        decided.put("GET /ladders/{id}", Who.READER_UP);
        decided.put("POST /ladders/{id}", Who.OWNER);
        decided.put("POST /ladders/{id}/rehearsal", Who.READER_UP);
        decided.put("POST /ladders/{id}/nights", Who.HAND_UP);
        decided.put("POST /ladders/{id}/remove", Who.OWNER);
        for (String form : List.of("/reports/%s", "/reports/%s.csv", "/api/v1/reports/%s")) {
            decided.put("GET " + form.formatted("performance"), Who.READER_UP);
            decided.put("GET " + form.formatted("burden"), Who.HAND_UP);
        }
        decided.put("GET /reports", Who.READER_UP);
        decided.put("GET /reports/notification.pdf", Who.READER_UP);
        decided.put("GET /reports/notification.csv", Who.READER_UP);
        decided.put("GET /api/v1/reports/notification", Who.READER_UP);
        decided.put("GET /edits", Who.READER_UP);
        decided.put("POST /edits/{version}/take-back", Who.OWNER);
    }

    private static Map<String, Who> all() {
        var all = new LinkedHashMap<>(DECIDED);
        all.putAll(Besides.DOORS);
        return all;
    }

    @Test
    void are_decided_for_every_address() {
        assertThat(routes.all()).containsExactlyInAnyOrderElementsOf(all().keySet());
    }

    @Test
    void are_what_each_role_finds() {
        var wrong = new ArrayList<String>();

        all().forEach((address, who) -> {
            for (String login : List.of("owner", "hand", "reader", "")) {
                String found = let(address, login);
                if (!found.equals(expected(who, login))) {
                    wrong.add(address + " as '" + login + "': " + found + " instead of " + expected(who, login));
                }
            }
        });

        assertThat(wrong).isEmpty();
    }

    /** What became of a request without a body: what matters is only whether the door was open. */
    private String let(String address, String login) {
        String[] parts = address.replaceAll("\\{\\w+}", "none")
                .replace("**", "readiness")
                .split(" ");
        HttpMethod method = HttpMethod.valueOf(parts[0]);
        FormToken token = FormToken.of(doors.stranger(HttpMethod.GET, "/login").exchange(), null);
        var request = login.isEmpty() ? doors.stranger(method, parts[1]) : doors.as(login, method, parts[1]);
        int status = request.accept("*/*")
                .cookie(token.cookie())
                .param("_csrf", token.value())
                .asyncExchange()
                .getResponse()
                .getStatus();
        return switch (status) {
            case 401 -> "who are you";
            case 403 -> "not you";
            default -> "in";
        };
    }

    private static String expected(Who who, String login) {
        if (who == Who.ANYBODY) {
            return "in";
        }
        if (who == Who.KEY) {
            return "who are you";
        }
        boolean in = switch (login) {
            case "owner" -> true;
            case "hand" -> who != Who.OWNER;
            case "reader" -> who == Who.READER_UP;
            default -> false;
        };
        return in ? "in" : login.isEmpty() ? "who are you" : "not you";
    }
}
