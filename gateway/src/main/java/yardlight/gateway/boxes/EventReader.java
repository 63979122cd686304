package yardlight.gateway.boxes;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Fields;
import yardlight.gateway.lane.PostedEvent;
import yardlight.gateway.posting.PostingBox;
import yardlight.gateway.posting.When;

/** Reads one event by the table of the contract. Fields that it does not know are left alone: boxes differ. */
final class EventReader {

    private static final Pattern PRINTABLE = Pattern.compile("[ -~]{1,64}");
    private static final Pattern REQUEST = Pattern.compile("[!-~]{1,128}");
    private static final String ID_RULE = "must be 1 to 64 of a-z, 0-9 and -, and not start with -";

    private final PostingBox box;
    private final Instant received;

    EventReader(PostingBox box, Instant received) {
        this.box = box;
        this.received = received;
    }

    /** @param faults what is wrong with this event and no other */
    Posting.Line read(Fields event, Faults faults) {
        event.needs("point", "condition", "state");
        Optional<String> point = event.as("point", ID_RULE, EventReader::id);
        Optional<String> condition = event.as("condition", ID_RULE, EventReader::id);
        Optional<Boolean> active = event.as("state", "must be active or normal", EventReader::active);
        Optional<String> id = event.as("id", "must be 1 to 64 printable ASCII characters", EventReader::printable);
        Optional<Priority> priority = event.as("priority", "must be low, medium, high or critical", Priority::of);
        Optional<String> request =
                event.as("request", "must be 1 to 128 printable ASCII characters", EventReader::request);
        Measured measured = measured(event);
        When when = When.of(event.instant("at"), received);
        if (faults.count() > 0) {
            return Posting.Line.bad(faults.list());
        }
        var key = new AlarmKey(box.site(), point.orElseThrow(), condition.orElseThrow());
        var report = new Report(
                key,
                Optional.of(box.getName()),
                active.orElseThrow(),
                priority,
                measured,
                when.at(),
                when.declared(),
                request);
        return new Posting.Line(Optional.of(new PostedEvent(id, report)), when.note(), List.of());
    }

    private static Measured measured(Fields event) {
        Optional<BigDecimal> value = event.number("value");
        Optional<BigDecimal> limit = event.number("limit");
        return new Measured(value, limit, event.text("unit", 16), event.text("text", 200));
    }

    private static Optional<String> id(String text) {
        return Optional.of(text).filter(AlarmKey.ID.asMatchPredicate());
    }

    private static Optional<String> request(String text) {
        return Optional.of(text).filter(REQUEST.asMatchPredicate());
    }

    private static Optional<String> printable(String text) {
        return Optional.of(text).filter(PRINTABLE.asMatchPredicate());
    }

    private static Optional<Boolean> active(String word) {
        return switch (word) {
            case "active" -> Optional.of(true);
            case "normal" -> Optional.of(false);
            default -> Optional.empty();
        };
    }
}
