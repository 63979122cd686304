package yardlight.gateway.readings;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.reading.Reading;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Fields;
import yardlight.gateway.lane.PostedReading;
import yardlight.gateway.posting.PostingBox;
import yardlight.gateway.posting.When;

/** Reads one reading by the table of the contract. Fields that it does not know are left alone: boxes differ. */
final class ReadingReader {

    private static final String ID_RULE = "must be 1 to 64 of a-z, 0-9 and -, and not start with -";

    /** More than anything at a lease comes to, and small enough that a double tells it from its neighbours. */
    private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000_000_000L);

    private final PostingBox box;
    private final Instant received;
    private final Scales scales;

    ReadingReader(PostingBox box, Instant received, Scales scales) {
        this.box = box;
        this.received = received;
        this.scales = scales;
    }

    /** @param faults what is wrong with this reading and no other */
    Bundle.Line read(Fields fields, Faults faults) {
        fields.needs("point", "value");
        Optional<String> point =
                fields.as("point", ID_RULE, text -> Optional.of(text).filter(AlarmKey.ID.asMatchPredicate()));
        Optional<BigDecimal> value = fields.number("value");
        Optional<String> unit = fields.text("unit", 16).filter(text -> !text.isEmpty());
        When when = When.of(fields.instant("at"), received);
        value.filter(number -> number.abs().compareTo(MOST) >= 0)
                .ifPresent(huge -> fields.fault("value", "must be within a million million: " + huge));
        point.ifPresent(name -> unit.filter(said -> !scales.fits(box.site(), name, said))
                .ifPresent(said -> fields.fault("unit", "must fit the point's, " + own(name) + ": " + said)));
        return faults.count() > 0
                ? Bundle.Line.bad(faults.list())
                : new Bundle.Line(
                        Optional.of(posted(point.orElseThrow(), value.orElseThrow(), unit, when.at())),
                        when.note(),
                        List.of());
    }

    private String own(String point) {
        return scales.own(box.site(), point).orElse("none");
    }

    private PostedReading posted(String point, BigDecimal value, Optional<String> unit, Instant at) {
        Scales.Scaled scaled = scales.scale(box.site(), point, value, unit);
        var reading = new Reading(box.site(), point, scaled.own(), at.truncatedTo(ChronoUnit.MILLIS));
        return new PostedReading(reading, scaled.kept(), scaled.unit(), scaled.anew());
    }
}
