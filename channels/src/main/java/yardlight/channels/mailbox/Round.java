package yardlight.channels.mailbox;

import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.channels.Inbox;

/**
 * Goes through what has not been read, the oldest first. Each mail is marked only after the inbox has taken it. One that
 * cannot be read is left as it is, for a person; one that the inbox does not take comes after the others the next time. So
 * neither keeps those behind it.
 */
final class Round {

    private static final Logger LOG = LoggerFactory.getLogger(Round.class);

    /** What lies there for longer is no answer to anything any more, and may be from before there was a gateway. */
    static final Duration OLDEST = Duration.ofDays(1);

    /** So many that are not taken in a row, and it is not for their sake. */
    private static final int MOST_NOT_TAKEN = 3;

    private static final int MOST_TRIES = 5;
    private static final int MOST_REMEMBERED = 10_000;

    private final Handing handing;
    private final InstantSource clock;
    private final BooleanSupplier closed;
    private final Map<Long, Integer> notTaken = new HashMap<>();
    private final Set<Long> unreadable = new HashSet<>();
    private long validity;

    Round(Handing handing, InstantSource clock, BooleanSupplier closed) {
        this.handing = handing;
        this.clock = clock;
        this.closed = closed;
    }

    /** Whether the inbox took everything; else it is to be tried again soon. */
    boolean go(Visit visit, Inbox inbox) throws MessagingException, IOException {
        forgetOtherFolder(visit);
        Instant oldest = clock.instant().minus(OLDEST);
        List<Visit.Lying> mails = visit.unread().stream()
                .filter(mail -> !mail.at().isBefore(oldest) && !unreadable.contains(mail.uid()))
                .sorted(Comparator.comparing(mail -> notTaken.getOrDefault(mail.uid(), 0)))
                .toList();
        boolean all = true;
        int inARow = 0;
        for (Visit.Lying mail : mails) {
            if (closed.getAsBoolean() || inARow >= MOST_NOT_TAKEN) {
                return false;
            }
            boolean taken = take(visit, mail, inbox);
            inARow = taken ? 0 : inARow + 1;
            all &= taken;
        }
        return all;
    }

    private boolean take(Visit visit, Visit.Lying mail, Inbox inbox) throws MessagingException, IOException {
        String name = "uid-" + validity + "-" + mail.uid();
        var whole = fetched(visit, mail);
        boolean taken;
        try {
            Instant at = mail.at().isAfter(clock.instant()) ? clock.instant() : mail.at();
            taken = handing.hand(whole, name, at, inbox);
        } catch (MessagingException | IOException | StackOverflowError e) {
            LOG.warn("mail {} cannot be read and is left as it is: {}", name, e.toString());
            unreadable.add(mail.uid());
            return true;
        } catch (RuntimeException e) {
            LOG.warn("what mail {} says could not be kept", name, e);
            taken = false;
        }
        if (taken) {
            visit.markRead(mail);
            notTaken.remove(mail.uid());
        } else {
            notTaken.merge(mail.uid(), 1, Integer::sum);
        }
        return taken;
    }

    /** One that the server does not give ends the session as everything does; the next time others come before it. */
    private MimeMessage fetched(Visit visit, Visit.Lying mail) throws MessagingException, IOException {
        try {
            return visit.read(mail);
        } catch (MessagingException | IOException e) {
            if (notTaken.merge(mail.uid(), 1, Integer::sum) >= MOST_TRIES) {
                LOG.warn("mail uid-{}-{} cannot be had and is left as it is: {}", validity, mail.uid(), e.toString());
                unreadable.add(mail.uid());
            }
            throw e;
        }
    }

    private void forgetOtherFolder(Visit visit) throws MessagingException {
        boolean other = visit.validity() != validity;
        if (other || notTaken.size() > MOST_REMEMBERED || unreadable.size() > MOST_REMEMBERED) {
            notTaken.clear();
            unreadable.clear();
        }
        validity = visit.validity();
    }
}
