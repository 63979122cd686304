package yardlight.gateway.board;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import yardlight.gateway.page.Tongue;

/** The first page. */
@Controller
class BoardPage {

    private final Sheets sheets;
    private final MessageSource words;

    BoardPage(Sheets sheets, MessageSource words) {
        this.sheets = sheets;
        this.words = words;
    }

    @GetMapping(path = "/", produces = "text/html")
    String board(Model model, HttpServletRequest request, Locale locale) {
        var tongue = new Tongue(words, locale);
        Sheet sheet = sheets.now(tongue);
        // An open page that renews itself asks for a piece of this one and for no other.
        boolean asked = request.getParameterMap().containsKey("later") || request.getHeader("HX-Request") != null;
        if (sheet.empty() && request.isUserInRole("OWNER") && !asked) {
            return "redirect:/start";
        }
        model.addAttribute("sheet", sheet);
        model.addAttribute(
                "quietSites", tongue.count("now.quiet", sheet.quiet().places().size()));
        return "board";
    }
}
