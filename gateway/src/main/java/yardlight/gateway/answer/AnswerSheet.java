package yardlight.gateway.answer;

import java.util.List;

/**
 * What the page behind a link shows.
 *
 * @param said the text that the link came in
 * @param lines how each alarm of it stands now
 * @param open whether somebody still has to answer, and this link can be used for it
 */
record AnswerSheet(
        String language, String title, String said, List<String> lines, boolean open, String button, String caution) {}
