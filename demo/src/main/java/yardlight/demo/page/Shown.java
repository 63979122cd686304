package yardlight.demo.page;

import java.util.List;

/** What the page shows, as JSON. */
final class Shown {

    private Shown() {}

    /**
     * @param ready whether the gateway answers yet
     * @param clock the gateway's time of day at the sites, empty before it is known
     * @param speed how much faster than real time it runs
     * @param login of the owner, for the gateway's own page
     * @param timeline lines of time, who and what, oldest first
     * @param lastWords what the gateway said last if it has died, else nothing
     */
    record NightShown(
            boolean ready,
            String clock,
            double speed,
            String gateway,
            String login,
            String password,
            List<List<String>> timeline,
            List<String> lastWords) {}

    record PhoneShown(String person, String name, String number, List<TextShown> texts) {}

    /**
     * @param mail whether it came to the mail box and not to the phone
     * @param link empty when there is none in it
     */
    record TextShown(int number, String time, boolean mail, String body, String link) {}

    /**
     * @param kept events that the box could not post yet
     */
    record SiteShown(
            String id,
            String name,
            String character,
            boolean linked,
            int kept,
            List<GaugeShown> gauges,
            List<FeedShown> feeds) {}

    /**
     * @param shows its value with the unit, or the word for a switch
     * @param limit empty for a switch
     * @param button what pressing it would do now
     * @param turns whether it is a switch, which can chatter
     */
    record GaugeShown(
            String point, String label, String shows, String limit, boolean beyond, String button, boolean turns) {}

    record FeedShown(String name, boolean on) {}
}
