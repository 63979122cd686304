package yardlight.escalation.wording;

import java.time.Instant;
import java.util.Optional;
import yardlight.escalation.setup.Site;
import yardlight.escalation.shutin.Asker;
import yardlight.escalation.shutin.RequestState;

/**
 * How a request to shut in stands.
 *
 * @param asker who asked; empty when nobody knows any more
 * @param by their name, or the alarm that was the reason
 * @param at when it came to stand like this
 */
public record ShutInTold(Site site, RequestState state, Optional<Asker.Kind> asker, String by, Instant at) {}
