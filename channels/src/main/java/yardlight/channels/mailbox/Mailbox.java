package yardlight.channels.mailbox;

import jakarta.mail.AuthenticationFailedException;
import jakarta.mail.MessagingException;
import java.io.IOException;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.channels.Health;
import yardlight.channels.Inbox;
import yardlight.channels.Receiver;
import yardlight.channels.mail.MailNames;

/**
 * Hears what comes into a mailbox, on a thread of its own: at once where the server says that something has come (IDLE), and
 * in any case each time that {@link MailboxSettings#poll} is over. When the server is away it waits and tries again, longer and
 * longer, for ever.
 *
 * <p>Answers come by the name of the line's channel, {@code mail} or {@code sms-mail}; reports of mail servers by that of the
 * channel that had handed the mail over.
 */
public final class Mailbox implements Receiver {

    static final String NAME = "mailbox";

    private static final Logger LOG = LoggerFactory.getLogger(Mailbox.class);

    private static final String NOT_CONFIGURED = "no mailbox is set up: what is answered by mail is not heard";
    private static final Duration FIRST_PAUSE = Duration.ofMillis(500);
    private static final Duration LONGEST_PAUSE = Duration.ofMinutes(1);
    /** A session that ended before it was as old says nothing for the next one. */
    private static final Duration STEADY = Duration.ofSeconds(10);
    /** The first wait after something has come; each after it is twice as long as the one before. */
    private static final Duration FIRST_WAIT = Duration.ofSeconds(1);
    /** Until it is asked again. */
    private static final Duration NOT_OUR_TURN = Duration.ofSeconds(2);
    /** Servers lock who comes with a wrong password again and again. */
    private static final Duration AFTER_WRONG_LOGIN = Duration.ofMinutes(5);

    private final Optional<Open> open;

    private Mailbox(Optional<Open> open) {
        this.open = open;
    }

    /**
     * @param names those that our mails have
     * @param turn of several gateways one reads
     */
    public static Mailbox of(
            MailboxSettings settings, MailNames names, KnownLines lines, InstantSource clock, Turn turn) {
        return new Mailbox(Optional.of(new Open(settings, new Handing(settings, names, lines), clock, turn)));
    }

    /** Hears nothing. */
    public static Mailbox notSetUp() {
        return new Mailbox(Optional.empty());
    }

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public void listen(Inbox inbox) {
        open.ifPresent(one -> one.start(inbox));
    }

    @Override
    public Health health() {
        return open.map(Open::health).orElse(new Health(Health.State.NOT_CONFIGURED, NOT_CONFIGURED));
    }

    @Override
    public void close() {
        open.ifPresent(Open::close);
    }

    /** One that is set up. */
    private static final class Open {

        private final MailboxSettings settings;
        private final Turn turn;
        private final Round round;
        private final ScheduledThreadPoolExecutor timer;
        private volatile Optional<String> trouble = Optional.empty();
        private volatile boolean closed;
        private volatile Optional<Visit> visit = Optional.empty();

        Open(MailboxSettings settings, Handing handing, InstantSource clock, Turn turn) {
            this.settings = settings;
            this.turn = turn;
            this.round = new Round(handing, clock, () -> closed);
            // Two: one may wait for the folder while the other ends that wait.
            this.timer = new ScheduledThreadPoolExecutor(2, work -> thread(work, "mailbox-limits"));
            timer.setRemoveOnCancelPolicy(true);
            timer.setKeepAliveTime(1, TimeUnit.MINUTES);
        }

        void start(Inbox inbox) {
            thread(() -> keep(inbox), "mailbox").start();
        }

        Health health() {
            return trouble.map(why -> new Health(Health.State.TROUBLED, "answers by mail are not heard: " + why))
                    .orElseGet(
                            () -> new Health(Health.State.READY, "answers by mail are heard at " + settings.server()));
        }

        void close() {
            synchronized (this) {
                closed = true;
                notifyAll();
            }
            visit.ifPresent(Visit::cut);
            timer.shutdown();
        }

        private void keep(Inbox inbox) {
            Duration pause = Duration.ZERO;
            while (rest(pause)) {
                if (!mine()) {
                    // Whoever reads now says how that goes.
                    trouble = Optional.empty();
                    pause = NOT_OUR_TURN;
                    continue;
                }
                long since = System.nanoTime();
                var now = new Visit(settings, timer);
                visit = Optional.of(now);
                Duration longest = visit(now, inbox);
                boolean steady = System.nanoTime() - since > STEADY.toNanos();
                pause = longest.compareTo(LONGEST_PAUSE) > 0 ? longest : steady ? FIRST_PAUSE : longer(pause);
                if (trouble.isPresent()) {
                    turn.leave();
                }
            }
        }

        private boolean mine() {
            try {
                return turn.mine();
            } catch (RuntimeException e) {
                LOG.warn("whose turn it is to read mail is not known now: {}", e.toString());
                return false;
            }
        }

        /** Until it ends. How long to stay away at the most. */
        private Duration visit(Visit now, Inbox inbox) {
            try {
                now.open();
                trouble = Optional.empty();
                LOG.info("mail is read at {}", settings.server());
                stay(now, inbox);
            } catch (AuthenticationFailedException e) {
                lost("the login was not taken: " + e.getMessage());
                return settings.login().tokens().isPresent() ? LONGEST_PAUSE : AFTER_WRONG_LOGIN;
            } catch (MessagingException | IOException | RuntimeException e) {
                lost(Trouble.words(e, now.isCut(), settings));
            } catch (Error mistake) {
                LOG.error("reading mail goes on; if this is seen again, restart the gateway", mistake);
            } finally {
                now.leave();
            }
            return LONGEST_PAUSE;
        }

        /**
         * A server may say nothing of what comes between our last look and the wait for its word. So the wait after a mail is
         * short, and what came with the next one is not late by more than the time since.
         */
        private void stay(Visit now, Inbox inbox) throws MessagingException, IOException {
            boolean waits = now.canWait();
            Duration wait = FIRST_WAIT;
            int known = 0;
            while (!closed && mine()) {
                int before = now.count();
                boolean all = round.go(now, inbox);
                boolean more = now.count() != before;
                wait = before == known ? wait : FIRST_WAIT;
                known = before;
                if (!all) {
                    rest(shorter(settings.poll(), LONGEST_PAUSE));
                } else if (!more && waits) {
                    now.await(shorter(settings.poll(), wait));
                    wait = shorter(settings.poll(), wait.multipliedBy(2));
                } else if (!more) {
                    rest(settings.poll());
                }
            }
        }

        private void lost(String why) {
            if (!closed) {
                trouble = Optional.of(settings.server() + ": " + why);
                LOG.warn("mail is not read at {}: {}", settings.server(), why);
            }
        }

        private static Duration longer(Duration pause) {
            return shorter(pause.isZero() ? FIRST_PAUSE : pause.multipliedBy(2), LONGEST_PAUSE);
        }

        private static Duration shorter(Duration one, Duration other) {
            return one.compareTo(other) < 0 ? one : other;
        }

        /** Whether to go on. */
        private synchronized boolean rest(Duration length) {
            long end = System.nanoTime() + length.toNanos();
            try {
                for (long left = length.toNanos(); !closed && left > 0; left = end - System.nanoTime()) {
                    TimeUnit.NANOSECONDS.timedWait(this, Math.max(left, 1_000_000));
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return false;
            }
            return !closed;
        }

        private static Thread thread(Runnable work, String name) {
            var thread = new Thread(work, name);
            thread.setDaemon(true);
            return thread;
        }
    }
}
