package yardlight.gateway.page;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.LocaleResolver;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.springframework.web.servlet.i18n.AcceptHeaderLocaleResolver;
import org.springframework.web.servlet.support.RequestContextUtils;
import yardlight.gateway.sentence.Locales;

/** Gives every page that a template makes its {@link Shell} and each {@link PageFact}, and every request one of the two languages. */
@Configuration(proxyBeanMethods = false)
class ShellConfiguration implements WebMvcConfigurer {

    private final List<PageFact> facts;

    ShellConfiguration(List<PageFact> facts) {
        this.facts = List.copyOf(facts);
    }

    /** As the browser asks, whichever Spanish it asks for; English where it asks for neither. */
    @Bean
    static LocaleResolver localeResolver() {
        var resolver = new AcceptHeaderLocaleResolver() {
            @Override
            public Locale resolveLocale(HttpServletRequest request) {
                return Locales.of(super.resolveLocale(request));
            }
        };
        resolver.setSupportedLocales(List.of(Locales.ENGLISH, Locale.forLanguageTag(Locales.SPANISH.getLanguage())));
        resolver.setDefaultLocale(Locales.ENGLISH);
        return resolver;
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(new Dressing(facts));
    }

    private record Dressing(List<PageFact> facts) implements HandlerInterceptor {

        @Override
        public void postHandle(
                HttpServletRequest request, HttpServletResponse response, Object handler, ModelAndView page) {
            if (page != null && page.getViewName() != null) {
                page.addObject("shell", shell(request));
                facts.forEach(fact -> page.addObject(fact.name(), fact.of(request)));
            }
        }

        private static Shell shell(HttpServletRequest request) {
            return new Shell(
                    Optional.ofNullable(request.getRemoteUser()).orElse(""),
                    request.isUserInRole("OWNER"),
                    request.isUserInRole("OWNER") || request.isUserInRole("HAND"),
                    RequestContextUtils.getLocale(request).getLanguage());
        }
    }
}
