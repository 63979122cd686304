package yardlight.gateway.live;

import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.mvc.method.annotation.SseEmitter;

/** Where an open page listens (server-sent events, WHATWG HTML): one event {@code changed} whenever there is news. */
@Controller
class LivePage {

    private final Watching watching;

    LivePage(Watching watching) {
        this.watching = watching;
    }

    @GetMapping(path = "/live", produces = MediaType.TEXT_EVENT_STREAM_VALUE)
    SseEmitter listen() {
        return watching.join();
    }
}
