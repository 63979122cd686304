package yardlight.gateway.curves;

import java.util.List;
import java.util.Optional;
import yardlight.gateway.strip.Strip;

/**
 * The page of curves, in words.
 *
 * @param shown what stretch of time, in words
 * @param zone of the site's clock
 * @param from beginning, in seconds since 1970
 * @param to end
 * @param span as ISO 8601 has it
 * @param until end as RFC 3339 has it; empty when that is now
 * @param earlier address of the stretch before
 * @param later address of the one after; empty when that is to come
 * @param choice all points
 * @param accounts of those that are shown
 * @param alarms in the stretch
 */
record CurvesSheet(
        String id,
        String name,
        String shown,
        String zone,
        long from,
        long to,
        String span,
        String until,
        boolean beside,
        String earlier,
        String later,
        List<Choice> choice,
        List<Length> lengths,
        List<Account> accounts,
        List<Trouble> alarms) {

    /** A point that can be chosen. */
    record Choice(String id, String name, boolean chosen) {}

    /** How much can be seen at once. */
    record Length(String span, String words, boolean chosen) {}

    /**
     * A point that is shown.
     *
     * @param strip empty when nothing was read
     * @param sentence what there is to say
     */
    record Account(String id, String name, Optional<Strip> strip, String sentence) {}

    /** An alarm. */
    record Trouble(String id, String words) {}

    /** The ids of the points that are shown, as the script asks for them. */
    public String points() {
        return String.join(",", accounts.stream().map(Account::id).toList());
    }
}
