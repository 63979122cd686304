package yardlight.escalation.ladder;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Who a rung calls at one instant, and who of them may not be disturbed then. */
public interface Reach {

    /** The contacts behind one entry of a rung, in order; none for a roster on which nobody is on call. */
    List<String> people(String call);

    /** Until when the contact cannot be called: the end of their quiet hours, or when to ask for their carriers again. */
    Optional<Instant> heldUntil(String contact);

    /** Whether the site may be asked to shut in, so that a rung that asks is not passed over. */
    default boolean mayAsk() {
        return false;
    }

    /** All contacts of the rung, each once. */
    default List<String> people(Rung rung) {
        Set<String> all = new LinkedHashSet<>();
        rung.call().forEach(call -> all.addAll(people(call)));
        return new ArrayList<>(all);
    }
}
