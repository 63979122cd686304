package yardlight.gateway.answer;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.Alarms;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.escalation.Entry;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.reply.ReplyReader;
import yardlight.escalation.reply.Said;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.setup.Stop;
import yardlight.escalation.wording.Transliteration;
import yardlight.gateway.incoming.Asked;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.lane.LogBook;
import yardlight.gateway.setup.SetupInForce;

/** Does what a text that came in asks for, and says in one line what was done. Each is a line in the log. */
@Component
class Replies implements Asked {

    private static final int LONGEST_IN_LOG = 300;

    /**
     * @param answer one line for the sender; empty when a machine wrote, which is not answered
     * @param acknowledged ids of the alarms
     */
    record Outcome(String answer, List<String> acknowledged) {

        static Outcome nothing(String answer) {
            return new Outcome(answer, List.of());
        }
    }

    private final Alarms alarms;
    private final SetupInForce inForce;
    private final Lane lane;
    private final LogBook log;
    private final Proving proving;
    private final Clocks clocks;
    private final Shutting shutting;
    private final Swapping swapping;
    private final Doubts doubts;

    Replies(
            Alarms alarms,
            SetupInForce inForce,
            Lane lane,
            LogBook log,
            Proving proving,
            Clocks clocks,
            Shutting shutting,
            Swapping swapping) {
        this.swapping = swapping;
        this.shutting = shutting;
        this.proving = proving;
        this.alarms = alarms;
        this.inForce = inForce;
        this.lane = lane;
        this.log = log;
        this.clocks = clocks;
        this.doubts = new Doubts(clocks::now);
    }

    @Override
    public String answer(String from, String text, boolean proven) {
        Sender sender = new Sender(from);
        return proven ? take(sender, text).answer() : doubt(sender, text).answer();
    }

    /** The one that confirms a stop is the last. */
    @Override
    public boolean welcome(String from, String text) {
        var sender = new Sender(from);
        List<Contact> people = sender.among(inForce.setup());
        if (people.isEmpty() || ReplyReader.read(text) instanceof Said.Stop) {
            return true;
        }
        Set<AlarmKey> stops = Stop.among(alarms.currentAt(Site.GATEWAY));
        return !new Wish(sender, people, stops, Sentences.in(people.get(0).language())).stopped();
    }

    /** Somebody says that they are this sender. */
    private Outcome doubt(Sender sender, String text) {
        List<Contact> people = sender.among(inForce.setup());
        Set<String> ids = people.stream().map(Contact::id).collect(Collectors.toSet());
        if (people.isEmpty()
                || doubts.mayAsk(
                        people,
                        ReplyReader.read(text),
                        Waiting.of(alarms.current()),
                        swapping.asked(ids, clocks.now()))) {
            return take(sender, text);
        }
        Outcome outcome =
                Outcome.nothing(oneLine(Sentences.in(people.get(0).language()).notProven()));
        record(sender, people, text, outcome);
        return outcome;
    }

    /** @param text whatever was written */
    Outcome take(Sender sender, String text) {
        Setup setup = inForce.setup();
        List<Contact> people = sender.among(setup);
        Outcome outcome = people.isEmpty() ? stranger(text) : known(sender, people, ReplyReader.read(text), setup);
        record(sender, people, text, outcome);
        return outcome;
    }

    /** A stranger's machine could answer ours for ever. */
    private static Outcome stranger(String text) {
        boolean machine = ReplyReader.read(text) instanceof Said.Automatic;
        return Outcome.nothing(machine ? "" : Sentences.in(Language.EN).stranger());
    }

    private Outcome known(Sender sender, List<Contact> people, Said said, Setup setup) {
        Contact person = people.get(0);
        Sentences sentences = Sentences.in(person.language());
        Set<String> ids = people.stream().map(Contact::id).collect(Collectors.toSet());
        List<RecordedAlarm> current = alarms.current();
        Set<AlarmKey> stops =
                Stop.among(current.stream().map(RecordedAlarm::alarm).toList());
        var calls = new Calls(Waiting.of(current), stops, ids, person, sentences, setup, clocks);
        var wish = new Wish(sender, people, stops, sentences);
        if (said instanceof Said.Stop) {
            return wish.stop(lane);
        }
        if (said instanceof Said.ShutIn shut && !wish.stopped()) {
            return Outcome.nothing(oneLine(shutting.take(shut, sender, person, calls.waiting(), setup)));
        }
        if (said instanceof Said.Start) {
            return wish.start(lane, calls.waiting());
        }
        Outcome outcome = tested(said, calls, proving.replied(people, sender, said), done(said, calls));
        // Nothing more goes to a line that was stopped, not even this.
        return wish.stopped() ? new Outcome("", outcome.acknowledged()) : outcome;
    }

    /** An answer to a test is answered as such, unless there is more in it. */
    private static Outcome tested(Said said, Calls calls, List<String> works, Outcome outcome) {
        boolean test = said instanceof Said.Ok ok
                && (ok.codes().isEmpty()
                        ? calls.waiting().codesOf(calls.ids()).isEmpty()
                        : ok.codes().stream().allMatch(code -> code <= LineHealth.Test.LAST_CODE));
        return works.isEmpty() || !test
                ? outcome
                : Outcome.nothing(oneLine(calls.sentences().works(works)));
    }

    private Outcome done(Said said, Calls calls) {
        Optional<String> turn = swapping.answer(said, calls);
        if (turn.isPresent()) {
            return Outcome.nothing(oneLine(turn.get()));
        }
        if (said instanceof Said.Ok ok) {
            return calls.ok(ok.codes(), lane);
        }
        if (said instanceof Said.All) {
            return calls.all(lane);
        }
        if (said instanceof Said.Hold hold) {
            return calls.hold(hold, lane);
        }
        return Outcome.nothing(oneLine(told(said, calls, calls.sentences())));
    }

    private static String told(Said said, Calls calls, Sentences sentences) {
        if (said instanceof Said.Status) {
            return calls.status();
        }
        if (said instanceof Said.Who) {
            return calls.calledFirst();
        }
        if (said instanceof Said.Help) {
            return sentences.help();
        }
        return said instanceof Said.Automatic ? "" : sentences.notUnderstood();
    }

    static String oneLine(String text) {
        return OneText.of(Transliteration.gsm(text));
    }

    private void record(Sender sender, List<Contact> people, String text, Outcome outcome) {
        String words = Transliteration.gsm(text);
        String shown = words.length() > LONGEST_IN_LOG ? words.substring(0, LONGEST_IN_LOG) + "..." : words;
        Map<String, String> about =
                people.isEmpty() ? Map.of() : Map.of("contact", people.get(0).id());
        String answered = outcome.answer().isEmpty() ? "not answered" : "answered: " + outcome.answer();
        log.put(new Entry(Entry.What.ANSWER, about, sender + " wrote: " + shown + "; " + answered));
    }
}
