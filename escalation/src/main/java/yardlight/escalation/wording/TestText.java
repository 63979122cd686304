package yardlight.escalation.wording;

/** The text that tries one line: {@code Yardlight test, no alarm: this is line 2 (mail). Reply OK 2}. */
final class TestText {

    private TestText() {}

    static String text(Way way, Answering answering, Phrases phrases) {
        Ending ending = Ending.of(answering, phrases);
        var room = new Room();
        String code = room.take(ending.code());
        String what = room.take(
                Transliteration.gsm(phrases.test(way)), Transliteration.gsm(phrases.test(new Way(way.number(), ""))));
        return what + code + room.take(ending.link());
    }
}
