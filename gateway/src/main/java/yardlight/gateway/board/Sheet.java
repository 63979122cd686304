package yardlight.gateway.board;

import java.util.List;

/**
 * The first page, in words. Whatever the template shows stands here ready to be read.
 *
 * @param waiting alarms that nobody has answered
 * @param taken alarms that somebody has, and what is over but not reset
 * @param aside alarms that are kept from people
 * @param people whom a ladder can call, and by what they can be reached
 * @param unset points that had alarms and that nobody has set up
 * @param silentChannels what the channels say that cannot send, and who is reached by none
 * @param empty whether nothing at all is set up
 */
record Sheet(
        String time,
        List<Card> waiting,
        List<Card> taken,
        List<Card> aside,
        List<Place> places,
        List<Person> people,
        List<String> unset,
        List<String> silentChannels,
        boolean empty) {

    /**
     * One alarm.
     *
     * @param standing how it stands, {@code Nobody has it}
     * @param reading value against limit; may be empty
     * @param said the text that went out last; may be empty
     * @param next what happens next by itself; may be empty
     */
    record Card(
            String id,
            String name,
            String priority,
            String standing,
            String reading,
            String since,
            String text,
            String said,
            String next,
            List<Saying> sayings) {}

    /** Who was told, by which way, and what became of it. */
    record Saying(String contact, String words) {}

    /**
     * One site.
     *
     * @param heard what its boxes last did
     * @param alarms how many of its alarms are not normal
     */
    record Place(String name, List<String> heard, int alarms) {}

    /**
     * One contact.
     *
     * @param reached when something last showed that they can be reached
     * @param unproven their lines that nothing has shown to work for 30 days; may be empty
     */
    record Person(String id, String name, String reached, String unproven) {}

    public boolean calm() {
        return waiting.isEmpty() && taken.isEmpty();
    }
}
