package yardlight.channels.smpp;

import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import javax.net.ssl.SSLSocketFactory;
import yardlight.channels.Attempt;
import yardlight.channels.Attempt.Outcome;
import yardlight.channels.Inbox;
import yardlight.channels.Message;

/** One message centre: a window of texts on their way to it, and all that is held open for it. */
final class Centre {

    private final SmppSettings settings;
    private final Semaphore window;
    private final ScheduledThreadPoolExecutor timer;
    private final References references = new References();
    private final Arrivals arrivals;
    private final Link link;
    private volatile boolean closed;
    private volatile Optional<String> trouble = Optional.empty();

    Centre(SmppSettings settings, InstantSource clock, Supplier<SSLSocketFactory> tls) {
        this.settings = settings;
        this.window = new Semaphore(settings.window(), true);
        // Two: one may be asking the centre whether it is there while the other ends what takes too long.
        this.timer = new ScheduledThreadPoolExecutor(2, work -> {
            Thread thread = new Thread(work, "smpp-timer");
            thread.setDaemon(true);
            return thread;
        });
        timer.setRemoveOnCancelPolicy(true);
        this.arrivals = new Arrivals(references, new IncomingTexts(settings.from(), clock, timer), clock);
        this.link = new Link(settings, tls, arrivals, timer);
    }

    String server() {
        return settings.server();
    }

    /** Why nothing gets out, as far as the last try told; empty if it did. */
    Optional<String> trouble() {
        return link.failure().or(() -> trouble);
    }

    void listen(Inbox inbox) {
        arrivals.listen(inbox);
        link.start();
    }

    Attempt send(Message message) {
        long whole = settings.timeouts().whole().toNanos();
        long end = System.nanoTime() + whole;
        try {
            if (!window.tryAcquire(whole, TimeUnit.NANOSECONDS)) {
                return Attempt.deferred("all " + settings.window() + " texts of the window are under way");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Attempt.deferred("interrupted before it was sent");
        }
        try {
            Attempt attempt = closed ? Attempt.deferred("the channel is closed") : submit(message, end);
            trouble = attempt.general() ? Optional.of(attempt.detail()) : Optional.empty();
            return attempt;
        } finally {
            window.release();
        }
    }

    Optional<String> knock() {
        if (closed) {
            return Optional.of("the channel is closed");
        }
        trouble = link.knock(System.nanoTime() + settings.timeouts().whole().toNanos());
        return trouble;
    }

    /** All parts one after the other. The first that is not taken decides. */
    private Attempt submit(Message message, long end) {
        List<String> names = new ArrayList<>();
        Attempt attempt = Attempt.deferred("there is nothing to send");
        for (Submission part : Submission.of(message, settings.from())) {
            attempt = submit(part, end);
            if (attempt.outcome() != Outcome.ACCEPTED) {
                return attempt;
            }
            attempt.reference().ifPresent(names::add);
        }
        attempt.reference().ifPresent(text -> names.forEach(part -> references.taken(part, text)));
        return attempt;
    }

    private Attempt submit(Submission part, long end) {
        try {
            byte[] answer = link.session(end).ask("submit_sm", part::unit);
            return Status.of(Answer.in(answer));
        } catch (Unsent e) {
            return Attempt.deferred(e.getMessage()).forEveryMessage();
        } catch (Unanswered e) {
            return Attempt.unknown("sent, but not confirmed: " + e.getMessage()).forEveryMessage();
        }
    }

    /** What is under way is finished, as far as its answers come in time. */
    void close() {
        if (closed) {
            return;
        }
        closed = true;
        long response = settings.timeouts().response().toMillis();
        boolean done = false;
        try {
            done = window.tryAcquire(settings.window(), response, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        arrivals.close(response);
        link.close();
        timer.shutdown();
        if (done) {
            window.release(settings.window());
        }
    }
}
