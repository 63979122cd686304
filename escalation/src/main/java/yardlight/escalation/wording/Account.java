package yardlight.escalation.wording;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.tank.Outlook;

/** What there is to say about one alarm, phrase by phrase, in the GSM alphabet. A phrase is empty when nothing is known. */
final class Account {

    private static final int UNIT = 16;
    private static final int FEED = 20;
    /** Fewer reports than this are a box that makes sure, not a fact worth a place in a text. */
    private static final int OFTEN = 3;

    private final Subject subject;
    private final Phrases phrases;

    Account(Subject subject, Phrases phrases) {
        this.subject = subject;
        this.phrases = phrases;
    }

    Names names() {
        return Names.of(subject, phrases);
    }

    String condition() {
        // A box may report a hatch that is missing; what the gateway itself misses is a reading.
        boolean ours = alarm().condition().equals("missing") && alarm().box().isEmpty();
        // A box may report a tank that runs over; what readings show is that it is going to.
        boolean soon = alarm().condition().equals("overflow")
                && subject.circumstance().found().isPresent();
        String condition = ours ? "no-readings" : soon ? "will-overflow" : alarm().condition();
        return Transliteration.gsm(phrases.condition(condition));
    }

    /** When it began, on the clock of the site. */
    String time() {
        return clock(alarm().occurredAt().or(() -> alarm().receivedAt()));
    }

    /** That the condition is over and somebody still has to answer; empty while it holds. */
    String returned() {
        return switch (alarm().state()) {
            case RETURNED_UNACKNOWLEDGED, LATCHED_UNACKNOWLEDGED, LATCHED_ACKNOWLEDGED ->
                Transliteration.gsm(phrases.returned(clock(alarm().returnedAt())));
            case NORMAL, UNACKNOWLEDGED, ACKNOWLEDGED, SHELVED, SUPPRESSED_BY_DESIGN, OUT_OF_SERVICE -> "";
        };
    }

    String wantsReset() {
        return switch (alarm().state()) {
            case LATCHED_UNACKNOWLEDGED, LATCHED_ACKNOWLEDGED -> Transliteration.gsm(phrases.wantsReset());
            case NORMAL,
                    UNACKNOWLEDGED,
                    ACKNOWLEDGED,
                    RETURNED_UNACKNOWLEDGED,
                    SHELVED,
                    SUPPRESSED_BY_DESIGN,
                    OUT_OF_SERVICE -> "";
        };
    }

    /** That the tanks fill while nothing empties them. */
    String stake() {
        return subject.circumstance()
                .filling()
                .map(feed -> Transliteration.gsm(phrases.stillFills(Shortening.to(FEED, Transliteration.gsm(feed)))))
                .orElse("");
    }

    /** What it was before it became worse. */
    String was() {
        return subject.circumstance()
                .was()
                .map(before -> Transliteration.gsm(phrases.was(phrases.condition(before))))
                .orElse("");
    }

    /** How long is left, or what it may mean, in several lengths, the longest first; nothing when the readings show neither. */
    List<String> outlook() {
        return subject.circumstance().found().stream()
                .flatMap(found -> Stream.concat(
                        found.outlook().stream().flatMap(this::left),
                        found.stands().map(phrases::stands).or(() -> phrases.meaning(alarm().condition())).stream()))
                .map(Transliteration::gsm)
                .toList();
    }

    private Stream<String> left(Outlook outlook) {
        Optional<String> expected = outlook.expected().flatMap(Span::about);
        Optional<String> least = Span.about(outlook.whateverItDoes());
        Optional<String> both = expected.flatMap(one -> least.filter(other -> !other.equals(one))
                .map(other -> phrases.toOverflow(one) + ", " + phrases.atWorst(other)));
        return Stream.of(
                        both,
                        expected.map(phrases::toOverflow),
                        least.map(one -> phrases.toOverflow(one) + " " + phrases.atWorst())
                                .filter(any -> expected.isEmpty()))
                .flatMap(Optional::stream);
    }

    /** How often it was reported since it began, the first report counted. */
    String times() {
        return alarm().repeats() < OFTEN ? "" : Transliteration.gsm(phrases.times(alarm().repeats() + 1));
    }

    String value() {
        return measured().value().map(this::withUnit).orElse("");
    }

    String limit() {
        return measured()
                .limit()
                .map(limit -> measured().value().isPresent() ? Figure.of(limit) : withUnit(limit))
                .map(limit -> "(" + Transliteration.gsm(beside(limit)) + ")")
                .orElse("");
    }

    private String beside(String limit) {
        return alarm().condition().equals("drift") ? phrases.target(limit) : phrases.limit(limit);
    }

    private String withUnit(BigDecimal number) {
        String unit = unit();
        return Figure.of(number) + (unit.startsWith("%") ? unit : led(" ", unit));
    }

    private String unit() {
        return measured()
                .unit()
                .or(() -> subject.point().unit())
                .filter(Transliteration::keeps)
                .map(unit -> Shortening.to(UNIT, Transliteration.gsm(unit)))
                .orElse("");
    }

    private String clock(Optional<Instant> instant) {
        return instant.map(at -> Hour.of(at, subject.site().zone())).orElse("");
    }

    /** The words with what leads up to them; nothing at all when there are no words. */
    static String led(String lead, String words) {
        return words.isEmpty() ? "" : lead + words;
    }

    private Alarm alarm() {
        return subject.alarm();
    }

    private Measured measured() {
        return alarm().measured();
    }
}
