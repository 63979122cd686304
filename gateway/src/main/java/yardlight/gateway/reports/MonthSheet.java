package yardlight.gateway.reports;

import java.util.List;

/**
 * A month of alarms in words.
 *
 * @param notes what to know before it is read; may be empty
 * @param advice each a sentence; may be empty
 */
record MonthSheet(
        String title,
        List<String> notes,
        String count,
        List<Row> figures,
        List<String> advice,
        List<Often> often,
        List<String> facts) {

    /** One figure: its value and its target, and in words whether that was met. */
    record Row(String name, String value, String target, String met) {}

    /**
     * One of the most frequent.
     *
     * @param replay the address where its readings are replayed; empty where there are none
     */
    record Often(String name, int count, String share, String replay) {}
}
