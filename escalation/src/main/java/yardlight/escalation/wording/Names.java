package yardlight.escalation.wording;

import java.util.Locale;
import yardlight.escalation.setup.Site;

/**
 * Site and point as they stand in a text, in capitals of the GSM alphabet.
 *
 * @param site never empty
 * @param point empty when the condition says it all: "MESA 9 POWER OFF"
 */
record Names(String site, String point) {

    /** Septets that each name may have before it is shortened to make room for numbers, a link or another alarm. */
    private static final int ASSURED = 30;

    static Names of(Subject subject, Phrases phrases) {
        String site = whole(subject.site());
        String point = subject.circumstance()
                .shared()
                .map(shared -> upper(phrases.togetherOn(shared.sites().size(), shared.link(), shared.name())))
                .orElseGet(
                        () -> capitals(subject.point().name(), subject.point().id()));
        return new Names(site, pointBefore(subject.alarm().condition(), point, phrases));
    }

    /** A site alone, in as many septets as a name has a right to. */
    static String site(Site site) {
        return Shortening.to(ASSURED, whole(site));
    }

    private static String whole(Site site) {
        return capitals(site.name(), site.id());
    }

    /** "BOX" is our own word, to be translated, and "POWER PUMP POWER OFF" says power twice. */
    private static String pointBefore(String condition, String point, Phrases phrases) {
        if (point.equals("BOX")) {
            return phrases.box();
        }
        if (condition.equals("power-off") && (point + " ").startsWith("POWER ")) {
            return point.substring("POWER".length()).strip();
        }
        return point;
    }

    /** A name of which the alphabet cannot write every letter is less use than the id. */
    private static String capitals(String name, String id) {
        String shown = upper(name);
        boolean readable = shown.codePoints().anyMatch(Character::isLetterOrDigit) && Transliteration.keeps(name);
        return readable ? shown : upper(id.replace('-', ' '));
    }

    /** Before and after: the small è is in the alphabet, the capital is not, and a micro has no capital. */
    private static String upper(String text) {
        return Transliteration.gsm(Transliteration.gsm(text).toUpperCase(Locale.ROOT));
    }

    /** Septets that both names and the space between them have a right to. */
    int assured() {
        return Math.min(ASSURED, Gsm7.septets(site)) + 1 + Math.min(ASSURED, Gsm7.septets(point));
    }

    /** Both names and the space between them in so many septets: half for each, and one gets what the other leaves. */
    Names within(int septets) {
        int both = septets - 1;
        String shortSite = Shortening.to(Math.max(both / 2, both - Gsm7.septets(point)), site);
        String shortPoint = Shortening.to(both - Gsm7.septets(shortSite), point);
        return new Names(Shortening.to(both - Gsm7.septets(shortPoint), site), shortPoint);
    }

    /** Both as one phrase. */
    String spoken() {
        return point.isEmpty() ? site : site + " " + point;
    }
}
