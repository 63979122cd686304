package yardlight.escalation.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Set;
import yardlight.escalation.heartbeat.Verdict;

/** What a fixed time limit and no thought would do: a text for each box whose limit has passed. */
enum PlainRules implements Rules {
    /** Whoever is silent has no power. */
    ALWAYS_POWER("fixed limit, always power") {
        @Override
        Verdict verdict(World world, long[] heard, int box, long at) {
            return Verdict.POWER_OFF;
        }
    },
    /** When more than half of the boxes on a link are overdue it is the link, and one text; else the power. */
    MAJORITY_BY_LINK("majority says by link") {
        @Override
        Verdict verdict(World world, long[] heard, int box, long at) {
            int link = world.boxes().get(box).link();
            int[] there = world.everyBox()
                    .filter(other -> world.boxes().get(other).link() == link)
                    .toArray();
            long overdue = Arrays.stream(there)
                    .filter(other -> at - heard[other] > world.every() * 3 / 2)
                    .count();
            return there.length > 1 && 2 * overdue > there.length ? Verdict.COMMS_LOSS : Verdict.POWER_OFF;
        }
    };

    private final String words;

    PlainRules(String words) {
        this.words = words;
    }

    /** @param heard when each box was heard last */
    abstract Verdict verdict(World world, long[] heard, int box, long at);

    @Override
    public String words() {
        return words;
    }

    /** A box that has passed its limit, and when it had been heard. */
    private record Late(int box, long at) {}

    @Override
    public Read read(World world, List<Post> posts, long until) {
        var texts = new ArrayList<Told>();
        var toldOf = new HashMap<Integer, Long>();
        long[] heard = new long[world.boxes().size()];
        int next = 0;
        for (Late late : late(world, posts, until)) {
            while (next < posts.size() && posts.get(next).arrived() <= late.at()) {
                heard[posts.get(next).box()] = posts.get(next).arrived();
                next++;
            }
            Verdict verdict = verdict(world, heard, late.box(), late.at());
            int link = world.boxes().get(late.box()).link();
            boolean said = verdict == Verdict.COMMS_LOSS
                    && late.at() - toldOf.getOrDefault(link, -world.patience()) < world.patience();
            if (!said) {
                texts.add(new Told(texts.size(), late.at(), verdict, Set.of(late.box()), World.NONE));
            }
            if (verdict == Verdict.COMMS_LOSS) {
                toldOf.put(link, late.at());
            }
        }
        List<Last> last = texts.stream()
                .map(told -> new Last(told.at(), told.at(), told.boxes(), told.verdict(), false))
                .toList();
        return new Read(texts, last);
    }

    private static List<Late> late(World world, List<Post> posts, long until) {
        var late = new ArrayList<Late>();
        Long[] heard = new Long[world.boxes().size()];
        for (Post post : posts) {
            Long before = heard[post.box()];
            if (before != null && post.arrived() - before > world.patience()) {
                late.add(new Late(post.box(), before + world.patience()));
            }
            heard[post.box()] = post.arrived();
        }
        world.everyBox()
                .filter(box -> heard[box] != null && until - heard[box] > world.patience())
                .forEach(box -> late.add(new Late(box, heard[box] + world.patience())));
        late.sort(Comparator.comparingLong(Late::at).thenComparingInt(Late::box));
        return late;
    }
}
