package yardlight.escalation.study;

/** A number of the simulated world, chosen before any result was seen, with its source beside it. */
enum Fact {
    FEED_OUTAGES(
            1.022, "interruptions of a feed and year, storms left out", Source.EIA + "SAIFI without major event days"),
    FEED_MINUTES(121.3, "their mean length, min", Source.EIA + "CAIDI without major event days"),
    STORM_OUTAGES(
            0.326, "interruptions of a feed and year by storms", Source.EIA + "SAIFI with less without, 1.348 - 1.022"),
    STORM_MINUTES(
            744,
            "mean length of a storm's interruption, min",
            Source.EIA + "SAIDI with less without by the row above, 242.7 / 0.326"),
    SHORTEST_MINUTES(5, "shortest interruption, min", "IEEE 1366: what ends within five minutes is momentary"),
    SPREAD(1.0, "width of every length's lognormal distribution", Source.SHAPE),
    STORM_FEEDS(0.5, "share of an operator's feeds that a storm takes", Source.NONE),
    STORM_LINKS(0.25, "share of an operator's links that a storm takes", Source.NONE),
    STORM_ONSET_MINUTES(10, "from a storm's first blow to its last, min", Source.NONE),
    BACKUP_HOURS(
            8,
            "for how long a link lives without its mains, h",
            "FCC order of 2007 on cell sites, as reported (Light Reading, 2 November 2012)"),
    HUBS(
            0.5,
            "share of shared links that are a hub on a feed of the operator's own; the others are a carrier's tower",
            Source.NONE),
    HUBS_BACKED(0.8, "share of hubs that have a battery", Source.NONE),
    LINK_OUTAGES(2, "outages of a link and year, maintenance included", Source.NONE),
    LINK_MINUTES(60, "mean length of a link's outage, min", Source.NONE),
    RADIO_FAULTS(0.5, "faults of a box's own radio and year", Source.EVEN),
    RADIO_MINUTES(360, "mean length of a radio's fault, min", Source.NONE),
    FADING(0.3, "share of radio faults with a signal that falls before", Source.NONE),
    CRASHES(0.5, "crashes of a box and year that no watchdog ends at once", Source.EVEN),
    CRASH_MINUTES(60, "mean time until a crashed box starts again, min", Source.NONE),
    BOOT_SECONDS(60, "from power to the first heartbeat, s", Source.NONE),
    BATTERIES(0.5, "share of boxes with a battery", Source.NONE),
    BATTERY_LEAST_HOURS(2, "smallest battery, h", Source.NONE),
    BATTERY_MOST_HOURS(48, "largest battery, h; even on a logarithmic scale between", Source.NONE),
    WORN(0.05, "share of batteries that are worn: the box dies with the mains", Source.NONE),
    SENSES(0.9, "share of boxes with a battery that tell their feed, and at once when it changes", Source.NONE),
    LAST_GASP(0.3, "share of boxes without a battery that tell of their feed with their last breath", Source.NONE),
    SECOND_FEED(0.4, "share of sites with two feeds", Source.NONE),
    WATCHES(0.5, "share of boxes at such sites that tell the other feed as well", Source.NONE),
    SHARED_FEED(0.25, "share of sites whose first feed is the next site's too", Source.NONE),
    OWN_LINK(0.15, "share of sites whose boxes share their link with no other site", Source.NONE),
    LOSS_MOST(
            0.3,
            "largest share of a box's posts that get lost; even between 0 and this",
            "no source; the upper end of what a bad cell link may lose"),
    RETRY_SECONDS(10, "after which a lost post is tried once more, s; a last breath is not", Source.NONE),
    LATENCY_SECONDS(0.5, "median time from box to gateway, s", Source.LATENCY),
    LATENCY_SPREAD(1.1, "width of its lognormal distribution: 1 in 100 takes 6.5 s", Source.LATENCY),
    WRONG_CLOCKS(0.1, "share of boxes whose clock is wrong, by up to a year", Source.NONE),
    WRAPS(0.1, "share of boxes whose uptime starts again after 2^32 ms", Source.NONE),
    NO_UPTIME(
            0,
            "share of boxes that do not tell their uptime",
            "no source; the field is optional, every box is taken to send it");

    private static final class Source {
        static final String EIA = "US EIA, Electric Power Annual, table 11.1, IEEE 1366, 2023: ";
        static final String SHAPE = "lognormal by Ahmad and Dobson, arXiv:2603.16841; its width has no source";
        static final String LATENCY =
                "LTE-M Performance towards 5G IoT (white paper): 0.1 s at the edge of normal cover, 6.2 s in the deepest";
        static final String EVEN = "no source; radio and crash are alike, so that neither guess is favoured";
        static final String NONE = "common practice, no source";
    }

    final double value;
    final String what;
    final String source;

    Fact(double value, String what, String source) {
        this.value = value;
        this.what = what;
        this.source = source;
    }
}
