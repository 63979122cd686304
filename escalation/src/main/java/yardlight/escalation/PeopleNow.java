package yardlight.escalation;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Reach;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;

/** Who is behind a ladder's entries at the time of the decision, for an alarm of one priority. */
final class PeopleNow implements Reach {

    private final Setup setup;
    private final Carriers carriers;
    private final Priority priority;
    private final boolean reachableOnly;
    private final boolean mayAsk;
    private final Instant now;

    private PeopleNow(Draft draft, Callout.Facts facts) {
        this.setup = draft.setup();
        this.carriers = new Carriers(draft);
        this.priority = facts.priority();
        this.reachableOnly = facts.alarms().stream().allMatch(Setup::isCarrier);
        this.mayAsk = facts.priority() == Priority.CRITICAL && ShutIns.wanted(draft, facts.site());
        this.now = draft.now();
    }

    /** For this callout. That a carrier is down is nothing for those who would hear of it once it is back. */
    static PeopleNow of(Draft draft, Callout.Facts facts) {
        return new PeopleNow(draft, facts);
    }

    /** Who has stopped all their lines is nobody: there is nothing to wait for. */
    @Override
    public List<String> people(String call) {
        return setup.peopleBehind(call, now).stream()
                .filter(contact -> carriers.has(contact, 0))
                .filter(contact ->
                        !reachableOnly || carriers.reach(setup.contacts().get(contact)))
                .toList();
    }

    @Override
    public boolean mayAsk() {
        return mayAsk;
    }

    @Override
    public Optional<Instant> heldUntil(String contact) {
        return Optional.ofNullable(setup.contacts().get(contact))
                .flatMap(known -> heldUntil(known, priority, now)
                        .or(() ->
                                carriers.reach(known) ? Optional.empty() : Optional.of(now.plus(Carriers.ASK_AGAIN))));
    }

    /** Critical gets through whatever the quiet hours say. */
    static Optional<Instant> heldUntil(Contact contact, Priority priority, Instant now) {
        return priority == Priority.CRITICAL ? Optional.empty() : contact.heldUntil(priority, now);
    }
}
