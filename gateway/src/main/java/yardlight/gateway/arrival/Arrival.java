package yardlight.gateway.arrival;

import jakarta.servlet.AsyncContext;
import jakarta.servlet.AsyncEvent;
import jakarta.servlet.AsyncListener;
import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.concurrent.atomic.AtomicBoolean;
import org.springframework.http.HttpHeaders;

/** One body on its way. The container calls whenever a part of it has come. */
final class Arrival implements ReadListener, AsyncListener {

    private static final int PART = 8192;

    private final Arrivals all;
    private final HttpServletRequest request;
    private final HttpServletResponse response;
    private final ServletInputStream in;
    private final Parcel parcel;
    private AsyncContext waiting;
    private final AtomicBoolean over = new AtomicBoolean();
    private volatile boolean givenUp;

    Arrival(Arrivals all, HttpServletRequest request, HttpServletResponse response) throws IOException {
        this.all = all;
        this.request = request;
        this.response = response;
        this.in = request.getInputStream();
        this.parcel = new Parcel(all.room(), all.most());
    }

    /**
     * Takes what is there without waiting for more, and says whether that is all. Of a body in chunks nobody knows: even a
     * part that is there may end in the middle of a chunk's head.
     */
    boolean here() throws IOException {
        long length = request.getContentLengthLong();
        if (length < 0) {
            return false;
        }
        byte[] part = new byte[(int) Math.min(PART, length)];
        while (parcel.seen() < length && in.available() > 0) {
            parcel.add(part, in.read(part));
        }
        return parcel.seen() == length && parcel.fate() == Parcel.Fate.KEPT;
    }

    /** Waits for the rest, not in this thread. */
    void await() {
        waiting = request.startAsync(request, response);
        waiting.setTimeout(all.within().toMillis());
        waiting.addListener(this);
        in.setReadListener(this);
        all.places().enter(this);
    }

    /** It has taken too long while others wait; for any thread to say. */
    void giveUp() {
        goOn(true);
    }

    /** Whether nobody waits for the rest of it. */
    boolean givenUp() {
        return givenUp;
    }

    /** Once only, however many find at the same time that the waiting is over. The container does it in a thread of its own. */
    private void goOn(boolean withoutTheRest) {
        if (over.compareAndSet(false, true)) {
            givenUp = withoutTheRest;
            waiting.dispatch();
        }
    }

    byte[] bytes() {
        return parcel.bytes();
    }

    void close() {
        all.places().leave(this);
        parcel.close();
    }

    @Override
    public void onDataAvailable() throws IOException {
        byte[] part = new byte[PART];
        while (in.isReady() && !in.isFinished()) {
            int count = in.read(part);
            if (count < 0) {
                return;
            }
            parcel.add(part, count);
            if (parcel.endless()) {
                response.setHeader(HttpHeaders.CONNECTION, "close");
                refuse();
                return;
            }
        }
    }

    /** From here on it is a request as any other, see {@link ArrivalFilter}. */
    @Override
    public void onAllDataRead() throws IOException {
        all.places().leave(this);
        if (parcel.fate() == Parcel.Fate.KEPT) {
            goOn(false);
        } else {
            refuse();
        }
    }

    private void refuse() throws IOException {
        if (over.compareAndSet(false, true)) {
            all.refuse(parcel.fate(), request, response);
            waiting.complete();
        }
    }

    /** It took too long, drop by drop. */
    @Override
    public void onTimeout(AsyncEvent event) throws IOException {
        if (over.compareAndSet(false, true)) {
            all.tooSlow(request, response);
            waiting.complete();
        }
    }

    /** The connection broke, or stood still for too long. */
    @Override
    public void onError(Throwable broken) {
        close();
    }

    @Override
    public void onError(AsyncEvent event) throws IOException {
        onTimeout(event);
    }

    @Override
    public void onComplete(AsyncEvent event) {
        close();
    }

    @Override
    public void onStartAsync(AsyncEvent event) {
        // Whoever comes behind may have reasons of their own to wait.
    }
}
