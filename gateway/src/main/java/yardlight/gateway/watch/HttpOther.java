package yardlight.gateway.watch;

import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Optional;
import yardlight.channels.web.Exchanges;
import yardlight.channels.web.Reply;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Faults;
import yardlight.gateway.problem.Problem;

/** Posts the heartbeat of a box. The key goes to that one address and is in no word that comes back from here. */
final class HttpOther implements Other {

    private static final int ACCEPTED = 202;
    private static final int UNAUTHORIZED = 401;

    private final Watcher watcher;
    private final Exchanges exchanges;

    HttpOther(Watcher watcher) {
        this.watcher = watcher;
        this.exchanges = new Exchanges(watcher.limits());
    }

    @Override
    public Told tell(Duration uptime) {
        HttpRequest.Builder request = HttpRequest.newBuilder(watcher.door())
                .header("Authorization", "Bearer " + watcher.key())
                .header("Content-Type", "application/json")
                .header("User-Agent", "yardlight");
        byte[] body = ("{\"uptime\": " + uptime.toSeconds() + "}").getBytes(StandardCharsets.UTF_8);
        Reply reply = exchanges.ask(request, "POST", body);
        if (reply instanceof Reply.Silence silence) {
            return Told.unheard(silence.why());
        }
        var answer = (Reply.Answer) reply;
        return answer.status() == ACCEPTED ? Told.heard(next(answer)) : Told.unheard(words(answer.status()));
    }

    /** What it answers in its body is not repeated: it could be what it was sent. */
    private static String words(int status) {
        if (status == UNAUTHORIZED) {
            return "it does not know the key (401)";
        }
        return status / 100 == 3
                ? "it points elsewhere, which is not followed (" + status + ")"
                : "it answers " + status;
    }

    private static Optional<Duration> next(Reply.Answer answer) {
        try {
            return Document.json(answer.text()).fields(new Faults()).duration("next");
        } catch (Problem unreadable) {
            return Optional.empty();
        }
    }
}
