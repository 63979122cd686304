package yardlight.channels.modem;

import java.time.Duration;
import java.time.InstantSource;
import java.util.Optional;
import yardlight.channels.Attempt;
import yardlight.channels.Health;
import yardlight.channels.Inbox;
import yardlight.channels.Message;

/** One modem, as those see it who want something sent. */
final class Modem {

    /** Answers that a text can wait for beside that of the network: its mode, three about the network, its announcement. */
    private static final int ANSWERS = 6;

    /** A gateway that stops is given no more than this by its supervisor, for everything. */
    private static final Duration LONGEST_END = Duration.ofSeconds(15);

    private final ModemSettings settings;
    private final Outgoing outgoing;
    private final Storage storage;
    private final Keeper keeper;
    private volatile Optional<Trial> last = Optional.empty();

    /**
     * How the last try ended.
     *
     * @param why nothing gets out; empty if it does
     * @param at in the time of {@link System#nanoTime()}
     */
    private record Trial(Optional<String> why, long at) {

        static Trial now(Optional<String> why) {
            return new Trial(why, System.nanoTime());
        }
    }

    Modem(ModemSettings settings, InstantSource clock) {
        this.settings = settings;
        var references = new References(settings.validity());
        this.outgoing = new Outgoing(settings, references, clock);
        this.storage = new Storage(
                new Arrivals(settings.number(), references, clock),
                settings.timeouts().network());
        this.keeper = new Keeper(settings, storage);
    }

    void listen(Inbox inbox) {
        storage.listen(inbox);
        keeper.start();
    }

    Attempt send(Message message) {
        Duration whole = settings.timeouts().whole();
        long end = System.nanoTime() + whole.toNanos();
        var job = new Job<Attempt>(dialogue -> send(message, dialogue, end));
        Attempt attempt;
        try {
            keeper.ask(job);
            attempt = job.await(whole, longest())
                    .orElseGet(() -> Attempt.unknown("begun, but not confirmed").forEveryMessage());
        } catch (NotReady e) {
            attempt = Attempt.deferred(e.getMessage());
        } catch (Gone e) {
            attempt = Attempt.deferred(e.getMessage()).forEveryMessage();
        }
        last = Optional.of(Trial.now(attempt.general() ? Optional.of(attempt.detail()) : Optional.empty()));
        return attempt;
    }

    private Attempt send(Message message, Dialogue dialogue, long end) throws Gone {
        Optional<String> complaint = keeper.look(dialogue).complaint();
        return complaint.isPresent()
                ? Attempt.deferred(complaint.get()).forEveryMessage()
                : outgoing.send(message, dialogue, end);
    }

    Optional<String> knock() {
        keeper.hurry();
        var job = new Job<Optional<String>>(dialogue -> keeper.look(dialogue).complaint());
        Optional<String> why;
        try {
            keeper.ask(job);
            why = job.await(settings.timeouts().whole(), longest())
                    .orElse(Optional.of("the modem does not say in time how it stands"));
        } catch (Gone | NotReady e) {
            why = Optional.of(e.getMessage());
        }
        last = Optional.of(Trial.now(why));
        return why;
    }

    /** The longest that one thing can take once it has begun. */
    private Duration longest() {
        return settings.timeouts().network().plus(settings.timeouts().answer().multipliedBy(ANSWERS));
    }

    Health health() {
        // What was before the modem came back says nothing any more.
        Optional<String> complaint = keeper.complaint()
                .or(() -> last.filter(trial -> trial.at() - keeper.readySince() > 0)
                        .flatMap(Trial::why));
        if (complaint.isPresent()) {
            return new Health(Health.State.TROUBLED, "texts wait: " + complaint.get());
        }
        String signal = keeper.standing().signal();
        String heard = signal.isEmpty() ? "" : ": " + signal;
        return new Health(Health.State.READY, "texts go out through the modem at " + settings.port() + heard);
    }

    void close() {
        keeper.close(longest().compareTo(LONGEST_END) < 0 ? longest() : LONGEST_END);
    }
}
