package yardlight.gateway.answer;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import yardlight.escalation.reply.Said;
import yardlight.escalation.setup.Contact;

/**
 * What somebody may ask for who says that they are a contact, and whom nothing else vouches for: what tells them nothing that
 * the contact does not hear, and what shows that they have the text that the contact was sent, by the number in it. Who tries
 * many numbers gets no further than a few.
 */
final class Doubts {

    static final int MOST_GUESSES = 5;
    static final Duration WITHIN = Duration.ofHours(1);

    private final InstantSource clock;
    private final Map<String, Deque<Instant>> guesses = new HashMap<>();

    Doubts(InstantSource clock) {
        this.clock = clock;
    }

    /**
     * @param people every contact with the line that it is said to come from
     * @param turns the codes of the turns that they were asked to take: they let nobody do anything, but are no guesses
     */
    boolean mayAsk(List<Contact> people, Said said, Waiting calls, Set<Integer> turns) {
        Set<String> ids = people.stream().map(Contact::id).collect(Collectors.toSet());
        if (said instanceof Said.Ok ok) {
            return shows(ok.codes(), ids, calls, turns);
        }
        if (said instanceof Said.Hold hold) {
            return shows(hold.code().stream().toList(), ids, calls, turns);
        }
        return said instanceof Said.Status
                || said instanceof Said.Who
                || said instanceof Said.Help
                || said instanceof Said.Automatic
                || said instanceof Said.Unclear;
    }

    /** Whether they were sent all of these. */
    private synchronized boolean shows(Collection<Integer> codes, Set<String> ids, Waiting calls, Set<Integer> turns) {
        if (codes.isEmpty()) {
            return false;
        }
        Deque<Instant> wrong =
                guesses.computeIfAbsent(String.join(" ", ids.stream().sorted().toList()), any -> new ArrayDeque<>());
        Instant now = clock.instant();
        wrong.removeIf(at -> at.isBefore(now.minus(WITHIN)));
        if (wrong.size() >= MOST_GUESSES) {
            return false;
        }
        Set<Integer> told = calls.toldCodes(ids);
        if (codes.stream().anyMatch(code -> !told.contains(code) && !turns.contains(code))) {
            wrong.add(now);
        }
        return told.containsAll(codes);
    }
}
