package yardlight.gateway.live;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.mvc.method.annotation.SseEmitter;
import yardlight.db.log.LogLine;
import yardlight.db.log.LogLines;
import yardlight.gateway.clock.Bell;
import yardlight.gateway.clock.Worker;
import yardlight.gateway.problem.Problem;

/**
 * The pages that are open. Whatever changes is a line in the log, on whichever node it happened: once a second, and only
 * while somebody looks, the number of the last line is asked for, and a page is told when it has moved on.
 *
 * <p>A page waits a moment after it was told ({@code delay} in htmx). It must not throttle: two words come about a second
 * apart, and the second of them would be dropped, with what it was about.
 */
@Component
class Watching implements SmartLifecycle {

    /** Each is a connection; beyond these a page looks by itself now and then. */
    static final int MOST = 200;

    /** A page that is still open comes back by itself, through the door again, so that a session's end is noticed. */
    private static final Duration SITTING = Duration.ofMinutes(5);

    private static final Duration LOOK = Duration.ofSeconds(1);
    private static final int LOOKS_FOR_A_SIGN = 20;
    private static final Logger LOG = LoggerFactory.getLogger(Watching.class);

    private final LogLines log;
    private final List<SseEmitter> pages = new CopyOnWriteArrayList<>();
    private final Bell bell = new Bell();
    private final Worker worker = new Worker("pages");

    Watching(LogLines log) {
        this.log = log;
    }

    /**
     * @throws Problem 503 when too many look, or while the gateway stops, which would wait for them
     */
    SseEmitter join() {
        if (!worker.running() || pages.size() >= MOST) {
            throw Problem.later(HttpStatus.SERVICE_UNAVAILABLE, "no more pages are told of news now", SITTING);
        }
        var page = new SseEmitter(SITTING.toMillis());
        page.onCompletion(() -> pages.remove(page));
        page.onTimeout(page::complete);
        page.onError(thrown -> pages.remove(page));
        pages.add(page);
        bell.ring();
        return page;
    }

    int open() {
        return pages.size();
    }

    @Override
    public void start() {
        worker.start(this::run);
    }

    @Override
    public void stop() {
        worker.stop(bell::ring);
        pages.forEach(SseEmitter::complete);
        pages.clear();
    }

    @Override
    public boolean isRunning() {
        return worker.running();
    }

    private void run() {
        long seen = -1;
        int quiet = 0;
        while (worker.running()) {
            worker.beat();
            try {
                if (!pages.isEmpty()) {
                    long last = log.last().map(LogLine::line).orElse(0L);
                    quiet = last == seen ? quiet + 1 : 0;
                    tell(last, seen >= 0 && last != seen, quiet % LOOKS_FOR_A_SIGN == LOOKS_FOR_A_SIGN - 1);
                    seen = last;
                }
            } catch (RuntimeException | Error e) {
                LOG.warn("open pages are not told what changes: {}", e.toString());
            }
            sleep();
        }
    }

    /** A sign that nothing has changed keeps the connection open on a mobile network, and finds those that are gone. */
    private void tell(long line, boolean changed, boolean sign) {
        if (changed || sign) {
            pages.forEach(page -> send(page, line, changed));
        }
    }

    private void send(SseEmitter page, long line, boolean changed) {
        try {
            page.send(
                    changed
                            ? SseEmitter.event().name("changed").data(line)
                            : SseEmitter.event().comment("still here"));
        } catch (IOException | IllegalStateException gone) {
            pages.remove(page);
        }
    }

    private void sleep() {
        try {
            bell.await(LOOK);
        } catch (InterruptedException e) {
            worker.end();
        }
    }
}
