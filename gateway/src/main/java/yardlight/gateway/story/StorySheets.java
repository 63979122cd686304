package yardlight.gateway.story;

import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.Alarms;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.db.alarm.Silences;
import yardlight.db.alarm.Told;
import yardlight.db.shutin.ShutIns;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmRules;
import yardlight.escalation.alarm.AlarmTrigger;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.account.Accounts;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.ShutInWords;
import yardlight.gateway.page.Telling;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** Makes the page of an alarm of what is known of it. */
@Component
class StorySheets {

    private static final int LITTLE = 60;

    private final Alarms alarms;
    private final Told told;
    private final Accounts accounts;
    private final Silences silences;
    private final ShutIns shutIns;
    private final SetupInForce inForce;
    private final InstantSource clock;

    StorySheets(
            Alarms alarms,
            Told told,
            Accounts accounts,
            Silences silences,
            ShutIns shutIns,
            SetupInForce inForce,
            InstantSource clock) {
        this.shutIns = shutIns;
        this.alarms = alarms;
        this.told = told;
        this.accounts = accounts;
        this.silences = silences;
        this.inForce = inForce;
        this.clock = clock;
    }

    /**
     * @throws Problem 404 when there is no such alarm
     */
    StorySheet of(String id, Tongue tongue) {
        RecordedAlarm recorded = alarms.byId(id)
                .filter(one -> one.alarm().occurrence() > 0)
                .orElseThrow(() -> Problem.notFound("there is no such alarm"));
        Alarm alarm = recorded.alarm();
        Setup setup = inForce.setup();
        var names = new Names(setup);
        String site = alarm.key().site();
        var clockface = new Clockface(names.zone(site), clock.instant(), tongue.locale());
        var telling = new Telling(tongue, names, clockface);
        Optional<String> newest = told.newest(alarm.key()).filter(other -> !other.equals(id));
        return new StorySheet(
                id,
                site,
                names.site(site),
                setup.site(site).isPresent(),
                telling.subject(alarm),
                telling.priority(alarm.priority()),
                telling.standing(alarm),
                alarm.state().awaitsAnswer(),
                newest.isPresent() || !alarm.live(),
                telling.reading(alarm),
                alarm.reading().isPresent() ? "" : alarm.measured().text().orElse(""),
                facts(alarm, telling),
                recorded.callout().map(Telling::said).orElse(""),
                recorded.callout()
                        .filter(callout -> callout.callout().live())
                        .map(telling::next)
                        .orElse(""),
                newest.orElse(""),
                newest.isPresent() ? StorySheet.May.NOTHING : may(alarm, setup),
                new ShutInWords(tongue, names, clockface).brief(setup.site(site), shutIns.of(site)),
                silence(alarm, telling).stream().toList(),
                story(recorded, telling),
                Shelf.of(clockface, tongue));
    }

    private static List<String> facts(Alarm alarm, Telling telling) {
        var facts = new ArrayList<String>();
        alarm.occurredAt()
                .ifPresent(at -> facts.add(
                        telling.tongue().say("story.since", telling.clock().read(at))));
        alarm.returnedAt()
                .filter(at -> !alarm.active())
                .ifPresent(at -> facts.add(
                        telling.tongue().say("story.returned", telling.clock().read(at))));
        alarm.box().ifPresent(box -> facts.add(telling.tongue().say("story.box", box)));
        if (alarm.repeats() > 0) {
            facts.add(telling.tongue().count("story.repeats", alarm.repeats()));
        }
        return facts;
    }

    /** The engine says what it would do; nothing is done. */
    private StorySheet.May may(Alarm alarm, Setup setup) {
        Timing timing = setup.point(alarm.key().site(), alarm.key().point()).timing();
        Instant now = clock.instant();
        return new StorySheet.May(
                AlarmRules.acknowledge(alarm, "", timing, now).isPresent(),
                AlarmRules.shelve(alarm, now.plusSeconds(LITTLE), timing).isPresent(),
                AlarmRules.move(alarm, AlarmTrigger.UNSHELVE, timing).isPresent(),
                AlarmRules.move(alarm, AlarmTrigger.RESET, timing).isPresent());
    }

    private Optional<StorySheet.Silence> silence(Alarm alarm, Telling telling) {
        return Optional.of(alarm)
                .filter(one -> one.reading().isPresent())
                .map(one -> silences.of(List.of(one.id())).get(one.id()))
                .map(absence -> silence(absence, telling));
    }

    private static StorySheet.Silence silence(Absence absence, Telling telling) {
        Tongue tongue = telling.tongue();
        String told = telling.condition(absence.told().condition());
        long percent = Math.round(absence.judgement().confidence() * 100);
        return new StorySheet.Silence(
                tongue.say("story.verdict." + absence.verdict().condition(), Long.toString(percent)),
                absence.told() == absence.verdict() ? "" : tongue.say("story.first-told", told),
                absence.judgement().evidence().values().stream()
                        .map(one -> tongue.say(one.sentence()))
                        .toList());
    }

    private List<StorySheet.Line> story(RecordedAlarm recorded, Telling telling) {
        return accounts.of(recorded, telling).stream()
                .map(one -> new StorySheet.Line(telling.clock().read(one.at()), one.words(), one.english()))
                .toList();
    }
}
