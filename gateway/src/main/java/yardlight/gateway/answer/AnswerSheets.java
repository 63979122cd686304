package yardlight.gateway.answer;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.Told;
import yardlight.db.link.AnswerLink;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.sentence.Locales;
import yardlight.gateway.setup.SetupInForce;

/** Makes the page behind a link, in the language of the person who got it. */
@Component
class AnswerSheets {

    private final Told told;
    private final SetupInForce inForce;
    private final MessageSource messages;

    AnswerSheets(Told told, SetupInForce inForce, MessageSource messages) {
        this.told = told;
        this.inForce = inForce;
        this.messages = messages;
    }

    AnswerSheet of(AnswerLink link, Instant now) {
        Notice notice =
                told.notice(link.notice()).orElseThrow(() -> Problem.notFound("this text is not kept any more"));
        Setup setup = inForce.setup();
        Locale locale = locale(setup.contacts().get(notice.contact()));
        if (notice.purpose() == Purpose.TEST) {
            return test(link, notice, locale);
        }
        List<Alarm> alarms = told.about(notice.id());
        boolean waiting = alarms.stream().anyMatch(alarm -> alarm.state().awaitsAnswer());
        return new AnswerSheet(
                locale.getLanguage(),
                say("answer.title", locale),
                notice.text(),
                alarms.stream().map(alarm -> line(alarm, setup, now, locale)).toList(),
                waiting && link.usedAt().isEmpty(),
                say("answer.button", locale),
                say("answer.caution", locale));
    }

    private AnswerSheet test(AnswerLink link, Notice notice, Locale locale) {
        boolean open = link.usedAt().isEmpty();
        return new AnswerSheet(
                locale.getLanguage(),
                say("answer.test.title", locale),
                notice.text(),
                List.of(say(open ? "answer.test.open" : "answer.test.done", locale)),
                open,
                say("answer.test.button", locale),
                say("answer.caution", locale));
    }

    private static Locale locale(Contact contact) {
        return Optional.ofNullable(contact)
                .map(one -> Locales.of(one.language()))
                .orElse(Locales.ENGLISH);
    }

    private String line(Alarm alarm, Setup setup, Instant now, Locale locale) {
        var names = new Names(setup);
        var clock = new Clockface(names.zone(alarm.key().site()), now, locale);
        var line = new StringBuilder(names.alarm(alarm)).append(": ");
        Optional<Instant> had =
                alarm.acknowledgedAt().filter(at -> !alarm.state().awaitsAnswer());
        line.append(had.map(at -> say("answer.has", locale, by(alarm, names), clock.read(at)))
                .orElseGet(() -> say("answer.nobody", locale)));
        alarm.returnedAt()
                .filter(at -> !alarm.active())
                .ifPresent(at -> line.append(". ").append(say("answer.over", locale, clock.read(at))));
        return line.append('.').toString();
    }

    private static String by(Alarm alarm, Names names) {
        return alarm.acknowledgedBy().map(names::contact).orElse("?");
    }

    private String say(String code, Locale locale, Object... values) {
        return messages.getMessage(code, values, locale);
    }
}
