package yardlight.gateway.paths;

import java.util.List;

/**
 * One channel, or what hears answers, in words.
 *
 * @param standing how it stands
 * @param down whether people are told by other channels meanwhile
 * @param sentence what it says itself, in English
 * @param property what sets it up; empty when it is set up, or hears only
 * @param waiting what waits in it; empty when nothing does
 * @param lately when it last took a text, and what last went wrong
 * @param sends whether somebody can have a line on it
 * @param users who has
 */
record Path(
        String name,
        String what,
        String standing,
        boolean down,
        String sentence,
        String property,
        String waiting,
        List<String> lately,
        boolean sends,
        List<User> users) {

    /**
     * A line on it.
     *
     * @param number from 1 on
     */
    record User(String contact, String name, int number, String words) {}
}
