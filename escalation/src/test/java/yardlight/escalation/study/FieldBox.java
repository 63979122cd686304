package yardlight.escalation.study;

/**
 * A box as it really is, much of which the setup does not know.
 *
 * @param id as in the setup
 * @param feed index of the feed that it hangs on
 * @param link index of the link that it talks over
 * @param watched index of another feed that it tells, -1 when there is none
 * @param battery for how long it lives without its mains, in ms; 0 when it has none or a worn one
 * @param hasBattery what the setup says
 * @param senses whether it tells its feed, and at once when it changes
 * @param gasps whether it tells of its feed with its last breath
 * @param loss the share of its posts that get lost, each try for itself
 * @param started how long before the beginning it was started, in ms
 * @param clock by how much its own clock is wrong, in ms
 * @param wraps whether its uptime starts again after 2^32 ms
 * @param tellsUptime whether it tells its uptime
 * @param phase when it posts first, in ms
 * @param signal in dBm on a good day
 */
record FieldBox(
        String id,
        String site,
        int feed,
        int link,
        int watched,
        long battery,
        boolean hasBattery,
        boolean senses,
        boolean gasps,
        double loss,
        long started,
        long clock,
        boolean wraps,
        boolean tellsUptime,
        long phase,
        double signal) {}
