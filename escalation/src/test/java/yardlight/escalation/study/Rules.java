package yardlight.escalation.study;

import java.util.List;
import java.util.Set;
import yardlight.escalation.heartbeat.Verdict;

/** Somebody who hears the posts of an operator's boxes and has to say what their absence means. */
interface Rules {

    /**
     * What the record says of a silence once everybody is back.
     *
     * @param from when it was an alarm, in ms of the playing
     * @param to when the last of its boxes was back
     * @param boxes all that were ever in it
     * @param reboot whether it says that the box may have started by itself
     */
    record Last(long from, long to, Set<Integer> boxes, Verdict verdict, boolean reboot) {}

    /**
     * @param texts in the order in which they were sent
     * @param last by silence
     */
    record Read(List<Told> texts, List<Last> last) {}

    String words();

    /** Hears all posts in the order of their arrival, and nothing more until the end, in ms. */
    Read read(World world, List<Post> posts, long until);
}
