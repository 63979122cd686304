package yardlight.gateway.lines;

import java.util.List;

/**
 * A contact's page, in words. Whatever the template shows stands here ready to be read.
 *
 * @param allsWell when they are told that all is well; empty when they are not
 */
record ContactSheet(String id, String name, String allsWell, List<Way> ways) {

    /**
     * One line.
     *
     * @param number from 1 on
     * @param reached when something last showed that it works, or that nothing did
     * @param proven whether that was within 30 days
     * @param facts what else is known, each a sentence
     */
    record Way(int number, String name, String address, String reached, boolean proven, List<String> facts) {}
}
