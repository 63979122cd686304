package yardlight.escalation;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.rehearsal.Happening;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Stop;

/** What must hold of lines that somebody stopped, on every night. */
final class StopPromises {

    private final Setup setup;
    private final Set<AlarmKey> stops = new HashSet<>();
    private final Map<String, Callout> callouts = new HashMap<>();

    private StopPromises(Setup setup) {
        this.setup = setup;
    }

    static void hold(RandomNight night) {
        var promises = new StopPromises(night.setup());
        night.happenings().forEach(promises::step);
        promises.end(night.simulation().picture());
    }

    private void step(Happening step) {
        if (step.stimulus() instanceof Stimulus.Stopped said) {
            AlarmKey key = Stop.key(said.contact(), said.address());
            boolean news = said.stopped() ? stops.add(key) : stops.remove(key);
            boolean logged = step.decision().entries().stream().anyMatch(entry -> entry.what() == Entry.What.LINE);
            holds(news == logged, "who stops a line is in the log", step);
        }
        for (Notice notice : step.decision().changes().notices()) {
            boolean unsent = notice.state() == NoticeState.QUEUED;
            holds(!unsent || !stopped(notice), "nothing more goes to a line that was stopped", notice);
            holds(
                    !unsent && notice.state() != NoticeState.HELD || !nobody(notice.contact()),
                    "nothing waits for somebody whom no line reaches",
                    notice);
        }
        step.decision().changes().callouts().forEach(callout -> callouts.put(callout.id(), callout));
        callouts.values().removeIf(callout -> !callout.live());
        for (Callout callout : callouts.values()) {
            boolean somebody = callout.facts().told().stream().anyMatch(contact -> !nobody(contact))
                    || callout.facts().held().keySet().stream().anyMatch(contact -> !nobody(contact));
            holds(somebody, "no callout waits for nobody", callout);
        }
    }

    /** A stop that holds is on the board, for whoever looks. */
    private void end(Picture picture) {
        for (AlarmKey key : stops) {
            holds(picture.alarm(key).active() && picture.alarm(key).live(), "a stopped line is an alarm", key);
        }
    }

    private boolean stopped(Notice notice) {
        return setup.line(notice.contact(), notice.line())
                .filter(line -> stops.contains(Stop.key(notice.contact(), line.address())))
                .isPresent();
    }

    private boolean nobody(String id) {
        Contact contact = setup.contacts().get(id);
        return Stop.everywhere(contact, stops);
    }

    private static void holds(boolean promise, String name, Object what) {
        if (!promise) {
            throw new AssertionError(name + ": " + what);
        }
    }
}
