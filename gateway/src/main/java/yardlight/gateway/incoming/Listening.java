package yardlight.gateway.incoming;

import java.util.List;
import org.springframework.context.SmartLifecycle;
import yardlight.channels.Inbox;
import yardlight.channels.Receiver;

/** Has the receivers listen once everything is there that takes in what they bring. */
final class Listening implements SmartLifecycle {

    private static final int PHASE = 400;

    private final List<Receiver> receivers;
    private final Inbox inbox;
    private boolean running;

    Listening(List<Receiver> receivers, Inbox inbox) {
        this.receivers = List.copyOf(receivers);
        this.inbox = inbox;
    }

    @Override
    public synchronized void start() {
        receivers.forEach(receiver -> receiver.listen(inbox));
        running = true;
    }

    @Override
    public synchronized void stop() {
        running = false;
    }

    @Override
    public synchronized boolean isRunning() {
        return running;
    }

    @Override
    public int getPhase() {
        return PHASE;
    }
}
