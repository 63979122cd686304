package yardlight.gateway.boxes;

import io.github.bucket4j.TimeMeter;
import jakarta.servlet.DispatcherType;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.config.observation.SecurityObservationSettings;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import yardlight.gateway.posting.Allowance;
import yardlight.gateway.problem.Bearer;
import yardlight.gateway.problem.ProblemWriter;
import yardlight.gateway.problem.Refusals;
import yardlight.gateway.problem.SafeHeaders;
import yardlight.gateway.wire.Posts;

/** The door for boxes: a key, no session, no login. */
@Configuration(proxyBeanMethods = false)
class BoxDoor {

    @Bean
    @Order(10)
    SecurityFilterChain boxChain(
            HttpSecurity http, Knock knock, SignsOfLife signs, Posts posts, Refusals refusals, ProblemWriter writer) {
        return http.securityMatcher(BoxDoor::posting)
                .authorizeHttpRequests(
                        requests -> requests.dispatcherTypeMatchers(DispatcherType.ERROR, DispatcherType.ASYNC)
                                .permitAll()
                                .anyRequest()
                                .hasRole(KeyFilter.ROLE))
                .addFilterBefore(new KeyFilter(knock, signs, posts, writer), AuthorizationFilter.class)
                .headers(SafeHeaders::set)
                .csrf(AbstractHttpConfigurer::disable)
                .logout(AbstractHttpConfigurer::disable)
                .requestCache(AbstractHttpConfigurer::disable)
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .exceptionHandling(handling -> handling.accessDeniedHandler(refusals.forbidden())
                        .authenticationEntryPoint(
                                refusals.challenge(Bearer.CHALLENGE, "this needs the key of a box that is set up")))
                .build();
    }

    /** Readings are read back at the address where boxes post them: that is another door. */
    private static boolean posting(HttpServletRequest request) {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        return path.equals("/api/v1/events")
                || path.equals("/api/v1/heartbeats")
                || path.equals("/api/v1/readings") && request.getMethod().equals("POST");
    }

    /** Each of some fifteen filters would be timed by itself for each post, for figures that nobody reads. */
    @Bean
    static SecurityObservationSettings untimedFilters() {
        return SecurityObservationSettings.noObservations();
    }

    @Bean
    static Allowance allowance(
            @Value("${yardlight.allowance.burst}") int burst, @Value("${yardlight.allowance.refill}") Duration refill) {
        return new Allowance(burst, refill, TimeMeter.SYSTEM_NANOTIME);
    }
}
