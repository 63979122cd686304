package yardlight.gateway.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.http.HttpMethod;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;

/** Who may use which address. Each address of the gateway has to stand here; a new one fails until somebody has decided. */
@GatewayTest
class RightsTest {

    private enum Who {
        OWNER,
        HAND_UP,
        READER_UP,
        /** Boxes and providers, by keys of their own. */
        KEY,
        ANYBODY
    }

    private static final Map<String, Who> DECIDED = decided();

    private final Doors doors;
    private final RequestMappingHandlerMapping routes;

    RightsTest(Doors doors, @Qualifier("requestMappingHandlerMapping") RequestMappingHandlerMapping routes) {
        this.doors = doors;
        this.routes = routes;
    }

    private static Map<String, Who> decided() {
        var decided = new LinkedHashMap<String, Who>();
        decided.put("POST /api/v1/events", Who.KEY);
        decided.put("POST /api/v1/heartbeats", Who.KEY);
        decided.put("POST /api/v1/replies", Who.KEY);
        decided.put("GET /api/v1/setup", Who.READER_UP);
        decided.put("PUT /api/v1/setup", Who.OWNER);
        decided.put("GET /api/v1/boxes/{box}/keys", Who.OWNER);
        decided.put("POST /api/v1/boxes/{box}/keys", Who.OWNER);
        decided.put("DELETE /api/v1/boxes/{box}/keys/{key}", Who.OWNER);
        decided.put("GET /api/v1/logins", Who.OWNER);
        decided.put("PUT /api/v1/logins/{login}", Who.OWNER);
        decided.put("GET /api/v1/lines", Who.READER_UP);
        decided.put("POST /api/v1/contacts/{id}/lines/{line}/test", Who.HAND_UP);
        decided.put("GET /contacts/{id}", Who.READER_UP);
        decided.put("POST /contacts/{id}/lines/{line}/test", Who.HAND_UP);
        decided.put("GET /phone", Who.HAND_UP);
        decided.put("POST /phone/lines", Who.OWNER);
        decided.put("GET /api/v1/alarms", Who.READER_UP);
        decided.put("GET /api/v1/alarms/{id}", Who.READER_UP);
        decided.put("GET /api/v1/silences", Who.READER_UP);
        decided.put("GET /silences", Who.READER_UP);
        decided.put("POST /api/v1/alarms/{id}/acknowledge", Who.HAND_UP);
        decided.put("POST /api/v1/alarms/{id}/shelve", Who.HAND_UP);
        decided.put("POST /api/v1/alarms/{id}/unshelve", Who.HAND_UP);
        decided.put("POST /api/v1/alarms/{id}/reset", Who.OWNER);
        decided.put("POST /api/v1/rehearsals", Who.READER_UP);
        decided.put("GET /api/v1/log", Who.READER_UP);
        decided.put("GET /a/{token}", Who.ANYBODY);
        decided.put("POST /a/{token}", Who.ANYBODY);
        decided.put("GET /", Who.READER_UP);
        decided.put("GET /live", Who.READER_UP);
        decided.put("POST /alarms/{id}/acknowledge", Who.HAND_UP);
        decided.put("GET /login", Who.ANYBODY);
        decided.put("GET /v3/api-docs", Who.ANYBODY);
        decided.put("GET /v3/api-docs.yaml", Who.ANYBODY);
        return decided;
    }

    /** Addresses that are not request mappings. */
    private static final Map<String, Who> BESIDES = Map.ofEntries(
            Map.entry("GET /actuator/health", Who.ANYBODY),
            Map.entry("GET /actuator/health/readiness", Who.ANYBODY),
            Map.entry("GET /actuator/health/liveness", Who.ANYBODY),
            Map.entry("GET /actuator/prometheus", Who.READER_UP),
            Map.entry("GET /yardlight.css", Who.ANYBODY),
            Map.entry("GET /yardlight.svg", Who.ANYBODY),
            Map.entry("GET /phone.js", Who.ANYBODY),
            Map.entry("GET /phone-worker.js", Who.ANYBODY),
            Map.entry("GET /phone-app.json", Who.ANYBODY),
            Map.entry("GET /webjars/htmx.org/2.0.10/dist/htmx.min.js", Who.ANYBODY),
            Map.entry("GET /yardlight-192.png", Who.ANYBODY));

    @Test
    void are_decided_for_every_address() {
        Set<String> registered = routes.getHandlerMethods().keySet().stream()
                .flatMap(info -> names(info).stream())
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(registered).containsExactlyInAnyOrderElementsOf(DECIDED.keySet());
    }

    @Test
    void are_what_each_role_finds() {
        var all = new LinkedHashMap<>(DECIDED);
        all.putAll(BESIDES);
        var wrong = new ArrayList<String>();

        all.forEach((address, who) -> {
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
        String[] parts = address.replaceAll("\\{\\w+}", "none").split(" ");
        HttpMethod method = HttpMethod.valueOf(parts[0]);
        var request = login.isEmpty() ? doors.stranger(method, parts[1]) : doors.as(login, method, parts[1]);
        int status = request.accept("*/*").asyncExchange().getResponse().getStatus();
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

    private static List<String> names(RequestMappingInfo info) {
        var names = new ArrayList<String>();
        Set<RequestMethod> methods = info.getMethodsCondition().getMethods();
        for (String pattern : info.getPatternValues()) {
            if (!pattern.equals("/error")) {
                assertThat(methods).as("methods of " + pattern).isNotEmpty();
                methods.forEach(method -> names.add(method + " " + pattern));
            }
        }
        return names;
    }
}
