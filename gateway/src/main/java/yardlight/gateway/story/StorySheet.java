package yardlight.gateway.story;

import java.util.List;

/**
 * The page of one alarm, in words.
 *
 * @param siteKnown whether the site is set up and has a page
 * @param open whether it waits for an answer
 * @param over whether nothing about it is open any more
 * @param reading value against limit; may be empty
 * @param text in the box's own words; may be empty
 * @param facts what else is known, each a sentence
 * @param said the text that went out last; may be empty
 * @param next what happens next by itself; may be empty
 * @param newest the occurrence that followed; empty when this is the newest one
 * @param shutIn how the site stands with being asked to shut in; empty where it is never asked
 * @param silence empty unless it is the alarm of one
 */
record StorySheet(
        String id,
        String site,
        String siteName,
        boolean siteKnown,
        String name,
        String priority,
        String standing,
        boolean open,
        boolean over,
        String reading,
        String text,
        List<String> facts,
        String said,
        String next,
        String newest,
        May may,
        String shutIn,
        List<Silence> silence,
        List<Line> story,
        List<Span> spans) {

    /** What the rules allow now, to whoever has the right. */
    record May(boolean acknowledge, boolean shelve, boolean unshelve, boolean reset) {

        static final May NOTHING = new May(false, false, false, false);
    }

    /**
     * What a silence is taken for.
     *
     * @param verdict with its probability, {@code power off, 98 % sure}
     * @param told with which verdict people were called, if that was another one; may be empty
     * @param reasons the evidence, each a sentence
     */
    record Silence(String verdict, String told, List<String> reasons) {}

    /**
     * Something that happened.
     *
     * @param time at the site
     * @param english whether these are the log's own words, which are English
     */
    record Line(String time, String words, boolean english) {}

    /** For how long an alarm may be put aside, with the time at which that ends. */
    record Span(String length, String words) {}
}
