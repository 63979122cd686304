package yardlight.gateway.problem;

import org.springframework.web.util.HtmlUtils;

/** The page that a person sees when something is wrong. Plain text in a frame, without a template engine that could fail as well. */
final class ProblemPage {

    private static final String FRAME = """
            <!doctype html>
            <html lang="en">
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
            %3$s    <p><a href="/">To the first page</a></p>
              </main>
            </body>
            </html>
            """;

    private ProblemPage() {}

    static String html(Problem problem) {
        var list = new StringBuilder();
        for (Fault fault : problem.faults()) {
            list.append("    <p><code>")
                    .append(HtmlUtils.htmlEscape(fault.place()))
                    .append("</code> ")
                    .append(HtmlUtils.htmlEscape(fault.detail()))
                    .append("</p>\n");
        }
        String title = problem.status().value() + " " + problem.status().getReasonPhrase();
        return FRAME.formatted(HtmlUtils.htmlEscape(title), HtmlUtils.htmlEscape(problem.getMessage()), list);
    }
}
