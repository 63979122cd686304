package yardlight.gateway.answer;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import yardlight.gateway.problem.SafeHeaders;

/**
 * The door for those who have no login: what they hold, a token or the key of a provider, is checked where it is used.
 * There is no session here and so nothing that a page elsewhere could borrow.
 */
@Configuration(proxyBeanMethods = false)
class AnswerDoor {

    @Bean
    @Order(20)
    SecurityFilterChain answerChain(HttpSecurity http) {
        return http.securityMatcher("/a/*", "/api/v1/replies")
                .authorizeHttpRequests(requests -> requests.anyRequest().permitAll())
                .headers(SafeHeaders::set)
                .csrf(AbstractHttpConfigurer::disable)
                .logout(AbstractHttpConfigurer::disable)
                .requestCache(AbstractHttpConfigurer::disable)
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .build();
    }
}
