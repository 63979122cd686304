package yardlight.escalation.proof;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is known of one line of a contact. That a carrier took something proves nothing: proven is a line by which
 * something arrived, as a receipt or an answer says. It belongs to the address and not to its place in the list, so a
 * line that is put first keeps what is known of it, and a new address begins anew.
 *
 * @param handedOverAt when a carrier last took a text for it
 * @param deliveredAt when a carrier last said that one had arrived
 * @param answeredAt when somebody last answered one
 * @param trouble what last went wrong, in the carrier's own words
 * @param test the newest test of it
 */
public record LineHealth(
        Key key,
        Optional<Instant> handedOverAt,
        Optional<Instant> deliveredAt,
        Optional<Instant> answeredAt,
        Optional<Trouble> trouble,
        Optional<Test> test) {

    /** After this time what proved a line proves it no longer. */
    public static final Duration LASTS = Duration.ofDays(30);

    /** A reply after this time is about something else. */
    public static final Duration ANSWERS = Duration.ofHours(24);

    /** Which line. */
    public record Key(String contact, String channel, String address) {}

    public record Trouble(Instant at, String words) {

        private static final int LONGEST = 500;

        public Trouble {
            words = words.length() <= LONGEST ? words : words.substring(0, LONGEST);
        }
    }

    /**
     * @param notice the text that went out for it
     * @param code what it asks for in the answer; below 10, where calls have none
     */
    public record Test(String notice, int code, Instant at, boolean answered) {

        /** Codes of tests end where those of calls begin, so that no answer is taken for another. */
        public static final int LAST_CODE = 9;

        /** Whether an answer to it is still awaited. */
        public boolean open(Instant now) {
            return !answered && at.plus(ANSWERS).isAfter(now);
        }
    }

    /** A line of which nothing is known. */
    public static LineHealth unknown(Key key) {
        return new LineHealth(
                key, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    public LineHealth handedOver(Instant now) {
        return new LineHealth(key, Optional.of(now), deliveredAt, answeredAt, trouble, test);
    }

    public LineHealth delivered(Instant now) {
        return new LineHealth(key, handedOverAt, Optional.of(now), answeredAt, trouble, test);
    }

    /** Somebody answered what came by it; that answers its test as well. */
    public LineHealth answered(Instant now) {
        Optional<Test> done = test.map(one -> new Test(one.notice(), one.code(), one.at(), true));
        return new LineHealth(key, handedOverAt, deliveredAt, Optional.of(now), trouble, done);
    }

    public LineHealth troubled(Instant now, String words) {
        return new LineHealth(key, handedOverAt, deliveredAt, answeredAt, Optional.of(new Trouble(now, words)), test);
    }

    public LineHealth tested(Test next) {
        return new LineHealth(key, handedOverAt, deliveredAt, answeredAt, trouble, Optional.of(next));
    }

    /** When it last proved to work; empty when it never did. */
    public Optional<Instant> provenAt() {
        return Stream.of(deliveredAt, answeredAt).flatMap(Optional::stream).max(Instant::compareTo);
    }

    /** Whether it proved to work within the last 30 days. */
    public boolean proven(Instant now) {
        return provenAt().filter(at -> at.plus(LASTS).isAfter(now)).isPresent();
    }

    /** Whether a carrier took something for it so lately that a reply can be about that. */
    public boolean answerable(Instant now) {
        return handedOverAt.filter(at -> at.plus(ANSWERS).isAfter(now)).isPresent();
    }
}
