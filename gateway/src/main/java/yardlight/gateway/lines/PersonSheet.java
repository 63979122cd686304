package yardlight.gateway.lines;

import java.util.List;

/**
 * A contact's page, in words. Whatever the template shows stands here ready to be read.
 *
 * @param time what time it is where they are
 * @param facts language, limit, all's-well
 * @param quiet their quiet hours, each a sentence
 * @param dial the same, drawn
 * @param told what they were sent lately, newest first
 */
record PersonSheet(
        String id,
        String name,
        String time,
        List<String> facts,
        List<String> quiet,
        Dial dial,
        List<Way> ways,
        List<Told> told) {

    /**
     * One line.
     *
     * @param number from 1 on
     * @param reached when something last showed that it works, or that nothing did
     * @param proven whether that was within 30 days
     * @param facts what else is known, each a sentence
     */
    record Way(int number, String name, String address, String reached, boolean proven, List<String> facts) {}

    /** One notice: when it was made, what became of it, and how it read. */
    record Told(String at, String became, String text) {}
}
