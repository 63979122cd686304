package yardlight.gateway.setup;

import java.time.Duration;
import java.util.Optional;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.shutin.Terms;
import yardlight.gateway.document.Fields;

/** Reads how a site is asked to shut in. */
final class ShutInReader {

    private static final Duration SHORTEST = Duration.ofMinutes(1);
    private static final Duration LONGEST = Duration.ofHours(2);
    private static final Duration LONGEST_CALL = Duration.ofDays(2);
    private static final String ID_RULE = "must be 1 to 64 of a-z, 0-9 and -, and not start with -";

    private ShutInReader() {}

    static Optional<Terms> terms(Fields site) {
        Optional<Fields> given = site.object("shutIn");
        Optional<Terms> terms = given.flatMap(ShutInReader::read);
        given.ifPresent(Fields::nothingElse);
        return terms;
    }

    private static Optional<Terms> read(Fields fields) {
        Optional<String> box = fields.as("box", ID_RULE, ShutInReader::id);
        Optional<String> relay = fields.as("relay", ID_RULE, ShutInReader::id);
        String point = fields.as("point", ID_RULE, ShutInReader::id).orElse(Terms.POINT);
        String done = fields.as("done", ID_RULE, ShutInReader::id).orElse(Terms.DONE);
        String refused = fields.as("refused", ID_RULE, ShutInReader::id).orElse(Terms.REFUSED);
        Duration expires = fields.duration("expires", SHORTEST, LONGEST).orElse(Terms.EXPIRES);
        Duration confirm = fields.duration("confirmWithin", SHORTEST, LONGEST.plus(SHORTEST))
                .orElse(expires.plus(Duration.ofMinutes(1)));
        Optional<Duration> lastCall = fields.duration("lastCall", Duration.ofMinutes(1), LONGEST_CALL);
        boolean right = true;
        if (box.isPresent() == relay.isPresent()) {
            fields.fault("box", "must be there, or relay, and not both");
            right = false;
        }
        if (done.equals(refused)) {
            fields.fault("refused", "must be another condition than done");
            right = false;
        }
        if (confirm.compareTo(expires) < 0) {
            fields.fault("confirmWithin", "must not be shorter than expires");
            right = false;
        }
        Terms.Way way = box.isPresent() ? Terms.Way.BOX : Terms.Way.RELAY;
        return right
                ? Optional.of(new Terms(
                        way, box.or(() -> relay).orElseThrow(), point, done, refused, expires, confirm, lastCall))
                : Optional.empty();
    }

    private static Optional<String> id(String text) {
        return Optional.of(text).filter(AlarmKey.ID.asMatchPredicate());
    }
}
