package yardlight.escalation.wording;

import static yardlight.escalation.wording.Account.led;

/** The text about a single alarm: {@code MESA 9 WATER TANK HIGH-HIGH 18.4 ft (limit 18.0) 2:13 AM. Reply OK 47}. */
final class OneAlarm {

    private OneAlarm() {}

    static String text(Subject subject, Answering answering, Phrases phrases) {
        var account = new Account(subject, phrases);
        Names names = account.names();
        Ending ending = Ending.of(answering, phrases);
        var room = new Room();

        // Most important first. These four always fit, and so do the first words of the names.
        String code = room.take(ending.code());
        String condition = room.take(led(" ", account.condition()));
        String time = room.take(led(" ", account.time()));
        int kept = room.keep(names.assured());

        // What is at stake is asked for here, and read before the code.
        String outlook =
                room.take(account.outlook().stream().map(one -> ". " + one).toArray(String[]::new));
        String stake = room.take(led(", ", account.stake()));
        String returned = returned(account, room);
        String link = room.take(ending.link());
        String numbers = numbers(account, room);
        String was = room.take(led(", ", account.was()));

        room.give(kept);
        String who = names.within(room.left()).spoken();
        room.keep(Gsm7.septets(who));
        String times = room.take(led(", ", account.times()));

        return Transliteration.gsm(who + condition + numbers + time + was + stake + returned + times + outlook + code)
                + link;
    }

    private static String returned(Account account, Room room) {
        String returned = led(", ", account.returned());
        return room.take(returned + led(", ", account.wantsReset()), returned);
    }

    private static String numbers(Account account, Room room) {
        String value = led(" ", account.value());
        return room.take(value + led(" ", account.limit()), value);
    }
}
