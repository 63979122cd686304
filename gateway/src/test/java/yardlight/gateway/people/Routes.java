package yardlight.gateway.people;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.Filter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.springframework.context.ApplicationContext;
import org.springframework.core.io.Resource;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.RequestMappingInfoHandlerMapping;

/** Every address that the gateway answers, as {@code GET /path}. */
record Routes(ApplicationContext context) {

    /** A file of a library; there are many, behind one rule. */
    private static final String WEBJAR = "GET /webjars/htmx.org/2.0.10/dist/htmx.min.js";

    /** What filters of the chains answer on their own. Those that answer nothing are here as well, so that a new one is seen. */
    private static final Map<String, List<String>> FILTERS = Map.ofEntries(
            Map.entry("UsernamePasswordAuthenticationFilter", List.of("POST /login")),
            Map.entry("LogoutFilter", List.of("POST /logout")),
            Map.entry("WebAuthnAuthenticationFilter", List.of("POST /login/webauthn")),
            Map.entry("PublicKeyCredentialRequestOptionsFilter", List.of("POST /webauthn/authenticate/options")),
            Map.entry("PublicKeyCredentialCreationOptionsFilter", List.of("POST /webauthn/register/options")),
            Map.entry("WebAuthnRegistrationFilter", List.of("POST /webauthn/register")),
            Map.entry("AnonymousAuthenticationFilter", List.of()),
            Map.entry("AuthorizationFilter", List.of()),
            Map.entry("BasicAuthenticationFilter", List.of()),
            Map.entry("ConfirmedFirst", List.of()),
            Map.entry("CsrfFilter", List.of()),
            Map.entry("DisableEncodeUrlFilter", List.of()),
            Map.entry("ExceptionTranslationFilter", List.of()),
            Map.entry("HeaderWriterFilter", List.of()),
            Map.entry("KeyFilter", List.of()),
            Map.entry("RequestCacheAwareFilter", List.of()),
            Map.entry("SecurityContextHolderAwareRequestFilter", List.of()),
            Map.entry("SecurityContextHolderFilter", List.of()),
            Map.entry("SessionManagementFilter", List.of()),
            Map.entry("SittingFilter", List.of()),
            Map.entry("WebAsyncManagerIntegrationFilter", List.of()));

    Set<String> all() {
        var all = new TreeSet<String>();
        context.getBeansOfType(RequestMappingInfoHandlerMapping.class).values().stream()
                .flatMap(mapping -> mapping.getHandlerMethods().keySet().stream())
                .forEach(info -> all.addAll(names(info)));
        all.addAll(files());
        all.add(WEBJAR);
        all.addAll(ofFilters());
        return all;
    }

    private static List<String> names(RequestMappingInfo info) {
        var names = new ArrayList<String>();
        Set<RequestMethod> methods = info.getMethodsCondition().getMethods();
        for (String pattern : info.getPatternValues()) {
            if (!pattern.equals("/error")) {
                assertThat(methods).as("methods of " + pattern).isNotEmpty();
                methods.forEach(method -> names.add(method + " " + pattern));
            }
        }
        return names;
    }

    private List<String> files() {
        try {
            var files = new ArrayList<String>();
            for (Resource file : context.getResources("classpath*:/static/**")) {
                String path = file.getURL().getPath();
                if (!path.endsWith("/")) {
                    files.add("GET " + path.substring(path.lastIndexOf("/static/") + "/static".length()));
                }
            }
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Set<String> ofFilters() {
        var found = new TreeSet<String>();
        for (SecurityFilterChain chain :
                context.getBeansOfType(SecurityFilterChain.class).values()) {
            for (Filter filter : chain.getFilters()) {
                String name = filter.getClass().getSimpleName();
                assertThat(FILTERS).as("what this filter answers on its own").containsKey(name);
                found.addAll(FILTERS.get(name));
            }
        }
        return found;
    }
}
