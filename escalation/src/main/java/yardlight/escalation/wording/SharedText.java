package yardlight.escalation.wording;

/**
 * The text about sites that fell silent together:
 * {@code COMMS LOST: 4 sites on hub link since 2:13 AM: MESA 9, LOMA 4, PICO 2, RIO 7. Reply OK 47}.
 */
final class SharedText {

    private SharedText() {}

    static String text(Subject subject, Circumstance.Shared shared, Answering answering, Phrases phrases) {
        var account = new Account(subject, phrases);
        Ending ending = Ending.of(answering, phrases);
        var room = new Room();
        String code = room.take(ending.code());
        String condition = room.take(account.condition());
        String time = Hour.of(shared.since(), subject.site().zone());
        int sites = shared.sites().size();
        String named = ": " + phrases.silentTogether(sites, shared.link(), shared.name(), time);
        String bare = ": " + phrases.silentTogether(sites, shared.link(), "", time);
        String what = room.take(Transliteration.gsm(named), Transliteration.gsm(bare));
        String returned = room.take(Account.led(", ", account.returned()));
        String link = room.take(ending.link());
        var names = new StringBuilder();
        for (var site : shared.sites()) {
            String next = room.take((names.isEmpty() ? ": " : ", ") + Names.site(site));
            if (next.isEmpty()) {
                break;
            }
            names.append(next);
        }
        return Transliteration.gsm(condition + what + returned + names + code) + link;
    }
}
