package yardlight.escalation;

import java.util.Locale;
import java.util.Optional;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.heartbeat.Verdict;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.shutin.Terms;

/** The alarms that no box names itself: they follow from its heartbeats, and from their absence. */
public final class BoxAlarms {

    /** The gateway itself is cut off. */
    public static final AlarmKey OUTSIDE = Setup.carrier("outside");

    private static final String POINT = "box";
    private static final String POWER = "power-";
    private static final String LINK = "link-";
    private static final String FEED = "feed-";
    private static final int LONGEST = 64;

    private BoxAlarms() {}

    /** Whether these are alarms of this point: then nobody has to set it up. */
    public static boolean have(String point) {
        return point.equals(POINT)
                || point.equals(Terms.POINT)
                || point.startsWith(POWER)
                || point.startsWith(LINK)
                || point.startsWith(FEED);
    }

    /** No box of a site speaks. The key stays whatever the silence is taken for, so that it is one alarm. */
    public static AlarmKey silence(String site) {
        return new AlarmKey(site, POINT, Verdict.SILENT.condition());
    }

    /** The alarm by which a silence is kept, when it is named by what it is taken for. */
    static AlarmKey kept(AlarmKey named) {
        return named.point().equals(POINT) ? silence(named.site()) : named;
    }

    /**
     * The alarm of a silence that several boxes share.
     *
     * @param site of the box that was missed first
     */
    static AlarmKey silence(Path path, String site) {
        return switch (path.kind()) {
            case SITE -> silence(site);
            case LINK -> new AlarmKey(site, point(LINK + path.name()), Verdict.SILENT.condition());
            case FEED -> new AlarmKey(site, point(FEED + path.name()), Verdict.SILENT.condition());
        };
    }

    /** A link or feed may be called anything; a point may not. */
    private static String point(String name) {
        String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9-]", "-");
        return plain.substring(0, Math.min(LONGEST, plain.length()));
    }

    /** Whether it is the alarm of a silence. */
    static boolean isSilence(AlarmKey key) {
        String point = key.point();
        boolean ours = point.equals(POINT) || point.startsWith(LINK) || point.startsWith(FEED);
        return ours && key.condition().equals(Verdict.SILENT.condition());
    }

    /** Whether a feed has a name that boxes can say something of: in the setup it may be called anything. */
    static boolean canBeOff(String feed) {
        return AlarmKey.ID.matcher(POWER + feed).matches();
    }

    /** A feed of a site is off. */
    public static AlarmKey feedOff(String site, String feed) {
        return new AlarmKey(site, POWER + feed, Verdict.POWER_OFF.condition());
    }

    /** The feed that is off by this alarm. */
    static Optional<String> feed(AlarmKey key) {
        return key.point().startsWith(POWER) && key.condition().equals(Verdict.POWER_OFF.condition())
                ? Optional.of(key.point().substring(POWER.length()))
                : Optional.empty();
    }
}
