package yardlight.escalation.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.setup.Language.EN;
import static yardlight.escalation.setup.Language.ES;
import static yardlight.escalation.wording.Made.MESA;
import static yardlight.escalation.wording.Made.code;
import static yardlight.escalation.wording.Made.link;
import static yardlight.escalation.wording.Made.measured;
import static yardlight.escalation.wording.Made.point;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.escalation.setup.Language;
import yardlight.escalation.tank.Outlook;
import yardlight.escalation.trend.Reach;

/** What a text says of what readings show, to the letter. */
class OutlookWordingTest {

    @Test
    void says_how_long_it_takes_to_overflow_and_how_short_that_may_be() {
        Outlook outlook = outlook(Optional.of(Duration.ofMinutes(113)), Duration.ofMinutes(84));

        assertThat(overflow(outlook, EN))
                .isEqualTo("MESA 9 WATER TANK WILL OVERFLOW 17.2 ft (limit 16.9) 2:13 AM."
                        + " About 1 h 50 to overflow, 1 h 20 at worst. Reply OK 47");
        assertThat(overflow(outlook, ES))
                .isEqualTo("MESA 9 WATER TANK VA A REBOSAR 17.2 ft (limite 16.9) 2:13 AM."
                        + " Rebosa en unos 1 h 50, 1 h 20 en el peor caso. Responda OK 47");
    }

    @Test
    void says_only_the_shortest_when_it_does_not_rise_now() {
        Outlook outlook = outlook(Optional.empty(), Duration.ofMinutes(84));

        assertThat(overflow(outlook, EN)).endsWith(" 2:13 AM. About 1 h 20 to overflow at worst. Reply OK 47");
        assertThat(overflow(outlook, ES)).endsWith(" 2:13 AM. Rebosa en unos 1 h 20 en el peor caso. Responda OK 47");
    }

    @Test
    void says_it_once_when_both_are_about_the_same() {
        Outlook outlook = outlook(Optional.of(Duration.ofMinutes(44)), Duration.ofMinutes(41));

        assertThat(overflow(outlook, EN)).endsWith(" 2:13 AM. About 40 min to overflow. Reply OK 47");
    }

    @ParameterizedTest
    @CsvSource({
        "0, 5 min",
        "9, 5 min",
        "10, 10 min",
        "59, 55 min",
        "60, 1 h",
        "119, 1 h 50",
        "599, 9 h 50",
        "600, 10 h",
        "2879, 47 h"
    })
    void rounds_down_as_nobody_knows_it_to_the_minute(long minutes, String said) {
        assertThat(Span.about(Duration.ofMinutes(minutes))).contains(said);
    }

    @Test
    void what_takes_two_days_is_not_said() {
        assertThat(Span.about(Duration.ofDays(2))).isEmpty();
        assertThat(overflow(outlook(Optional.of(Duration.ofDays(3)), Duration.ofDays(2)), EN))
                .endsWith(" 2:13 AM. Reply OK 47");
    }

    @Test
    void a_tank_that_a_box_reports_does_overflow() {
        Subject subject = Made.subject("Mesa 9", "Water tank", "overflow");

        assertThat(Wording.text(List.of(subject), code(47), EN))
                .isEqualTo("MESA 9 WATER TANK OVERFLOW 2:13 AM. Reply OK 47");
        assertThat(Wording.text(List.of(subject), code(47), ES))
                .isEqualTo("MESA 9 WATER TANK REBOSA 2:13 AM. Responda OK 47");
    }

    @ParameterizedTest
    @CsvSource({
        "runs-less, RUNS LESS, Less fluid may come in: a well off or a leak",
        "runs-more, RUNS MORE, The pump may be wearing",
        "running-without-effect, RUNS IN VAIN, 'Pump on, no effect: belt, trash or valve'",
        "falling-without-pump, 'FALLS, PUMP OFF', Level falls and no pump runs: a leak or a stuck switch",
        "leak, LEAK, It never fell so fast: an open line"
    })
    void says_what_it_may_mean(String condition, String name, String meaning) {
        assertThat(Wording.text(List.of(found(condition)), code(47), EN))
                .isEqualTo("MESA 9 WATER TANK " + name + " 2:13 AM. " + meaning + ". Reply OK 47");
    }

    @ParameterizedTest
    @CsvSource({
        "runs-less, TRABAJA MENOS, Quiza entra menos fluido: un pozo parado o una fuga",
        "runs-more, TRABAJA MAS, La bomba puede estar gastada",
        "running-without-effect, TRABAJA EN VANO, 'Bomba en marcha sin efecto: banda, basura o valvula'",
        "falling-without-pump, BAJA SIN BOMBA, Baja sin bombeo: una fuga o un interruptor pegado",
        "leak, FUGA, Nunca bajo tan rapido: una linea abierta"
    })
    void says_what_it_may_mean_in_spanish(String condition, String name, String meaning) {
        String text = Wording.text(List.of(found(condition)), code(47), ES);

        assertThat(plain(text)).isEqualTo("MESA 9 WATER TANK " + name + " 2:13 AM. " + meaning + ". Responda OK 47");
    }

    @ParameterizedTest
    @EnumSource
    void says_of_a_pump_that_stands_what_that_may_mean_and_never_that_less_comes_in(Circumstance.Stands stands) {
        Subject made = Made.subject("Mesa 9", "Injection pump", "runs-less");
        var found = new Circumstance.Found(Optional.empty(), Optional.of(stands));
        var subject = new Subject(
                made.site(),
                made.point(),
                made.alarm(),
                new Circumstance(Optional.empty(), Optional.empty(), Optional.of(found)));

        String english = Wording.text(List.of(subject), code(47), EN);
        String spanish = Wording.text(List.of(subject), code(47), ES);

        assertThat(english)
                .startsWith("MESA 9 INJECTION PUMP RUNS LESS 2:13 AM. It stands")
                .doesNotContain("fluid");
        assertThat(plain(spanish))
                .startsWith("MESA 9 INJECTION PUMP TRABAJA MENOS 2:13 AM. ")
                .contains("parada");
        assertThat(spanish).doesNotContain("fluido").endsWith(". Responda OK 47");
    }

    @Test
    void says_what_it_was_before_it_became_worse_if_there_is_room() {
        var worse = new Circumstance(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of("high"));
        Subject tank = Made.subject("Mesa 9", "Water tank", "high-high");
        var lengthy =
                new Circumstance(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of("x".repeat(64)));
        Subject measured = Made.subject(
                MESA, point("WATER TANK"), "high-high", alarm -> alarm.measured(measured("17.2", "16.9", "ft")));

        assertThat(Wording.text(List.of(with(tank, worse)), code(47), EN))
                .isEqualTo("MESA 9 WATER TANK HIGH-HIGH 2:13 AM, was HIGH. Reply OK 47");
        assertThat(Wording.text(List.of(with(tank, worse)), code(47), ES))
                .isEqualTo("MESA 9 WATER TANK ALTO-ALTO 2:13 AM, antes ALTO. Responda OK 47");
        assertThat(Wording.text(
                        List.of(with(measured, lengthy)),
                        link(47, "https://yard.example/a/abcdefghijklmnopqrstuv"),
                        EN))
                .doesNotContain("was");
    }

    private static Subject with(Subject made, Circumstance circumstance) {
        return new Subject(made.site(), made.point(), made.alarm(), circumstance);
    }

    /** The alphabet has some of the accents; which is tested elsewhere. */
    private static String plain(String text) {
        return text.replace('à', 'a')
                .replace('ò', 'o')
                .replace('ù', 'u')
                .replace('Á', 'A')
                .replace('á', 'a');
    }

    @Test
    void a_leak_that_a_box_reports_is_not_explained() {
        assertThat(Wording.text(List.of(Made.subject("Mesa 9", "Separator", "leak")), code(47), EN))
                .isEqualTo("MESA 9 SEPARATOR LEAK 2:13 AM. Reply OK 47");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"overflow", "runs-less", "runs-more", "running-without-effect", "falling-without-pump", "leak"})
    void is_always_one_segment(String condition) {
        String name = "A SITE WHOSE NAME SOMEBODY MADE MUCH TOO LONG FOR ANY TEXT";
        Subject made = Made.subject(Made.site(name), point(name), condition, alarm -> alarm);
        Subject subject = new Subject(
                made.site(),
                made.point(),
                made.alarm(),
                circumstance(Optional.of(outlook(Optional.of(Duration.ofHours(3)), Duration.ofHours(1)))));

        for (Language language : Language.values()) {
            String text =
                    Wording.text(List.of(subject), link(47, "https://yard.example/a/abcdefghijklmnopqrstuv"), language);
            assertThat(Gsm7.septets(text)).isLessThanOrEqualTo(160);
            assertThat(text).contains("47");
        }
    }

    private static String overflow(Outlook outlook, Language language) {
        Subject made = Made.subject(
                MESA, point("WATER TANK"), "overflow", alarm -> alarm.measured(measured("17.2", "16.9", "ft")));
        var subject = new Subject(made.site(), made.point(), made.alarm(), circumstance(Optional.of(outlook)));
        return Wording.text(List.of(subject), code(47), language);
    }

    private static Subject found(String condition) {
        Subject made = Made.subject("Mesa 9", "Water tank", condition);
        return new Subject(made.site(), made.point(), made.alarm(), circumstance(Optional.empty()));
    }

    private static Circumstance circumstance(Optional<Outlook> outlook) {
        return new Circumstance(Optional.empty(), Optional.empty(), Optional.of(new Circumstance.Found(outlook)));
    }

    /** When it does not rise now, the shortest is by the fastest of the week. */
    private static Outlook outlook(Optional<Duration> expected, Duration least) {
        return expected.isPresent()
                ? new Outlook(
                        Optional.of(new Reach(expected, least, expected.map(likely -> likely.multipliedBy(2)))),
                        false,
                        Optional.empty())
                : new Outlook(
                        Optional.of(new Reach(Optional.empty(), Reach.FARTHEST, Optional.empty())),
                        false,
                        Optional.of(least));
    }
}
