package yardlight.db.due;

import java.util.Locale;

/**
 * What a time belongs to.
 *
 * @param subject the key of an alarm as {@code site/point/condition}, the id of a callout, a notice, an offered turn, a box or a site, a point
 *     as {@code site/point}, or a contact
 */
public record DueKey(Kind kind, String subject) {

    /** Each kind is one kind of stimulus to the engine. */
    public enum Kind {
        ALARM,
        CALLOUT,
        DESK,
        NOTICE,
        BOX,
        GAUGE,
        WELL,
        SHUT_IN,
        SWAP;

        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
