package yardlight.gateway.reports;

/**
 * What a month cost one person.
 *
 * @param contact id
 * @param name as the setup has it now
 * @param zone of the person, by which it was night; that of the first site for whoever is no longer set up
 * @param month such as {@code 2026-11}
 * @param texts messages that a carrier took, by whatever path but mail
 * @param mails the same by mail: they wake nobody
 * @param calls of both, those that asked for an answer
 * @param atNight texts from 22:00 to 06:00
 * @param wakings those of them that came while the person may have been asleep
 */
record MonthOfTexts(
        String contact,
        String name,
        String zone,
        String month,
        int texts,
        int mails,
        int calls,
        int atNight,
        int wakings) {}
