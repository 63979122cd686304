package yardlight.escalation.study;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * One outage and how everybody did in it.
 *
 * @param marks by the words of the rules
 * @param quiet time in which boxes ran and could be heard, in ms
 */
record Score(Cause cause, Map<String, Mark> marks, long quiet) {

    /** Plays the outage that belongs to this seed and number. */
    static Score of(Facts facts, long seed, int number, List<Rules> rules) {
        SplittableRandom random = source(seed, number);
        World world = new WorldDraw(facts, random).draw();
        Outage outage = new OutageDraw(world, random).draw();
        List<Post> posts = Posts.of(world, outage, random);
        long until = Posts.until(world, outage);
        var marker = new Marker(outage, posts, until);
        var marks = new TreeMap<String, Mark>();
        rules.forEach(one -> marks.put(one.words(), marker.mark(one.read(world, posts, until))));
        return new Score(outage.cause(), marks, marker.quiet());
    }

    /**
     * Each outage has a source of its own, so that the number of threads changes nothing. The number is hashed: sources whose
     * seeds lie one step apart would draw the same numbers, one later.
     */
    static SplittableRandom source(long seed, int number) {
        return new SplittableRandom(new SplittableRandom(seed + 0xD1342543DE82EF95L * number).nextLong());
    }
}
