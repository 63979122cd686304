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
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.View;
import org.springframework.web.servlet.view.RedirectView;
import yardlight.gateway.fields.Form;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.strip.Strips;

/** All sites, and the page of one of them. */
@Controller
@RequestMapping("/sites")
class SitesPage {

    private final SiteRows rows;
    private final SiteSheets sheets;
    private final Service service;
    private final Responses responses;
    private final Strips strips;
    private final MessageSource words;

    SitesPage(
            SiteRows rows,
            SiteSheets sheets,
            Service service,
            Responses responses,
            Strips strips,
            MessageSource words) {
        this.strips = strips;
        this.rows = rows;
        this.sheets = sheets;
        this.service = service;
        this.responses = responses;
        this.words = words;
    }

    @GetMapping(produces = "text/html")
    String all(@RequestParam(defaultValue = "") String name, Model model, Locale locale) {
        model.addAttribute("name", name);
        model.addAttribute("rows", rows.like(name, new Tongue(words, locale)));
        return "sites";
    }

    @GetMapping(path = "/{id}", produces = "text/html")
    ModelAndView one(@PathVariable String id, Locale locale) {
        var tongue = new Tongue(words, locale);
        SiteSheet sheet = sheets.of(id, tongue);
        return page(sheet, responses.open(id), tongue);
    }

    private ModelAndView page(SiteSheet sheet, Form response, Tongue tongue) {
        return new ModelAndView("site")
                .addObject("sheet", sheet)
                .addObject("response", response)
                .addObject("fold", responses.fold(response, tongue))
                .addObject("strips", strips.lastDay(sheet.id(), tongue));
    }

    /** How long it takes to do something about the site. */
    @PostMapping("/{id}/response")
    ModelAndView response(@PathVariable String id, HttpServletRequest request, Locale locale, Principal login) {
        var tongue = new Tongue(words, locale);
        Form form = responses.save(id, request.getParameterMap(), login.getName(), tongue);
        if (form.stored()) {
            return new ModelAndView(back(id));
        }
        ModelAndView page = page(sheets.of(id, tongue), form, tongue);
        page.setStatus(form.overtaken() ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
        return page;
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
