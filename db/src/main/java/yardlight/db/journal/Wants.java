package yardlight.db.journal;

import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.Set;
import yardlight.escalation.BoxAlarms;
import yardlight.escalation.Cause;
import yardlight.escalation.Neighbours;
import yardlight.escalation.ShutInAlarm;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.setup.Stop;

/**
 * What a batch is going to ask for, so that it can be read beforehand in a few queries. Nothing breaks when something is
 * missing here: the {@link Sheet} then reads it when it is asked.
 */
public final class Wants {

    /** Of these everything that is live. */
    final Set<String> sites = new LinkedHashSet<>();

    /** Of these whether they are in a flood. */
    final Set<String> floods = new LinkedHashSet<>();

    final Set<AlarmKey> alarms = new LinkedHashSet<>();
    final Set<String> callouts = new LinkedHashSet<>();
    final Set<String> notices = new LinkedHashSet<>();
    final Set<String> answered = new LinkedHashSet<>();

    /** Notices whose callouts decide how it goes on with them. */
    final Set<String> followed = new LinkedHashSet<>();

    final Set<String> boxes = new LinkedHashSet<>();

    /** Boxes whose deadline may have passed. Most were heard since: then nothing else is looked at. */
    final Set<String> due = new LinkedHashSet<>();

    final Set<Path> paths = new LinkedHashSet<>();
    final Set<Gauge.Key> gauges = new LinkedHashSet<>();
    final Set<String> desks = new LinkedHashSet<>();
    boolean people;

    private final Setup setup;
    private final Instant now;

    /** @param now time of the transaction */
    public Wants(Setup setup, Instant now) {
        this.setup = setup;
        this.now = now;
    }

    public void add(Stimulus stimulus) {
        switch (stimulus.kind()) {
            case REPORTED -> reported((Stimulus.Reported) stimulus);
            case MEASURED -> measured((Stimulus.Measured) stimulus);
            case BEAT -> beat((Stimulus.Beat) stimulus);
            case BOX_DUE -> due.add(((Stimulus.BoxDue) stimulus).box());
            case GAUGE_DUE -> gauges.add(((Stimulus.GaugeDue) stimulus).key());
            case ALARM_DUE -> alarm(((Stimulus.AlarmDue) stimulus).key());
            case ACKNOWLEDGE -> alarm(((Stimulus.Acknowledge) stimulus).key());
            case SHELVE -> alarm(((Stimulus.Shelve) stimulus).key());
            case UNSHELVE -> alarm(((Stimulus.Unshelve) stimulus).key());
            case RESET -> alarm(((Stimulus.Reset) stimulus).key());
            case CALLOUT_DUE -> callout(((Stimulus.CalloutDue) stimulus).callout());
            case DESK_DUE -> desks.add(((Stimulus.DeskDue) stimulus).contact());
            case ALLS_WELL_DUE -> allsWell();
            case TEST_LINE -> people = true;
            case ANSWER_NOTICE -> answered.add(((Stimulus.AnswerNotice) stimulus).notice());
            case NOTICE_FATE -> fate((Stimulus.NoticeFate) stimulus);
            case NOTICE_DUE -> followed.add(((Stimulus.NoticeDue) stimulus).notice());
            case PUT_OFF -> notices.add(((Stimulus.PutOff) stimulus).notice());
            case OVERDUE -> notices.add(((Stimulus.Overdue) stimulus).notice());
            case CARRIER -> carrier((Stimulus.Carrier) stimulus);
            case SIGNED_IN -> desks.addAll(((Stimulus.SignedIn) stimulus).contacts());
            case STOPPED -> stopped((Stimulus.Stopped) stimulus);
            case SHUT_IN -> alarm(ShutInAlarm.at(((Stimulus.ShutIn) stimulus).site()));
            case SWAP -> people = true;
            case SETUP_CHANGED -> changed(((Stimulus.SetupChanged) stimulus).setup());
            case HANDOVER, REPLIED, LINK_USED -> {
                // Says who is on call by the setup, which is always at hand; so are people's lines.
            }
        }
    }

    /** Everything that is not as it should be, and when each box was heard. */
    private void allsWell() {
        people = true;
        sites.addAll(setup.sites().keySet());
        sites.add(Site.GATEWAY);
        boxes.addAll(setup.boxes().keySet());
    }

    private void fate(Stimulus.NoticeFate said) {
        (said.receiptWithin().isPresent() ? followed : notices).add(said.notice());
    }

    private void reported(Stimulus.Reported posted) {
        heard(posted.box());
        posted.reports().forEach(report -> alarm(report.key()));
    }

    /** Most readings change no alarm: then none is looked at. */
    private void measured(Stimulus.Measured posted) {
        heard(posted.box());
        posted.readings().stream()
                .filter(reading -> setup.point(reading.site(), reading.point()).gauged())
                .forEach(reading -> gauges.add(new Gauge.Key(reading.site(), reading.point())));
    }

    /** What every sign of life asks for. */
    private void heard(String box) {
        boxes.add(box);
        alarms.add(BoxAlarms.OUTSIDE);
    }

    private void beat(Stimulus.Beat beat) {
        heard(beat.box());
        Box box = setup.boxes().get(beat.box());
        Set<String> feeds = beat.heartbeat().feeds().keySet();
        if (box != null && !feeds.isEmpty()) {
            setup.boxesAt(box.site()).forEach(other -> boxes.add(other.id()));
            feeds.forEach(feed -> alarm(BoxAlarms.feedOff(box.site(), feed)));
        }
    }

    /** What a silence is judged by, once it is known of a box that its deadline has passed indeed. */
    void judge(BoxWatch watch) {
        Box box = setup.boxes().get(watch.box());
        if (box != null && watch.overdue(now)) {
            alarm(BoxAlarms.silence(box.site()));
            Neighbours.of(setup, box).forEach(other -> boxes.add(other.id()));
            paths.add(Path.site(box.site()));
            String ladder = setup.site(box.site()).map(Site::ladder).orElse("");
            box.link().ifPresent(link -> paths.add(Path.link(link, ladder)));
            box.feed().ifPresent(feed -> paths.add(Path.feed(feed, ladder)));
        }
    }

    private void alarm(AlarmKey key) {
        alarms.add(key);
        alarms.addAll(Cause.near(key));
        floods.add(key.site());
        people = true;
        setup.known(key.site(), key.point()).stream()
                .flatMap(point -> point.suppressedWhile().stream())
                .forEach(other -> alarms.add(AlarmKey.at(key.site(), other)));
        if (setup.explains(key.site(), key.local())) {
            sites.add(key.site());
        }
    }

    private void callout(String id) {
        callouts.add(id);
        people = true;
    }

    private void carrier(Stimulus.Carrier said) {
        alarm(Setup.carrier(said.channel()));
        setup.contacts().values().stream()
                .filter(contact ->
                        contact.lines().stream().anyMatch(line -> line.channel().equals(said.channel())))
                .forEach(contact -> desks.add(contact.id()));
    }

    /** Whoever is left without a line is taken out of every call. */
    private void stopped(Stimulus.Stopped said) {
        alarm(Stop.key(said.contact(), said.address()));
        desks.add(said.contact());
        everywhere(setup);
    }

    /** Whether people may be called, so that it matters which carriers are down and which lines are stopped. */
    boolean calls() {
        return people || !desks.isEmpty() || !answered.isEmpty();
    }

    private void changed(Setup next) {
        everywhere(setup);
        everywhere(next);
        setup.points().forEach(this::gauge);
        // Those that are put back are waited for.
        next.points().stream()
                .filter(point -> point.rules().missing().isPresent())
                .forEach(this::gauge);
        floods.addAll(sites);
        // Any of them may be silent in an alarm that lies at a site which is gone, or be back in the setup.
        boxes.addAll(setup.boxes().keySet());
        boxes.addAll(next.boxes().keySet());
        people = true;
    }

    private void gauge(Point point) {
        gauges.add(new Gauge.Key(point.site(), point.id()));
    }

    private void everywhere(Setup of) {
        sites.addAll(of.sites().keySet());
        sites.add(Site.GATEWAY);
    }
}
