package yardlight.demo.night;

import java.net.URI;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import yardlight.demo.gateway.GatewayClock;
import yardlight.demo.phone.Browser;
import yardlight.demo.phone.Phones;
import yardlight.demo.phone.Text;

/** The people of the night: they sleep through a text or open its link after a while, as the script has it. */
final class Sleepers implements AutoCloseable {

    private final ZoneId zone;
    private final GatewayClock clock;
    private final Timeline timeline;
    private final List<NightRecord.Answer> answers = new ArrayList<>();
    private final ScheduledExecutorService fingers = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "sleepers");
        thread.setDaemon(true);
        return thread;
    });

    Sleepers(ZoneId zone, GatewayClock clock, Timeline timeline) {
        this.zone = zone;
        this.clock = clock;
        this.timeline = timeline;
    }

    /** From now on they hear their phones. */
    void listen(Phones phones) {
        phones.onArrival(this::hear);
    }

    private void hear(Text text) {
        timeline.add(text.at(), owner(text) + (text.path() == Text.Path.PHONE ? " phone" : " mail"), text.body());
        if (fingers.isShutdown()) {
            return; // the night is over: whoever plays has the phones
        }
        if (!text.calls()) {
            return;
        }
        NightScript.answersAt(text.person().id(), text.at(), zone).ifPresent(at -> {
            Duration wait = clock.real(Duration.between(clock.instant(), at));
            fingers.schedule(() -> answer(text), Math.max(0, wait.toNanos()), TimeUnit.NANOSECONDS);
        });
    }

    private static String owner(Text text) {
        return text.person().firstName() + "'s";
    }

    private void answer(Text text) {
        Instant now = clock.instant();
        String who = text.person().firstName();
        Optional<URI> link = text.link();
        if (link.isEmpty()) {
            timeline.add(now, who, "would answer, but the text has no link");
            return;
        }
        try {
            Optional<String> trouble = Browser.answer(link.get());
            if (trouble.isEmpty()) {
                keep(new NightRecord.Answer(text, now));
            }
            timeline.add(
                    now, who, "opens the link" + trouble.map(why -> ": " + why).orElse(" and presses the button"));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private synchronized void keep(NightRecord.Answer answer) {
        answers.add(answer);
    }

    /** What was answered so far, by button. */
    synchronized List<NightRecord.Answer> answers() {
        return List.copyOf(answers);
    }

    @Override
    public void close() {
        fingers.shutdownNow();
    }
}
