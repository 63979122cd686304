package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.shutin.Asker;
import yardlight.escalation.shutin.Request;
import yardlight.escalation.shutin.RequestTrigger;
import yardlight.escalation.shutin.Terms;

/** The fixtures' operator, who has turned it on that Mesa 9 may be asked to shut in: one stimulus after the other. */
final class ShutInNight {

    static final AlarmKey DONE = new AlarmKey("mesa-9", "shut-in", "done");
    static final AlarmKey REFUSED = new AlarmKey("mesa-9", "shut-in", "refused");
    static final Terms BY_BOX = Terms.usual(Terms.Way.BOX, "mesa-9-box");
    static final Terms BY_RELAY = Terms.usual(Terms.Way.RELAY, "valve");

    final Play play;

    private ShutInNight(Setup setup) {
        play = new Play(setup);
    }

    /** Turned on at two in the night. */
    static ShutInNight on(Terms terms) {
        var night = new ShutInNight(setup(terms));
        night.say("2026-11-28T02:00", new ShutInSaid.TurnedOn(terms.words(), "owner"));
        return night;
    }

    static ShutInNight off(Terms terms) {
        return new ShutInNight(setup(terms));
    }

    /** Ben is called first, then the site is asked, then everybody is called. */
    static Setup setup(Terms terms) {
        Setup usual = Fixtures.theSetup();
        var ladder = new Ladder(
                "night",
                Ladder.EndsWhen.ACKNOWLEDGED,
                List.of(
                        new Rung(List.of("ben"), Duration.ofMinutes(5), 1),
                        Rung.asking(Duration.ofMinutes(5)),
                        new Rung(List.of(Rung.EVERYONE), Duration.ofMinutes(15), 1)),
                0);
        return new Setup(
                List.of(Fixtures.aSite().withShutIn(terms)),
                List.of(Fixtures.aBox()),
                usual.points(),
                List.copyOf(usual.contacts().values()),
                List.copyOf(usual.rosters().values()),
                List.of(ladder));
    }

    Answer say(String local, ShutInSaid said) {
        return play.at(local, new Stimulus.ShutIn("mesa-9", said));
    }

    Answer ask(String local) {
        return say(local, new ShutInSaid.Asked(new Asker(Asker.Kind.PAGE, "ana")));
    }

    Answer beat(String local) {
        return play.at(
                local,
                new Stimulus.Beat(
                        "mesa-9-box",
                        new Heartbeat(
                                Optional.empty(), Map.of(), Optional.empty(), Optional.empty(), Optional.empty())));
    }

    Answer.Result event(String local, AlarmKey key, Optional<String> request) {
        return event(local, key, Fixtures.at(local), request);
    }

    Answer.Result event(String local, AlarmKey key, Instant at, Optional<String> request) {
        var report =
                new Report(key, Optional.of("mesa-9-box"), true, Optional.empty(), Measured.NOTHING, at, true, request);
        return ((Answer.Results) play.at(local, new Stimulus.Reported("mesa-9-box", List.of(report))))
                .results()
                .get(0);
    }

    /** As the gateway's clock work would: only if it is due by then. */
    void due(String local) {
        boolean due = play.picture
                .standing("mesa-9")
                .dueAt()
                .filter(at -> !at.isAfter(Fixtures.at(local)))
                .isPresent();
        if (due) {
            say(local, new ShutInSaid.Due());
        }
    }

    Answer send(String local) {
        return say(local, new ShutInSaid.Try(request().id()));
    }

    void sent(String local, RequestTrigger outcome) {
        say(local, new ShutInSaid.Tried(request().id(), outcome, "in the relay's words"));
    }

    Request request() {
        return play.picture.standing("mesa-9").request().orElseThrow();
    }

    /** What people were told of it, in order. */
    List<String> told() {
        return play.picture.notices().stream()
                .filter(notice -> notice.purpose() == Purpose.SHUT_IN)
                .map(Notice::text)
                .toList();
    }

    boolean loud() {
        return play.picture.alarm(ShutInAlarm.at("mesa-9")).active();
    }
}
