package yardlight.gateway.people;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Set;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.security.access.hierarchicalroles.RoleHierarchy;
import org.springframework.security.access.hierarchicalroles.RoleHierarchyImpl;
import org.springframework.security.authentication.AuthenticationManager;
import org.springframework.security.authentication.InternalAuthenticationServiceException;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AuthorizeHttpRequestsConfigurer;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.AuthenticationFailureHandler;
import org.springframework.security.web.authentication.LoginUrlAuthenticationEntryPoint;
import org.springframework.security.web.authentication.SimpleUrlAuthenticationFailureHandler;
import org.springframework.security.web.authentication.SimpleUrlAuthenticationSuccessHandler;
import org.springframework.security.web.authentication.logout.HeaderWriterLogoutHandler;
import org.springframework.security.web.authentication.logout.LogoutHandler;
import org.springframework.security.web.context.SecurityContextHolderFilter;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.header.writers.ClearSiteDataHeaderWriter;
import org.springframework.security.web.savedrequest.NullRequestCache;
import yardlight.gateway.problem.CookieNames;
import yardlight.gateway.problem.Reader;
import yardlight.gateway.problem.Refusals;
import yardlight.gateway.problem.SafeHeaders;

/** The door for people: everything that has no door of its own. Who may do what stands in {@link #rights}. */
@Configuration(proxyBeanMethods = false)
class PeopleDoor {

    private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS", "TRACE");

    private static final String[] FILES = {
        "/calm.js", "/passkey.js", "/phone.js", "/phone-worker.js", "/phone-app.json", "/webjars/**"
    };

    /** Who may come in, and with what. */
    private static final String[] KEYS = {
        "/api/v1/boxes/**", "/api/v1/link-keys", "/api/v1/logins/**", "/api/v1/invitations/**", "/logins/**"
    };

    /** Past nights tell what people were called at night, as the burden does. */
    private static final String[] BY_HANDS = {"/sites/*/shut-in", "/ladders/*/nights", "/api/v1/rehearsals/nights"};

    /** Pages that change the setup, and the forms that lead there. */
    private static final String[] SETUP_PAGES = {
        "/new-person",
        "/people/*/edit",
        "/people/*/remove",
        "/people/*/calendar/**",
        "/people/*/vacations/**",
        "/new-roster",
        "/turns/*/edit",
        "/turns/*/swap/**",
        "/sites/*/points/**",
        "/sites/*/shut-in/on",
        "/sites/*/shut-in/terms"
    };

    /** Only what the browser keeps of pages: to clear its storage would take a phone's subscription to push along. */
    private static final LogoutHandler CLEARED =
            new HeaderWriterLogoutHandler(new ClearSiteDataHeaderWriter(ClearSiteDataHeaderWriter.Directive.CACHE));

    private static final String OWNER = "OWNER";
    private static final String HAND = "HAND";
    private static final String READER = "READER";

    @Bean
    static RoleHierarchy roles() {
        return RoleHierarchyImpl.withDefaultRolePrefix()
                .role(OWNER)
                .implies(HAND)
                .role(HAND)
                .implies(READER)
                .build();
    }

    @Bean
    @Order(100)
    SecurityFilterChain peopleChain(
            HttpSecurity http,
            AuthenticationManager signIn,
            OpenSittings sittings,
            Arrival arrival,
            ObjectProvider<MoreWaysIn> more,
            CookieNames cookies,
            Refusals refusals) {
        AuthenticationEntryPoint api = refusals.challenge("Basic realm=\"Yardlight\"", "this needs a login");
        AuthenticationEntryPoint page = new LoginUrlAuthenticationEntryPoint("/login");
        more.orderedStream().forEach(way -> way.add(http, arrival));
        return http.authenticationManager(signIn)
                .authorizeHttpRequests(PeopleDoor::rights)
                .headers(SafeHeaders::setWithScripts)
                .csrf(csrf -> csrf.csrfTokenRepository(tokens(cookies))
                        .requireCsrfProtectionMatcher(PeopleDoor::couldBeForged))
                .requestCache(cache -> cache.requestCache(new NullRequestCache()))
                .addFilterAfter(new SittingFilter(sittings), SecurityContextHolderFilter.class)
                .httpBasic(basic -> basic.authenticationEntryPoint(api).authenticationDetailsSource(DeviceDetails::new))
                .formLogin(form -> form.loginPage("/login")
                        .authenticationDetailsSource(DeviceDetails::new)
                        .successHandler(arrival.then(new SimpleUrlAuthenticationSuccessHandler("/")))
                        .failureHandler(failure(api))
                        .permitAll())
                .logout(logout -> logout.addLogoutHandler((request, response, who) -> arrival.leave(request))
                        .addLogoutHandler(CLEARED)
                        .logoutSuccessUrl("/login?out")
                        .permitAll())
                .exceptionHandling(handling -> handling.accessDeniedHandler(refusals.forbidden())
                        .authenticationEntryPoint((request, response, thrown) ->
                                (wantsPage(request) ? page : api).commence(request, response, thrown)))
                .build();
    }

    private static void rights(
            AuthorizeHttpRequestsConfigurer<HttpSecurity>.AuthorizationManagerRequestMatcherRegistry requests) {
        requests.dispatcherTypeMatchers(DispatcherType.ERROR, DispatcherType.ASYNC)
                .permitAll();
        requests.requestMatchers(
                        "/login",
                        "/login/webauthn",
                        "/webauthn/authenticate/options",
                        "/join/*",
                        "/yardlight.css",
                        "/yardlight.svg",
                        "/yardlight-*.png",
                        "/error")
                .permitAll();
        // Browsers fetch these without a login, and again when nobody is signed in.
        requests.requestMatchers(FILES).permitAll();
        requests.requestMatchers("/actuator/health/**", "/v3/api-docs/**", "/v3/api-docs.yaml")
                .permitAll();
        requests.requestMatchers(HttpMethod.PUT, "/api/v1/setup").hasRole(OWNER);
        requests.requestMatchers(HttpMethod.POST, "/phone/**", "/boxes/**").hasRole(OWNER);
        requests.requestMatchers("/phone", "/reports/burden", "/reports/burden.csv", "/api/v1/reports/burden")
                .hasRole(HAND);
        requests.requestMatchers(KEYS).hasRole(OWNER);
        requests.requestMatchers("/start", "/start/**").hasRole(OWNER);
        requests.requestMatchers(HttpMethod.POST, BY_HANDS).hasRole(HAND);
        requests.requestMatchers(HttpMethod.POST, "/api/v1/alarms/*/reset", "/alarms/*/reset", "/sites/**")
                .hasRole(OWNER);
        // Rehearsing stores nothing.
        requests.requestMatchers(HttpMethod.POST, "/ladders/*/rehearsal").hasRole(READER);
        requests.requestMatchers(HttpMethod.POST, "/ladders/**", "/edits/**").hasRole(OWNER);
        requests.requestMatchers(
                        HttpMethod.POST,
                        "/api/v1/alarms/**",
                        "/alarms/**",
                        "/api/v1/contacts/**",
                        "/people/*/lines/*/test")
                .hasRole(HAND);
        requests.requestMatchers(SETUP_PAGES).hasRole(OWNER);
        requests.anyRequest().hasRole(READER);
    }

    /**
     * Whether a page elsewhere could have made a browser send this: it comes with what a browser adds by itself, a
     * session, or a password with the marks of a browser, or it is the sign-in itself. A program shows neither.
     */
    private static boolean couldBeForged(HttpServletRequest request) {
        boolean browser = request.getHeader(HttpHeaders.ORIGIN) != null || request.getHeader("Sec-Fetch-Site") != null;
        boolean password = request.getHeader(HttpHeaders.AUTHORIZATION) != null;
        boolean borrowed = password ? browser : request.getRequestedSessionId() != null;
        return !READING.contains(request.getMethod())
                && (borrowed || request.getRequestURI().endsWith("/login"));
    }

    /** In a cookie, so that a stranger who looks at the sign-in makes no session. */
    private static CookieCsrfTokenRepository tokens(CookieNames cookies) {
        var tokens = new CookieCsrfTokenRepository();
        tokens.setCookieName(cookies.of("XSRF-TOKEN"));
        tokens.setCookieCustomizer(cookie -> cookie.sameSite("Lax"));
        return tokens;
    }

    private static AuthenticationFailureHandler failure(AuthenticationEntryPoint api) {
        var wrong = new SimpleUrlAuthenticationFailureHandler("/login?wrong");
        wrong.setAllowSessionCreation(false);
        return (request, response, thrown) -> {
            if (thrown instanceof LockedException || thrown instanceof InternalAuthenticationServiceException) {
                api.commence(request, response, thrown);
            } else {
                wrong.onAuthenticationFailure(request, response, thrown);
            }
        };
    }

    private static boolean wantsPage(HttpServletRequest request) {
        return Reader.wantsPage(request.getHeader(HttpHeaders.ACCEPT));
    }
}
