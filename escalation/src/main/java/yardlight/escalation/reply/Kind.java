package yardlight.escalation.reply;

/** What a word does in an answer; each has a letter, so that a sentence is a string and its grammar a pattern. */
enum Kind {
    OK('A'),
    WITH_NUMBER('W'),
    ALL('L'),
    HOLD('H'),
    BEFORE_NUMBER('P'),
    HASH('#'),
    BEFORE_ALL('T'),
    AND('&'),
    GOING('G'),
    FILLER('F'),
    /** Behind a number begins with it what the person is about to do. */
    STARTS_TALK('S'),
    DOUBT('!'),
    /** A number that can be a code: digits with nothing but blanks and commas about them. */
    NUMBER('N'),
    /** A number that counts or measures something, or is part of something longer. */
    AMOUNT('Q'),
    /** Hours and minutes. */
    LENGTH('D'),
    COMMA(','),
    QUESTION('?'),
    OTHER('X');

    private final char letter;

    Kind(char letter) {
        this.letter = letter;
    }

    char letter() {
        return letter;
    }
}
