package yardlight.escalation;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.proof.AllsWell;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;

/** One stimulus after the other at the fixtures' operator, each when the test says: nothing happens by itself. */
final class Play {

    final Picture picture;
    final List<String> log = new ArrayList<>();
    private final Escalator escalator;
    private int code = 47;

    Play(Setup setup) {
        this(setup, Links.NONE);
    }

    Play(Setup setup, Links links) {
        picture = new Picture(setup);
        escalator = new Escalator(links, () -> code++);
    }

    Answer at(String local, Stimulus stimulus) {
        return at(Fixtures.at(local), stimulus);
    }

    Answer at(Instant now, Stimulus stimulus) {
        Decision decision = escalator.decide(picture, stimulus, now);
        if (stimulus instanceof Stimulus.SetupChanged changed) {
            picture.setup(changed.setup());
        }
        picture.apply(decision.changes());
        decision.entries().forEach(entry -> log.add(entry.words()));
        return decision.answer();
    }

    /** Another setup, at this time. */
    Play setup(String local, Setup setup) {
        at(local, new Stimulus.SetupChanged(setup, "owner"));
        return this;
    }

    Answer fate(String local, Notice notice, Stimulus.Fate fate) {
        return at(local, new Stimulus.NoticeFate(notice.id(), notice.line(), fate, "in the carrier's words"));
    }

    /** The notice that was made last. */
    Notice last() {
        List<Notice> all = picture.notices();
        return all.get(all.size() - 1);
    }

    /** A line of a contact, as it stands in the setup. */
    LineHealth line(String contact, int place) {
        var line = picture.setup().line(contact, place).orElseThrow();
        return picture.health(new LineHealth.Key(contact, line.channel(), line.address()));
    }

    Optional<Instant> next(String contact) {
        return picture.desk(contact).allsWell().map(one -> one.at());
    }

    /** The fixtures' setup in which Ana, never quiet unless she was, is told that all is well. */
    static Setup told(AllsWell schedule, Language language, boolean heartbeats) {
        Contact ana = Fixtures.ana();
        var told = new Contact(
                "ana",
                ana.name(),
                ana.zone(),
                language,
                ana.lines(),
                ana.quiet(),
                ana.textsPerHour(),
                Optional.of(schedule));
        return with(told, heartbeats);
    }

    static Setup with(Contact ana, boolean heartbeats) {
        Box box = Fixtures.aBox();
        var quiet = new Box(box.id(), box.site(), box.feed(), box.link(), box.battery(), Optional.empty(), box.grace());
        return new Setup(
                List.of(Fixtures.aSite()),
                List.of(heartbeats ? box : quiet),
                List.of(Fixtures.waterTank(), Fixtures.injectionPump()),
                List.of(ana, Fixtures.ben()),
                List.of(Fixtures.crew()),
                List.of(Fixtures.night()));
    }
}
