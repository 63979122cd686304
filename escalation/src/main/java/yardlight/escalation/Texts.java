package yardlight.escalation;

import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Site;
import yardlight.escalation.wording.Answering;
import yardlight.escalation.wording.Links;
import yardlight.escalation.wording.Subject;
import yardlight.escalation.wording.Tiding;
import yardlight.escalation.wording.Way;
import yardlight.escalation.wording.Wellbeing;
import yardlight.escalation.wording.Wording;

/** Gathers what a notice has to say at the moment at which it goes out, and has it worded. */
final class Texts {

    /** That a site was not shut in is for everybody: of many, it comes before what is as urgent. */
    static final Comparator<Alarm> WORST_FIRST = Comparator.comparing(Alarm::active)
            .thenComparing(Alarm::priority)
            .thenComparing(alarm -> ShutInAlarm.is(alarm.key()))
            .reversed()
            .thenComparing(Cause.FURTHEST_FIRST);

    private final Draft draft;
    private final Links links;
    private final Optional<Wellbeing.Uncovered> uncovered;

    /** @param uncovered what an all's-well says of hours in which nobody is called */
    Texts(Draft draft, Links links, Optional<Wellbeing.Uncovered> uncovered) {
        this.draft = draft;
        this.links = links;
        this.uncovered = uncovered;
    }

    String write(Notice notice) {
        Contact contact = draft.setup().contacts().get(notice.contact());
        Language language = contact == null ? Language.EN : contact.language();
        return switch (notice.purpose()) {
            case CALL -> call(notice, language);
            case ALLS_WELL -> Wording.allsWell(new Wellbeings(draft, this).of(notice, contact, uncovered), language);
            case NEWS -> news(notice, language);
            case SIGN_IN, TURN -> notice.text();
            case TEST -> test(notice, contact, language);
            case SHUT_IN -> new ShutInNews(draft).write(notice, language);
        };
    }

    private String test(Notice notice, Contact contact, Language language) {
        LineHealth line = new Proofs(draft).of(contact).get(notice.line());
        var way = new Way(notice.line() + 1, line.key().channel());
        var answering = new Answering(line.test().map(LineHealth.Test::code), links.answer(notice.id()));
        return Wording.test(way, answering, language);
    }

    private String news(Notice notice, Language language) {
        List<Tiding> tidings = new Tidings(draft).of(notice);
        List<Integer> codes =
                tidings.stream().flatMap(one -> one.code().stream()).distinct().toList();
        Optional<Integer> code = codes.size() == 1 ? Optional.of(codes.get(0)) : Optional.empty();
        var answering = new Answering(code, links.answer(notice.id()));
        return Wording.news(tidings, Optional.of(answering).filter(any -> !codes.isEmpty()), language);
    }

    private String call(Notice notice, Language language) {
        List<Callout> callouts = notice.callouts().stream()
                .flatMap(id -> draft.callout(id).stream())
                .toList();
        List<Callout> open = callouts.stream().filter(draft::wanted).toList();
        List<Callout> about = open.isEmpty() ? callouts : open;
        List<Alarm> all = about.stream()
                .flatMap(callout -> callout.facts().alarms().stream())
                .distinct()
                .map(draft::alarm)
                .toList();
        List<Alarm> waiting =
                all.stream().filter(alarm -> alarm.state().awaitsAnswer()).toList();
        List<Alarm> worst =
                (waiting.isEmpty() ? all : waiting).stream().sorted(WORST_FIRST).toList();
        List<Subject> subjects =
                new Causes(draft).apart(worst).stream().map(this::subject).toList();
        Optional<Integer> code =
                about.size() == 1 ? Optional.of(about.get(0).facts().code()) : Optional.empty();
        var answering = new Answering(code, links.answer(notice.id()));
        return Wording.text(new SharedFeeds(draft).together(subjects), answering, language);
    }

    Subject subject(Alarm alarm) {
        return subject(draft, alarm);
    }

    static Subject subject(Draft draft, Alarm alarm) {
        String id = alarm.key().site();
        // A site can be gone from the setup while a text about it is on its way.
        Site site = draft.setup().site(id).orElseGet(() -> new Site(id, id, ZoneOffset.UTC, ""));
        return new Subject(
                site,
                draft.setup().point(alarm.key().site(), alarm.key().point()),
                alarm,
                new Circumstances(draft).of(alarm));
    }
}
