package yardlight.gateway.problem;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.web.util.HtmlUtils;
import yardlight.escalation.sentence.Sentence;
import yardlight.gateway.sentence.Sentences;

/** The page that a person sees when something is wrong. Plain text in a frame, without a template engine that could fail as well. */
record ProblemPage(MessageSource words, Locale locale) {

    private static final Sentence HOME = Sentence.of("home", "To the first page");

    private static final String FRAME = """
            <!doctype html>
            <html lang="%4$s">
            <head>
              <meta charset="utf-8">
              <meta name="viewport" content="width=device-width, initial-scale=1">
              <title>%1$s</title>
              <link rel="stylesheet" href="/yardlight.css">
            </head>
            <body>
              <main class="sheet">
                <h1>%1$s</h1>
                <p>%2$s</p>
            %3$s    <p><a href="/">%5$s</a></p>
              </main>
            </body>
            </html>
            """;

    String html(Problem problem) {
        var list = new StringBuilder();
        for (Fault fault : problem.faults()) {
            list.append("    <p><code>")
                    .append(escaped(fault.place()))
                    .append("</code> ")
                    .append(escaped(Sentences.say(fault.rule(), words, locale)))
                    .append("</p>\n");
        }
        int status = problem.status().value();
        String name =
                Sentences.say(Sentence.of("status." + status, problem.status().getReasonPhrase()), words, locale);
        return FRAME.formatted(
                escaped(status + " " + name),
                escaped(Sentences.say(problem.sentence(), words, locale)),
                list,
                locale.getLanguage(),
                escaped(Sentences.say(HOME, words, locale)));
    }

    /** Signs that mean something in HTML, and no letters. */
    private static String escaped(String text) {
        return HtmlUtils.htmlEscape(text, StandardCharsets.UTF_8.name());
    }
}
