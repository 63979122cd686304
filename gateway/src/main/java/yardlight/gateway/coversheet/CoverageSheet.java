package yardlight.gateway.coversheet;

import java.util.List;
import java.util.Optional;
import yardlight.gateway.page.HoursDrawing;

/**
 * One site's coverage, ready to be read.
 *
 * @param ladder its id; empty when the site has none that is set up
 * @param until the last day that was looked at
 * @param groups none while the site is out of service
 */
record CoverageSheet(String id, String name, String ladder, boolean inService, String until, List<Group> groups) {

    /**
     * Priorities for which it is the same.
     *
     * @param summary all of it in one sentence
     * @param drawing of the next four weeks; empty when they have no gap
     * @param soon the gaps of the next four weeks by their reasons
     * @param later those after them
     * @param unproven when somebody is called, but nobody of whom it is known that they are reached; empty when never
     * @param who who hears in the next days, and who next
     */
    record Group(
            String id,
            String title,
            String summary,
            Optional<HoursDrawing> drawing,
            List<Reason> soon,
            List<Reason> later,
            String unproven,
            List<String> who) {}

    /** Why, and when. */
    record Reason(String why, List<String> times) {}
}
