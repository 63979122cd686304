package yardlight.gateway.edit;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.sentence.Sentence;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.coverage.Opened;

/** What became of an edit. */
public sealed interface Saved {

    /** It holds. */
    record Stored(int version) implements Saved {}

    /** It would not be a good setup; nothing was stored. */
    record Wrong(List<Mistake> mistakes) implements Saved {

        public Wrong {
            mistakes = List.copyOf(mistakes);
        }
    }

    /**
     * Somebody else has changed the same thing since it was looked at; nothing was stored.
     *
     * @param version that holds now; who has read what changed may save over it
     * @param by login of who changed it last
     * @param changes how what holds now differs from what was looked at
     */
    record Overtaken(int version, String by, Instant at, List<Changed> changes) implements Saved {

        public Overtaken {
            changes = List.copyOf(changes);
        }
    }

    /**
     * An alarm would be called to nobody at times at which now somebody is called; nothing was stored. Who has read that may
     * save all the same.
     *
     * @param setup as it would be, for the names of its sites
     */
    record Opens(Opened gaps, Setup setup) implements Saved {}

    /**
     * One thing that is wrong.
     *
     * @param piece in which; empty for the document as a whole
     * @param field where in it, {@code rungs/0/wait}: names and places from 0, as in a JSON pointer; may be empty
     * @param rule what would be right
     */
    record Mistake(Optional<Piece> piece, String field, Sentence rule) {

        /** The rule in English. */
        public String detail() {
            return rule.english();
        }
    }

    /** What differs in one piece. */
    record Changed(Part part, String key, List<Difference> differences) {

        static Changed of(Piece before, Piece after) {
            return new Changed(after.part(), after.key(), Difference.between(before, after));
        }
    }
}
