package yardlight.escalation.wording;

/**
 * The text that says how a request to shut in stands: {@code MESA 9 ASKED TO SHUT IN 2:13 AM by Ana Ruelas. Not done yet: you
 * will hear what the site says.} It wants no answer.
 */
final class ShutInText {

    private static final int NAME = 30;

    private ShutInText() {}

    static String text(ShutInTold told, Phrases phrases) {
        String site = Names.site(told.site());
        String time = Hour.of(told.at(), told.site().zone());
        String by = told.asker()
                .map(asker ->
                        asker.person() ? Shortening.to(NAME, Transliteration.gsm(told.by())) : phrases.asker(asker))
                .orElse("");
        return site + " " + Transliteration.gsm(phrases.shutIn(told.state(), time, by));
    }
}
