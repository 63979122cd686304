package yardlight.gateway.page;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/** What things are called by the people who set them up; what nobody has set up goes by its id. */
public record Names(Setup setup) {

    public String site(String id) {
        return setup.site(id).map(Site::name).orElse(id);
    }

    public String contact(String id) {
        return Optional.ofNullable(setup.contacts().get(id)).map(Contact::name).orElse(id);
    }

    /** {@code line 2 (mail)}; the place counts from 0. */
    public static String line(int place, String channel) {
        return "line " + (place + 1) + " (" + channel + ")";
    }

    /** The zone of a site's clock; UTC where nobody has said. */
    public ZoneId zone(String site) {
        return setup.site(site).map(Site::zone).orElse(ZoneOffset.UTC);
    }

    /** {@code WATER TANK}. */
    public String point(AlarmKey key) {
        return setup.point(key.site(), key.point()).name();
    }

    /** {@code Mesa 9 WATER TANK high-high}. */
    public String alarm(Alarm alarm) {
        return site(alarm.key().site()) + " " + point(alarm.key()) + " " + alarm.condition();
    }
}
