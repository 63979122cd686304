package yardlight.gateway.alarms;

import jakarta.servlet.http.HttpServletRequest;
import java.util.function.Function;
import org.springframework.stereotype.Component;
import yardlight.escalation.notice.Notice;
import yardlight.gateway.link.RealLinks;

/** How much of a text somebody sees: its link answers, so it is shown only to those who may acknowledge anyway. */
@Component
class Sight {

    private final RealLinks links;

    Sight(RealLinks links) {
        this.links = links;
    }

    Function<Notice, String> of(HttpServletRequest request) {
        boolean mayAnswer = request.isUserInRole("HAND") || request.isUserInRole("OWNER");
        return mayAnswer ? links::text : Notice::text;
    }
}
