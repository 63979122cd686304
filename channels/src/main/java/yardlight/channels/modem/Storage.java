package yardlight.channels.modem;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.channels.Inbox;

/**
 * Where the modem keeps what came in. All of it is looked through whenever the modem tells of something and now and then, for
 * it does not always tell, and a card that is full takes nothing more. A message is deleted once it has been dealt with.
 * For one thread, but for {@link #listen}.
 */
final class Storage {

    private static final Logger LOG = LoggerFactory.getLogger(Storage.class);

    /** There is something new, and where it is kept: clause 3.4.1. */
    private static final Pattern NEWS = Pattern.compile("\\+C(?:MT|DS)I: *\"?(\\w{2,4})\"?.*");
    /** The same, not kept. What is broadcast to everybody ({@code +CBM}) is nobody's answer. */
    private static final Pattern TOLD = Pattern.compile("\\+C(?:MT|DS):.*");

    private static final int MOST_TOLD = 100;

    private final Arrivals arrivals;
    private final Duration patience;
    private final Set<String> memories = new LinkedHashSet<>();
    private final List<Entry> told = new ArrayList<>();
    private boolean first = true;
    private boolean due;
    private boolean failing;
    private volatile Optional<Inbox> inbox = Optional.empty();

    /** @param patience for a list, which may be long */
    Storage(Arrivals arrivals, Duration patience) {
        this.arrivals = arrivals;
        this.patience = patience;
    }

    /** Until then everything stays with the modem. */
    void listen(Inbox given) {
        inbox = Optional.of(given);
    }

    /** The modem keeps its texts there from now on. */
    void keeps(Optional<String> memory) {
        memory.ifPresent(memories::add);
        due = true;
    }

    /** Whatever the modem said by itself. */
    void hear(List<Dialogue.Unasked> unasked) {
        for (Dialogue.Unasked one : unasked) {
            Matcher news = NEWS.matcher(one.line());
            if (news.matches()) {
                memories.add(news.group(1));
                due = true;
            } else if (TOLD.matcher(one.line()).matches() && told.size() < MOST_TOLD) {
                Entry.told(one).ifPresent(told::add);
                due = true;
            }
        }
    }

    boolean isDue() {
        return due && inbox.isPresent();
    }

    /** Looks all of it through. */
    void look(Dialogue dialogue) throws Gone {
        due = false;
        Inbox given = inbox.orElseThrow();
        told.removeAll(arrivals.take(told, given, first));
        if (memories.size() < 2) {
            look(dialogue, given);
        } else {
            for (String memory : memories) {
                if (dialogue.ask("AT+CPMS=\"" + memory + "\"").isOk()) {
                    look(dialogue, given);
                }
            }
        }
        first = false;
    }

    /** Clauses 4.1 and 4.4: 4 is every message, in PDU mode. */
    private void look(Dialogue dialogue, Inbox given) throws Gone {
        Answer list = dialogue.ask("AT+CMGL=4", patience);
        if (list.isOk() == failing) {
            failing = !list.isOk();
            LOG.info("texts that come in {}: {}", failing ? "cannot be read" : "can be read again", list.result());
        }
        List<Entry> entries = Entry.listed(list);
        for (Entry done : arrivals.take(entries, given, first)) {
            dialogue.ask("AT+CMGD=" + done.index().orElseThrow(), patience);
        }
    }
}
