package yardlight.escalation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;

/** The boxes that may know something of the silence of another one. */
public final class Neighbours {

    /** Of thousands on one link so many know as much as all of them. */
    private static final int ENOUGH = 24;

    private Neighbours() {}

    /** The first boxes at its site, on its feed and on its link, itself left out. */
    public static List<Box> of(Setup setup, Box box) {
        Map<String, Box> found = new LinkedHashMap<>();
        add(setup.boxesAt(box.site()), found);
        box.feed().ifPresent(feed -> add(setup.boxesOnFeed(feed), found));
        box.link().ifPresent(link -> add(setup.boxesOnLink(link), found));
        found.remove(box.id());
        return List.copyOf(found.values());
    }

    private static void add(List<Box> boxes, Map<String, Box> to) {
        boxes.stream().limit(ENOUGH).forEach(box -> to.put(box.id(), box));
    }
}
