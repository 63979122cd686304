package yardlight.gateway.board;

import jakarta.servlet.http.HttpServletRequest;
import java.security.Principal;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.View;
import org.springframework.web.servlet.view.RedirectView;
import yardlight.escalation.Stimulus;
import yardlight.gateway.alarms.Actions;

/** The first page, and the one button on it. */
@Controller
class BoardPage {

    private final Sheets sheets;
    private final Actions actions;

    BoardPage(Sheets sheets, Actions actions) {
        this.sheets = sheets;
        this.actions = actions;
    }

    @GetMapping(path = "/", produces = "text/html")
    String board(Model model, HttpServletRequest request) {
        Sheet sheet = sheets.now();
        // An open page that renews itself asks for a piece of this one and for no other.
        boolean asked = request.getParameterMap().containsKey("later") || request.getHeader("HX-Request") != null;
        if (sheet.empty() && request.isUserInRole("OWNER") && !asked) {
            return "redirect:/start";
        }
        model.addAttribute("sheet", sheet);
        model.addAttribute("mayAnswer", request.isUserInRole("HAND") || request.isUserInRole("OWNER"));
        return "board";
    }

    @PostMapping("/alarms/{id}/acknowledge")
    View acknowledge(@PathVariable String id, Principal login) {
        actions.act(id, key -> new Stimulus.Acknowledge(key, login.getName(), "page", Optional.empty()));
        var back = new RedirectView("/", true);
        back.setStatusCode(HttpStatus.SEE_OTHER);
        return back;
    }
}
