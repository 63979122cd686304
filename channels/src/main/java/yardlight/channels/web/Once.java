package yardlight.channels.web;

import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.ByteBuffer;
import java.util.concurrent.Flow.Subscriber;
import java.util.concurrent.Flow.Subscription;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * A body that can be sent once, and that knows whether it was.
 *
 * <p>The JDK's client sends a GET again by itself when the connection ends without an answer, and there is no setting
 * against it but one for the whole process. It asks for the length when it writes the header, after it has connected: so a
 * second question is a second sending, and is not answered.
 */
final class Once implements BodyPublisher {

    private final byte[] body;
    private final AtomicBoolean begun = new AtomicBoolean();
    private volatile boolean handedOver;

    Once(byte[] body) {
        this.body = body;
    }

    /** Whether the last byte has left us for the connection. Without a body: whether the header may have. */
    boolean sent() {
        return body.length == 0 ? begun.get() : handedOver;
    }

    @Override
    public long contentLength() {
        if (begun.getAndSet(true)) {
            throw new IllegalStateException("a message is sent once");
        }
        return body.length;
    }

    @Override
    public void subscribe(Subscriber<? super ByteBuffer> connection) {
        BodyPublishers.ofByteArray(body).subscribe(new Subscriber<>() {

            private long left = body.length;

            @Override
            public void onSubscribe(Subscription subscription) {
                connection.onSubscribe(subscription);
            }

            @Override
            public void onNext(ByteBuffer part) {
                left -= part.remaining();
                // Before it goes: from here on it is out of our hands.
                handedOver = left <= 0;
                connection.onNext(part);
            }

            @Override
            public void onError(Throwable trouble) {
                connection.onError(trouble);
            }

            @Override
            public void onComplete() {
                connection.onComplete();
            }
        });
    }
}
