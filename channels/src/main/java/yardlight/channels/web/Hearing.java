package yardlight.channels.web;

import java.io.ByteArrayOutputStream;
import java.net.http.HttpResponse.BodyHandler;
import java.net.http.HttpResponse.BodySubscriber;
import java.net.http.HttpResponse.ResponseInfo;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.Flow.Subscription;

/** Keeps what is heard of an answer while it comes in, so that a header counts although its body never ends. */
final class Hearing implements BodyHandler<Void>, BodySubscriber<Void> {

    private final int most;
    private final ByteArrayOutputStream body = new ByteArrayOutputStream();
    private final CompletableFuture<Void> over = new CompletableFuture<>();
    private Subscription source;
    private ResponseInfo head;
    private boolean whole;

    Hearing(int most) {
        this.most = most;
    }

    /** As far as it came; empty before the header was complete. */
    synchronized Optional<Reply.Answer> answer() {
        return Optional.ofNullable(head)
                .map(heard -> new Reply.Answer(heard.statusCode(), heard.headers(), body.toByteArray(), whole));
    }

    @Override
    public synchronized BodySubscriber<Void> apply(ResponseInfo heard) {
        head = heard;
        return this;
    }

    @Override
    public CompletionStage<Void> getBody() {
        return over;
    }

    @Override
    public synchronized void onSubscribe(Subscription subscription) {
        source = subscription;
        source.request(Long.MAX_VALUE);
    }

    @Override
    public void onNext(List<ByteBuffer> parts) {
        if (!takes(parts)) {
            source.cancel();
            over.complete(null);
        }
    }

    private synchronized boolean takes(List<ByteBuffer> parts) {
        for (ByteBuffer part : parts) {
            byte[] some = new byte[Math.min(part.remaining(), most - body.size())];
            part.get(some);
            body.writeBytes(some);
            if (part.hasRemaining()) {
                return false;
            }
        }
        return true;
    }

    @Override
    public void onError(Throwable trouble) {
        over.completeExceptionally(trouble);
    }

    @Override
    public void onComplete() {
        synchronized (this) {
            whole = true;
        }
        over.complete(null);
    }
}
