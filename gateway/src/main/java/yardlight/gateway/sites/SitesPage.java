package yardlight.gateway.sites;

import jakarta.servlet.http.HttpServletRequest;
import java.security.Principal;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;
import org.springframework.web.servlet.view.RedirectView;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.strip.Strips;

/** All sites, and the page of one of them. */
@Controller
@RequestMapping("/sites")
class SitesPage {

    private final SiteRows rows;
    private final SiteSheets sheets;
    private final Service service;
    private final Strips strips;
    private final MessageSource words;

    SitesPage(SiteRows rows, SiteSheets sheets, Service service, Strips strips, MessageSource words) {
        this.strips = strips;
        this.rows = rows;
        this.sheets = sheets;
        this.service = service;
        this.words = words;
    }

    @GetMapping(produces = "text/html")
    String all(@RequestParam(defaultValue = "") String name, Model model, Locale locale) {
        model.addAttribute("name", name);
        model.addAttribute("rows", rows.like(name, new Tongue(words, locale)));
        return "sites";
    }

    @GetMapping(path = "/{id}", produces = "text/html")
    String one(@PathVariable String id, Model model, Locale locale) {
        var tongue = new Tongue(words, locale);
        model.addAttribute("sheet", sheets.of(id, tongue));
        model.addAttribute("strips", strips.lastDay(id, tongue));
        return "site";
    }

    @PostMapping("/{id}/service")
    View service(@PathVariable String id, HttpServletRequest request, Principal login) {
        service.site(id, wantsService(request), login.getName());
        return back(id);
    }

    @PostMapping("/{id}/points/{point}/service")
    View pointService(
            @PathVariable String id, @PathVariable String point, HttpServletRequest request, Principal login) {
        service.point(id, point, wantsService(request), login.getName());
        return back(id);
    }

    private static boolean wantsService(HttpServletRequest request) {
        return "true".equals(request.getParameter("inService"));
    }

    static View back(String site) {
        var back = new RedirectView("/sites/" + site, true);
        back.setStatusCode(HttpStatus.SEE_OTHER);
        return back;
    }
}
