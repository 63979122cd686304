package yardlight.gateway.board;

import java.util.List;

/**
 * The first page, in words. Whatever the template shows stands here ready to be read.
 *
 * @param waiting how many alarms nobody has answered
 * @param places sites with an alarm that people should know of, worst first
 * @param aside alarms that are kept from people
 * @param quiet the other sites
 * @param wants what wants doing although nothing is in alarm
 * @param empty whether nothing at all is set up
 */
record Sheet(String time, int waiting, List<Place> places, List<Row> aside, Quiet quiet, Wants wants, boolean empty) {

    /** The alarms of the sites of which there is room for none at length. */
    public List<Row> rest() {
        return places.stream()
                .filter(place -> place.cards().isEmpty())
                .flatMap(place -> place.rows().stream())
                .toList();
    }

    /**
     * A site in alarm.
     *
     * @param known whether it is set up and has a page
     * @param heard when it last spoke
     * @param cards its alarms, the most urgent first
     * @param rows those for which the page has no room, in short
     */
    record Place(String id, String name, boolean known, String heard, List<Card> cards, List<Row> rows) {}

    /**
     * One alarm.
     *
     * @param open whether it waits for an answer
     * @param standing how it stands, {@code Nobody has it}
     * @param reading value against limit; may be empty
     * @param said the text that went out last; may be empty
     * @param next what happens next by itself; may be empty
     */
    record Card(
            String id,
            String name,
            boolean open,
            String priority,
            String standing,
            String reading,
            String since,
            String text,
            String said,
            String next,
            List<Saying> sayings) {}

    /** One alarm in a line. */
    record Row(String id, String name, String standing, String priority, String since) {}

    /** Who was told, by which way, and what became of it. */
    record Saying(String contact, String words) {}

    /**
     * The sites at which nothing is wrong.
     *
     * @param folded whether there are so many that only their number shows at first
     * @param longest which of them was heard the longest ago; empty when there is none
     */
    record Quiet(List<QuietPlace> places, boolean folded, String longest) {}

    /** @param heard when it last spoke */
    record QuietPlace(String id, String name, String heard) {}

    /**
     * What somebody should see to by day.
     *
     * @param gaps when an alarm would be called to nobody
     * @param people whose lines nothing has shown to work
     * @param points that had alarms and that nobody has set up
     * @param channels what the channels say that cannot send, and who is reached by none
     * @param more how many people, points and sites there are besides those named
     */
    record Wants(List<Gap> gaps, List<Person> people, List<Unset.Point> points, List<String> channels, int more) {

        public boolean nothing() {
            return gaps.isEmpty() && people.isEmpty() && points.isEmpty() && channels.isEmpty();
        }
    }

    /** A site, and when first nobody would hear. */
    record Gap(String site, String name, String words) {}

    /**
     * One contact.
     *
     * @param reached when something last showed that they can be reached
     * @param unproven their lines that nothing has shown to work for 30 days
     */
    record Person(String id, String name, String reached, String unproven) {}
}
