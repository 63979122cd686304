package yardlight.channels.oauth;

import java.time.Duration;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import yardlight.channels.web.Reply;

/**
 * What a token endpoint gave: RFC 6749 5.1.
 *
 * @param life as it said, or five minutes when it did not
 * @param refreshToken another one than before, if it gave one
 */
record Grant(String token, Duration life, Optional<String> refreshToken) {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final Duration UNSAID = Duration.ofMinutes(5);
    private static final long LONGEST = Duration.ofDays(30).toSeconds();
    private static final int SUCCESS = 200;

    static Grant of(Reply reply) throws NoToken {
        if (reply instanceof Reply.Answer answer) {
            JsonNode body = json(answer);
            if (answer.status() == SUCCESS && answer.whole()) {
                return granted(body);
            }
            throw new NoToken("the token endpoint answered " + answer.status() + error(body));
        }
        throw new NoToken("the token endpoint gave no answer: " + ((Reply.Silence) reply).why());
    }

    private static Grant granted(JsonNode body) throws NoToken {
        String token = text(body, "access_token");
        if (!token.matches("[!-~]{1,16000}")) {
            throw new NoToken("the token endpoint gave no token that can be used");
        }
        long seconds = body.path("expires_in").asLong(UNSAID.toSeconds());
        String refresh = text(body, "refresh_token");
        return new Grant(
                token,
                Duration.ofSeconds(Math.max(0, Math.min(seconds, LONGEST))),
                Optional.of(refresh).filter(given -> given.matches("[!-~]{1,16000}")));
    }

    /** RFC 6749 5.2: a word from a list; its description may be anything and is left out. */
    private static String error(JsonNode body) {
        String error = text(body, "error");
        return error.matches("[A-Za-z0-9_.-]{1,60}") ? ": " + error : "";
    }

    private static String text(JsonNode body, String name) {
        JsonNode value = body.path(name);
        return value.isString() ? value.asString() : "";
    }

    private static JsonNode json(Reply.Answer answer) {
        try {
            return JSON.readTree(answer.body());
        } catch (JacksonException e) {
            return JSON.createObjectNode();
        }
    }

    @Override
    public String toString() {
        return "Grant[for " + life + "]";
    }
}
